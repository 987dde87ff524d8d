import type { Topic } from '@tarebook/rules/engine';
import { findUnit, sameDimension } from '@tarebook/rules/quantity';
import { sayings } from '../words/sayings/all';
import type { Amount } from './amounts';
import { isWanted, type Said } from './choices';
import { isEither, isForEach, isMeant, isYear } from './not-meant';
import { formOf, neededIn } from './saying-forms';

/** What a saying tells, and the number it holds where it holds one. */
export type Saying = Said & { readonly amount?: Amount };

type Sayings = {
  readonly told: readonly Saying[];
  /** Facts that are told in two ways. */
  readonly unsettled: ReadonlySet<string>;
};

/** A text in small letters, each of its numbers a mark of the same length. */
type Marked = {
  /** In small letters. */
  readonly plain: string;
  readonly letters: string;
  readonly at: ReadonlyMap<number, Amount>;
};

function marked(text: string, amounts: readonly Amount[]): Marked {
  const small = text.toLowerCase();
  // A letter that is longer in small would move all that stands behind it.
  const plain = (small.length === text.length ? small : text).replaceAll('#', ' ');
  let letters = plain;
  for (const { from, to } of amounts)
    letters = `${letters.slice(0, from)}#${'\u0002'.repeat(to - from - 1)}${letters.slice(to)}`;
  return { plain, letters, at: new Map(amounts.map((each) => [each.from, each])) };
}

/** A number without a unit may be of one of these by what is said of it; an hour or a percent says so itself. */
const unitless = new Set(
  [
    'lb',
    'USD',
    'in',
    'ft',
    'psi',
    'V',
    'W',
    'Ah',
    'gal',
    'mph',
    '°F',
    'Btu/h',
    'mA',
    'mAh',
    'mpg',
  ].concat(['USD/h', 'USD/yr', 'kWh/mi', '']),
);
/** Of these a number alone is too little said. */
const withUnit =
  /^(?:steady|addon|solar)\.power$|^airConditioner\.|^addon\.(?:capacity|panelPower)$/;
/** What each of several has is what is asked of these. */
export const ofOne = /^(?:battery|cylinder|tracker)\.|apacity$|^trailer\.gawr$/;
/** “Nine gross”: what weighs as much as a vehicle is told in thousands too. */
const inThousands = /^(?:trailer\.(?:gvwr|dryWeight)|vehicle\.(?:maxTrailerWeight|gvwr|gcwr))$/;
const mostThousands = 30;
/** What may weigh so much weighs no less than this, where nobody says pounds. */
const mostOfHeavy = 20_000;
const leastOfHeavy = 60;

/** “The trailer is nine gross” */
function inPounds(fact: string, amount: Amount, text: string): Amount {
  const isSaid = /\p{L}/u.test(text.charAt(amount.from)) || text.startsWith(' gross', amount.to);
  const isThousands =
    amount.unit === undefined && isSaid && amount.value < mostThousands && inThousands.test(fact);
  return isThousands ? { ...amount, value: amount.value * 1000 } : amount;
}

export function toldOf(topic: Topic, fact: string, amount: Amount): string | undefined {
  const declared = topic.facts[fact];
  if (declared?.kind === 'choice') {
    const option = declared.options.find(
      (each) => each === `${amount.value}` || each.startsWith(`${amount.value}-`),
    );
    return amount.unit === undefined || option?.includes('-') ? option : undefined;
  }
  if (declared?.kind !== 'quantity') return undefined;
  const { unit, most } = declared;
  if (amount.unit === undefined) {
    // “Lithium one”: the word is no number.
    if (!unitless.has(unit) || withUnit.test(fact) || (unit !== '' && amount.value <= 1))
      return undefined;
    const { value } = amount;
    return unit === 'lb' && (most ?? 0) >= mostOfHeavy && Math.abs(value) < leastOfHeavy
      ? undefined
      : `${value} ${unit}`.trim();
  }
  if (unit === '') return undefined;
  // What a heater takes and what runs on a cord are told in units of their own.
  if ((amount.unit === 'Btu/h') !== (unit === 'Btu/h')) return undefined;
  const [is, wanted] = [findUnit(amount.unit), findUnit(unit)];
  return is && wanted && sameDimension(is.dimension, wanted.dimension)
    ? `${amount.value} ${amount.unit}`
    : undefined;
}

/** What stands right before a saying and turns it round. */
const turned =
  /(?:^|[^\p{L}])(?:no|not|without|never|isn[’']?t|aren[’']?t|ain[’']?t|wasn[’']?t|don[’']?t|doesn[’']?t|didn[’']?t|instead of|or|if|before)\s+(?:an? |any |the |have |had |be |get |got |really |even |once |yet )*$/iu;

/** Of these a sentence that tells what somebody allows, or a label asks for, tells nothing. */
const ofPapers: Readonly<Record<string, RegExp>> = {
  'hitch.distribution':
    /(?<!\p{L})(?:manual|book|handbook|papers|allowed|permitted|allows|permits|rated|rating|limit)(?!\p{L})/iu,
  'tire.readCold': /(?<!\p{L})(?:label|sticker|placard|sidewall|plate)(?!\p{L})/iu,
};

/** Whether what stands around a saying in its clause tells of papers, and of the thing itself nothing. */
function isOfPapers(fact: string, text: string, from: number): boolean {
  const mark = ofPapers[fact];
  if (!mark) return false;
  const ahead = text.slice(0, from);
  return mark.test(ahead.slice(Math.max(ahead.search(/[^.?!;\n]*$/), from - 70)));
}

const finds = (words: readonly string[], letters: string): boolean =>
  words.some((word) => letters.includes(word));

/** A saying of a fact of one topic, and of what a text must have to hold it. */
type Told = {
  readonly fact: string;
  /** What it says, where it holds no number that says it. */
  readonly value?: string;
  readonly saying: string;
  readonly needed: readonly (readonly string[])[];
  readonly isMarked: boolean;
};

const byTopic = new WeakMap<Topic, readonly Told[]>();

function allOf(topic: Topic): readonly Told[] {
  const before = byTopic.get(topic);
  if (before) return before;
  const told = (fact: string, all: readonly string[], value?: string): readonly Told[] =>
    all.map((saying) => ({
      ...{ fact, saying, needed: neededIn(saying), isMarked: /[#@]/.test(saying) },
      ...(value !== undefined && { value }),
    }));
  const isAsked = ([fact]: readonly [string, unknown]): boolean => Object.hasOwn(topic.facts, fact);
  const made = [
    ...Object.entries(sayings.numbers)
      .filter(isAsked)
      .flatMap(([fact, all]) => told(fact, all)),
    ...Object.entries(sayings.values)
      .filter(isAsked)
      .flatMap(([fact, options]) =>
        Object.entries(options).flatMap(([value, all]) => told(fact, all, value)),
      ),
  ];
  byTopic.set(topic, made);
  return made;
}

/** Where a saying stands, and where its number does. */
function* placesIn({ saying, isMarked }: Told, { plain, letters }: Marked) {
  // A number in words may be one of a saying’s own words.
  for (const found of (isMarked ? letters : plain).matchAll(formOf(saying))) {
    const [from, to] = [found.index, found.index + found[0].length];
    const number = found.indices?.groups?.n?.[0] ?? from + found[0].indexOf('#');
    yield { from, to, number };
  }
}

/** Behind a comma begins what may belong to the next number. */
const isLoose = (text: string, { from, to }: Saying): boolean =>
  /,(?!\d{3})/.test(text.slice(from, to));

/**
 * Of several that stand over one number the surest: without a comma, then the longest. What is told of
 * one fact in two ways that are as sure is not told.
 */
function settled(all: readonly Saying[], text: string): Sayings {
  const unsure = (each: Saying): number => (isLoose(text, each) ? 1 : 0);
  const sorted = all.toSorted(
    (a, b) => unsure(a) - unsure(b) || b.to - b.from - (a.to - a.from) || a.from - b.from,
  );
  const taken = new Set<number>();
  const kept = new Map<string, Saying>();
  const unsettled = new Set<string>();
  const rankOf = ({ fact, value }: Saying): number => sayings.first[fact]?.indexOf(value) ?? -1;
  for (const each of sorted) {
    if (each.amount && taken.has(each.amount.from)) continue;
    const before = kept.get(each.fact);
    if (before) {
      if (rankOf(each) >= 0 && rankOf(before) >= 0) {
        if (rankOf(each) < rankOf(before)) kept.set(each.fact, each);
        continue;
      }
      // “40 gal fresh 32 gray”: the number is of the other one.
      const isOfAnother = sorted.some(
        (one) =>
          each.amount !== undefined &&
          one.fact !== each.fact &&
          one.amount?.from === each.amount.from &&
          unsure(one) <= unsure(each),
      );
      if (isOfAnother) continue;
      const isInside = each.from >= before.from && each.to <= before.to;
      if (before.value !== each.value && unsure(before) === unsure(each) && !isInside)
        unsettled.add(each.fact);
      continue;
    }
    if (each.amount) taken.add(each.amount.from);
    kept.set(each.fact, each);
  }
  const isBeside = (fact: string): boolean =>
    sayings.unless[fact]?.some((other) => kept.has(other)) === true;
  return {
    told: [...kept.values()].filter(({ fact }) => !unsettled.has(fact) && !isBeside(fact)),
    unsettled,
  };
}

/** Facts that a text tells in sayings, each with where it stands. */
export function sayingsIn(topic: Topic, text: string, amounts: readonly Amount[]): Sayings {
  const marks = marked(text, amounts);
  const { plain } = marks;
  const likely = allOf(topic).filter(
    ({ fact, isMarked, needed }) =>
      (!isMarked || amounts.length > 0) &&
      needed.every((words) => finds(words, plain)) &&
      (sayings.home[fact] === topic.id || finds(sayings.only[fact] ?? [''], plain)),
  );
  const found = likely.flatMap((each) => {
    const { fact, value } = each;
    return [...placesIn(each, marks)].flatMap(({ from, to, number }): readonly Saying[] => {
      if (value !== undefined) {
        const ahead = text.slice(Math.max(0, from - 24), from);
        if (turned.test(ahead) || isOfPapers(fact, text, from)) return [];
        if (isWanted(fact, text, from, to)) return [];
        return [{ fact, value, from, to }];
      }
      const told = marks.at.get(number);
      const amount = told && inPounds(fact, told, text);
      if (!amount || !isMeant(fact, text, amount, { from, to })) return [];
      if (isForEach(text, amount) && !ofOne.test(fact)) return [];
      if (isEither(text, amount)) return [];
      if (isYear(text, amount) && fact !== 'plan.year') return [];
      const said = toldOf(topic, fact, amount);
      return said === undefined ? [] : [{ fact, value: said, from, to, amount }];
    });
  });
  return settled(found, text);
}
