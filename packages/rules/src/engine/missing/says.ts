import { show, showNumber } from '../../quantity';
import { listed, lowered } from '../answer/phrases';
import type { Fact, Topic } from '../define/shapes';
import type { Edges } from './trial';

/** What one fact does to one open decision. */
export type Deciding = {
  /** `limit.payload` */
  readonly of: string;
  readonly edges: Edges;
  /** Options that would stop it. */
  readonly stopping: readonly string[];
  /** Options that would not, or not for sure. */
  readonly others: readonly string[];
  /** Facts with which alone it decides; empty where it settles it by itself. */
  readonly together: readonly string[];
};

/** A label is a heading, so inside a sentence it stands in quotes: “it touches the gas”. */
const quoted = (label: string): string => `“${lowered(label)}”`;

function nameOf(topic: Topic, of: string): string {
  const [kind = '', id = ''] = of.split(/\.(.*)/);
  const entry = kind === 'limit' ? topic.limits[id] : topic.findings[id];
  return quoted(entry?.label ?? id);
}

const factName = (topic: Topic, fact: string): string => quoted(topic.facts[fact]?.label ?? fact);

/** “with “axle” or “elsewhere””; of many, those that would not are sooner told. */
function withOptions({ stopping, others }: Deciding): string {
  const few = others.length > 0 && others.length < stopping.length;
  const named = (few ? others : stopping).map((option) => `“${option}”`);
  return `with ${few ? 'anything but ' : ''}${listed(named, 'or')}`;
}

const whatever = 'whatever else is found';

/** Between two counts there is none: “1 or fewer”, “3 or more”. */
function counted({ at, side }: { readonly at: number; readonly side: 'above' | 'below' }): string {
  if (side === 'above') return `${showNumber(Math.floor(at) + 1, 0)} or more`;
  const most = Math.ceil(at) - 1;
  return most > 1 ? `${showNumber(most, 0)} or fewer` : showNumber(most, 0);
}

/** How many there are of something is counted, and nothing lies between two counts. */
const isCounted = (fact: Fact | undefined): boolean =>
  fact?.kind === 'quantity' && fact.unit === '' && /\bhow many\b/i.test(fact.ask);

/** “above 484 lb the answer is “does not fit””: the words of an outcome go into no sentence. */
function tipping(deciding: Deciding, words: string, isCount: boolean): string {
  const { tip, sure } = deciding.edges;
  const then = `the answer is “${words}”`;
  const end = tip ? { at: tip.side === 'above' ? tip.hi : tip.lo, side: tip.side } : sure;
  const isAlone = tip !== undefined && tip.lo === tip.hi;
  if (isCount && end) return `with ${counted(end)} ${then}${isAlone ? '' : `, ${whatever}`}`;
  if (tip && isAlone) return `${tip.side} ${show(tip, tip.unit)} ${then}`;
  if (tip) {
    const above = tip.side === 'above';
    const [holds, stops] = above ? [tip.lo, tip.hi] : [tip.hi, tip.lo];
    const at = (value: number) => show({ lo: value, hi: value }, tip.unit);
    const near = above ? 'up to' : 'from';
    return `${near} ${at(holds)} it holds and ${tip.side} ${at(stops)} ${then}, ${whatever}`;
  }
  if (sure) {
    const at = show({ lo: sure.at, hi: sure.at }, sure.unit);
    return `${sure.side} ${at} ${then}, ${whatever}`;
  }
  return deciding.stopping.length > 0 ? `${withOptions(deciding)} ${then}` : '';
}

/** Which decisions a fact settles, where each tips, and with what it decides only together. */
export function missingSays(topic: Topic, fact: string, deciding: readonly Deciding[]): string {
  const stops = topic.outcomes.stop.words;
  const groups = new Map<string, { tip: string; together: readonly string[]; of: string[] }>();
  for (const each of deciding) {
    const tip = tipping(each, stops, isCounted(topic.facts[fact]));
    const key = `${tip}|${each.together.join()}`;
    const group = groups.get(key) ?? { tip, together: each.together, of: [] };
    group.of.push(nameOf(topic, each.of));
    groups.set(key, group);
  }
  const sentences = [...groups.values()].map(({ tip, together, of }) => {
    const partners = listed(together.map((fact) => factName(topic, fact)));
    const names = listed(of);
    if (partners === '') return tip === '' ? `Decides ${names}.` : `Decides ${names}: ${tip}.`;
    return tip === ''
      ? `Decides ${names} only together with ${partners}.`
      : `Decides ${names} together with ${partners}: ${tip}.`;
  });
  return sentences.join(' ');
}
