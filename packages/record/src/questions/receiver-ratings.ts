import type { Topic } from '@tarebook/rules/engine';
import type { Said } from './choices';

const figure = '\\d{1,2},\\d{3}|\\d{3,5}';
const pounds = '(?: ?(?:lbs?|pounds?|#))?(?: ?(?:tongue|tw|trailer|gross))?';
/** “500/5000”, “5,000 lb / 500 lb” */
const pair = new RegExp(
  `(?<![\\p{L}\\d.,$/])(?<a>${figure})${pounds} ?/ ?(?<b>${figure})${pounds}(?![\\d/])`,
  'giu',
);
const ofReceiver =
  /(?<!\p{L})(?:receiver|recvr|rcvr|hitch)(?! (?:height|weight))(?!\p{L})[^.?!;\n]*\d{3,4} ?\D{0,10}\/ ?\d{3}/iu;
/** A label gives of the trailer about a tenth for the tongue. */
const least = 0.05;
const most = 0.25;
const without =
  /(?<!\p{L})(?:without|w\/o|wc|no wd|weight[- ]carrying|carrying|carried|dead ?weight)(?!\p{L})/iu;
const distributing = /(?<!\p{L})(?:with|wd|w\/|distribut\p{L}*|bars)(?!\p{L})/iu;

type Pair = {
  readonly tongue: number;
  readonly trailer: number;
  readonly from: number;
  readonly to: number;
};

function pairsIn(text: string): readonly Pair[] {
  return [...text.matchAll(pair)].flatMap((found): readonly Pair[] => {
    const [a, b] = [found.groups?.a, found.groups?.b].map((each) => Number(each?.replace(',', '')));
    const [tongue, trailer] = [Math.min(a ?? 0, b ?? 0), Math.max(a ?? 0, b ?? 0)];
    const isRating = tongue >= trailer * least && tongue <= trailer * most && trailer >= 1_000;
    const place = { from: found.index, to: found.index + found[0].length };
    return isRating ? [{ tongue, trailer, ...place }] : [];
  });
}

/** Whether a pair is said to be without weight distribution, by what stands nearest: true, false or not said. */
function isCarried(
  text: string,
  { from, to }: Pair,
  next: number,
  before: number,
): boolean | undefined {
  const after =
    text.slice(to, Math.min(next, to + 40)).split(/(?:,| and )(?= ?(?:with|w\/))/iu)[0] ?? '';
  const ahead = text
    .slice(Math.max(before, from - 44), from)
    .replace(/^.*(?:,| and )(?= ?\p{L})/iu, '');
  for (const near of [after, ahead]) {
    if (without.test(near)) return true;
    if (distributing.test(near)) return false;
  }
  return undefined;
}

/**
 * What a receiver’s label allows, each pair of a tongue and a trailer: without and with weight distribution
 * where two are told, the smaller always without. Pairs that are said to be the other way round are none.
 */
export function receiverRatingsIn(topic: Topic, text: string): readonly Said[] {
  if (!Object.hasOwn(topic.facts, 'hitch.receiverTongueCarried')) return [];
  if (!ofReceiver.test(text)) return [];
  const [first, second, third] = pairsIn(text);
  if (!first || third) return [];
  const said = ({ tongue, trailer, from, to }: Pair, carried: boolean): readonly Said[] => {
    const place = { from, to };
    return [
      {
        ...{ fact: `hitch.receiverTongue${carried ? 'Carried' : 'Rating'}`, ...place },
        value: `${tongue} lb`,
      },
      {
        ...{ fact: `hitch.receiver${carried ? 'Carried' : 'Rating'}`, ...place },
        value: `${trailer} lb`,
      },
    ];
  };
  const kind = isCarried(text, first, second?.from ?? text.length, 0);
  if (!second) return said(first, kind === true);
  const other = isCarried(text, second, text.length, first.to);
  const isFirstLess = first.tongue < second.tongue && first.trailer < second.trailer;
  const isSecondLess = second.tongue < first.tongue && second.trailer < first.trailer;
  if (!isFirstLess && !isSecondLess) return [];
  const [less, more] = isFirstLess ? [kind, other] : [other, kind];
  if (less === false || more === true) return [];
  const [carried, distributed] = isFirstLess ? [first, second] : [second, first];
  return [...said(carried, true), ...said(distributed, false)];
}

/** Where pairs of a receiver stand: their figures are nothing else. */
export const receiverPairsIn = (
  topic: Topic,
  text: string,
): readonly { readonly from: number; readonly to: number }[] =>
  Object.hasOwn(topic.facts, 'hitch.receiverTongueCarried') && ofReceiver.test(text)
    ? pairsIn(text)
    : [];

/** Whether words stand beside a receiver’s pair: what its label allows tells nothing of bars that are there. */
export function isOfReceiverLabel(topic: Topic, text: string, words: string): boolean {
  const at = text.indexOf(words);
  return receiverPairsIn(topic, text).some(
    ({ from, to }) =>
      at >= from - 44 &&
      at + words.length <= to + 44 &&
      !/[.?!;\n]/.test(text.slice(Math.min(at, to), Math.max(at, from))),
  );
}
