import type { Topic } from '@tarebook/rules/engine';
import { amountsIn } from './amounts';
import { asTheyHold } from './corrections';
import { numbersSaid } from './number-words';
import { ownWeights } from './people-rows';
import { type Riders, togetherIn, weightOf } from './people-weights';
import type { QuestionPart } from './shapes';

/** The list of those who ride along, in topics that ask for them. */
const peopleList = 'load.occupants';

const adults = 'adults?|grown-?ups?|people|persons?|passengers?|ppl|pax';
const children = 'kids?|child(?:ren)?|boys?|girls?|toddlers?|teen(?:ager)?s?|little ones|grandkids';
const dogs =
  'dogs?|pups?|pupp(?:y|ies)|labs?|retrievers?|mutts?|beagles?|shepherds?|terriers?|poodles?|hounds?|heelers?|collies?|spaniels?|pooch(?:es)?';
const size = '(?:(?:small|big|large|little|older|young|grown|teenage|our|old) )?';

type Found = { readonly count: number; readonly from: number; readonly to: number };

/** More than these do not ride in one vehicle; a larger number is of something else. */
const most = 15;

/** “Four of us, no wait, five”: the last count stands in the place of the first. */
function withLast(text: string): string {
  const amounts = amountsIn(text);
  const counts = asTheyHold(text, amounts).filter(
    ({ value, unit }) => unit === undefined && value <= most,
  );
  return counts.reduce((now, { value, from, to }) => {
    const first = amounts.find((each) => each.from === from);
    const figure = String(value);
    if (!first || first.to === to || figure.length > first.to - from) return now;
    const blank = now
      .slice(first.to, to)
      .replace(/\d+(?=\D*$)/, (digits) => ' '.repeat(digits.length));
    return now.slice(0, from) + figure.padEnd(first.to - from, '\u0001') + blank + now.slice(to);
  }, text);
}

/** Numbers in words, as figures of the same place; the texts stay as long as they were. */
function countable(told: string): string {
  const text = withLast(told);
  const said = numbersSaid(text).filter(({ value, from, to }) => value <= most && to - from >= 2);
  return said.reduce(
    (now, { value, from, to }) =>
      now.slice(0, from) + String(value).padEnd(to - from, '\u0001') + now.slice(to),
    text,
  );
}

function all(pattern: string, text: string): readonly Found[] {
  const form = new RegExp(`(?<![\\p{L}\\d.,$])${pattern}(?![\\p{L}\\d])`, 'giu');
  return [...text.matchAll(form)].flatMap((found): readonly Found[] => {
    const digits = found.groups?.n;
    const count = digits === undefined ? 1 : Number(digits);
    if (!Number.isInteger(count) || count < 1 || count > most) return [];
    return [{ count, from: found.index, to: found.index + found[0].length }];
  });
}

const n = '(?<n>\\d{1,2})\u0001*';
const one = '(?:a|an|one|the|our|my|his|her|their)';

/** “four of us”, “family of five”: all of them, whoever they are. */
const everyone = [
  `(?:all )?(?:the )?${n} of (?:us|them)`,
  `(?:a )?family of ${n}`,
  `party of ${n}`,
  `us ${n}`,
  // “We are four: which …”, and never “we are 20 miles from town”.
  `we(?: are|['’]re) ${n}(?= ?(?:[,.:;?!]|$|and |with |plus ))`,
];
const spouses = '(?:wife|husband|hubby|partner|spouse|girlfriend|boyfriend|mrs|other half|missus)';
/** Two by their words alone. */
const pairs = [
  `(?:me|myself|i),? ?(?:and|n|&|\\+|plus)? (?:my |the )?${spouses}(?!\\p{L})`,
  `(?:my |the )?${spouses} ?(?:and|n|&|\\+|plus) (?:i|me|myself)`,
  // “My wife, two kids”: whoever writes is one of them.
  '(?:my |the )?(?:wife|husband|partner|spouse|girlfriend|boyfriend|missus)(?=,? ?(?:and|n|plus|w\\/|with|&|\\+)? ?(?:the |our |my |a )?(?:\\d{1,2}\u0001* )?(?:small |big |little |young |old )?(?:kids?|boys?|girls?|child|children|toddlers?|teens?|dogs?|labs?|pups?)(?!\\p{L}))',
  '(?:just )?(?:the )?two of us',
  '(?:just )?(?:us both|(?:the )?both of us)',
  '(?:a )?(?:married |retired )?couple(?! of)',
];
const single = ['(?:just me|by myself|only me|on my own)'];

/**
 * Who rides along, each kind once. Whoever is told by a sum alone is counted as an adult: an occupant
 * of the rules weighs no less than a child.
 */
export function ridersIn(whole: string): readonly Riders[] {
  const text = countable(whole);
  const first = (patterns: readonly string[]): Found | undefined =>
    patterns.flatMap((pattern) => [...all(pattern, text)])[0];
  const child = first([
    `${n} ?${size}(?:${children})`,
    `${one} ${size}(?:${children.replaceAll('s?', '')})`,
  ]);
  const dog = first([
    `${n} ?${size}(?:${dogs})`,
    `(?:${one} |\\+ ?|& ?|and |w/ ?)${size}(?:${dogs})`,
    // “…, dog 60, …”, “a 60 lb dog”
    `(?:dog)(?=,? (?:is |weighs )?\\d{2,3}(?![\\p{L}\\d]|\\.\\d))`,
    `(?:${one} )\\d{1,3}[ -]?(?:lbs?|pounds?)[ -](?:${dogs})`,
  ]);
  const counted = [...all(`${n} ?${size}(?:${adults})`, text)];
  // “Six people, two adults and four kids”: the first is the sum of those behind it.
  const isSum =
    child !== undefined &&
    counted.length > 1 &&
    counted[0]?.count === (counted[1]?.count ?? 0) + child.count;
  const told = counted[isSum ? 1 : 0];
  const sum = first(everyone);
  const pair = first(pairs);
  const alone = first(single);
  // Children are among those of a sum.
  const inSum = sum && child && child.count < sum.count ? sum.count - child.count : sum?.count;
  const grown =
    told ??
    (sum ? { ...sum, count: inSum ?? sum.count } : undefined) ??
    (pair ? { ...pair, count: 2 } : undefined) ??
    alone;
  const made = [
    ...(grown ? [{ who: 'adult' as const, ...grown }] : []),
    ...(child ? [{ who: 'child' as const, ...child }] : []),
    ...(dog ? [{ who: 'dog' as const, ...dog }] : []),
  ];
  return made.toSorted((a, b) => a.from - b.from);
}

/**
 * Who rides along as a question keeps them, with what each weighs where the text tells it. Those whose
 * weight is told together are one row among the loads.
 */
export function peopleOf(topic: Topic, text: string): NonNullable<QuestionPart['people']> {
  if (topic.facts[peopleList]?.kind !== 'rows' || togetherIn(text)) return [];
  const riders = ridersIn(text);
  const own = ownWeights(text, riders).length;
  return riders.flatMap((each) => {
    // Whoever has a row of his own is not counted once more.
    const count = each.who === 'adult' ? each.count - own : each.count;
    return count < 1 ? [] : [{ ...{ who: each.who, count }, ...weightOf(each, riders, text) }];
  });
}
