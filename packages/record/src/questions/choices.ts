import type { Topic } from '@tarebook/rules/engine';
import { wordsOfFacts } from '../words/all';
import { isAskedAbout } from './asked-about';
import { placesOf } from './cues';

/** A fact that words say outright, and where they stand. */
export type Said = {
  readonly fact: string;
  readonly value: string;
  readonly from: number;
  readonly to: number;
};

/** What stands right before a word and turns it round. */
const turned =
  /(?:^|[^\p{L}])(?:no|not|without|never|isn[’']?t|don[’']?t have|doesn[’']?t have|instead of|or)\s+(?:an? |any |the )?$/iu;

/** What somebody wants or asks for is not there yet. */
const wanted = /(?:need|want|buy|get|add|should i have)\s+(?:an? |any |the )?$/i;
/** Of these what is wanted is the very fact. */
const isWish = (fact: string): boolean =>
  /^(?:wish|addon|touches|fitting|plan|wire|place|trouble)\./.test(fact);

/** Whether a thing is only wished for, or asked about, where its words stand. */
export const isWanted = (fact: string, text: string, from: number, to: number): boolean =>
  !isWish(fact) &&
  (wanted.test(text.slice(Math.max(0, from - 20), from)) || isAskedAbout(text, from, to));

/** “sallow-16-corner-bed” is called “Sallow 16”, where no other begins so. */
function ownNames(options: readonly string[]): Readonly<Record<string, readonly string[]>> {
  const short = (option: string): string => /^[a-z]{4,}-\d+/.exec(option)?.[0] ?? '';
  return Object.fromEntries(
    options.flatMap((option) => {
      if (/^20\d\d$/.test(option)) return [[option, [option]]];
      const name = short(option);
      const others = options.filter((each) => short(each) === name).length;
      const rest = option.slice(name.length + 1).replaceAll('-', ' ');
      const longer = rest === '' ? [] : [`${name} ${rest}`, `${name} with ${rest}`];
      return name === '' ? [] : [[option, others === 1 ? [name, ...longer] : longer]];
    }),
  );
}

/** By option of a fact the words that say it: what every topic says, the topic’s own of two words. */
function wordsFor(topic: Topic, fact: string): Words {
  const declared = topic.facts[fact];
  const shared = wordsOfFacts.options[fact] ?? {};
  if (declared?.kind !== 'choice' && declared?.kind !== 'yes-no') return shared;
  const own = declared.kind === 'choice' ? ownNames(declared.options) : {};
  const called = topic.called?.options?.[fact] ?? {};
  const names = new Set(topic.called?.topic);
  const options = new Set([...Object.keys(shared), ...Object.keys(own), ...Object.keys(called)]);
  return Object.fromEntries(
    [...options].map((option) => [
      option,
      [
        ...(shared[option] ?? []),
        ...(own[option] ?? []),
        // One word alone says what a text is about, and seldom how it is.
        ...(called[option] ?? []).filter(
          (each) => /[ -]/.test(each) && !names.has(each) && !everyday.has(each),
        ),
      ],
    ]),
  );
}

/** Whoever says so means the thing, of whatever kind it is. */
const everyday = new Set([
  'trailer tires',
  'trailer tire',
  'pop up',
  'on the road',
  'my husband',
  'shore power',
  '12 volt',
]);

type Words = Readonly<Record<string, readonly string[]>>;
const byTopic = new WeakMap<Topic, readonly (readonly [string, Words])[]>();

/** The words for every fact that has some, put together once for each topic. */
function wordsOf(topic: Topic): readonly (readonly [string, Words])[] {
  const before = byTopic.get(topic);
  if (before) return before;
  const made = Object.keys(topic.facts)
    .map((fact) => [fact, wordsFor(topic, fact)] as const)
    .filter(([, words]) => Object.keys(words).length > 0);
  byTopic.set(topic, made);
  return made;
}

/** Every fact whose value words of a text say; what is said in two ways is none. */
export function choicesIn(
  topic: Topic,
  text: string,
): { readonly said: readonly Said[]; readonly unsettled: ReadonlySet<string> } {
  const unsettled = new Set<string>();
  const said = wordsOf(topic).flatMap(([fact, all]) => {
    const found = Object.entries(all).flatMap(([value, words]) =>
      words.flatMap((word) =>
        [...placesOf(word, text)]
          .filter(({ from, to }) => {
            const ahead = text.slice(Math.max(0, from - 20), from);
            return !turned.test(ahead) && !isWanted(fact, text, from, to);
          })
          .map((place): Said => ({ fact, value, ...place })),
      ),
    );
    const longest = found.filter(
      (each) =>
        !found.some(
          (one) =>
            one.from <= each.from && one.to >= each.to && one.to - one.from > each.to - each.from,
        ),
    );
    const [first] = longest;
    if (first && longest.every(({ value }) => value === first.value)) return [first];
    if (first) unsettled.add(fact);
    return [];
  });
  return { said, unsettled };
}
