import type { Topic } from '@tarebook/rules/engine';
import { findUnit, sameDimension } from '@tarebook/rules/quantity';
import { wordsOfFacts } from '../words/all';
import { type Amount, amountsIn } from './amounts';
import { choicesIn, type Said } from './choices';
import { choicesByClause, numbersByClause } from './clauses';
import { codedIn } from './coded';
import { asTheyHold } from './corrections';
import { placesOf } from './cues';
import { isEither, isForEach, isMeant, isYear } from './not-meant';
import { isOfReceiverLabel } from './receiver-ratings';
import { sayingsIn } from './sayings';
import { inThousands, mayBeSpan, spanOf } from './spans';
import { kindAround, kindBeside, kindOf, unsaidKinds } from './unsaid';
import { withVolts } from './volts';

/** Where something stands in a text: the words for it with its number, and the number alone. */
export type Place = { readonly from: number; readonly to: number; readonly amount: Amount };

/** A number that may be any of several facts, as nobody said which. */
export type Open = Place & { readonly among: readonly string[] };

type Told = {
  readonly facts: Readonly<Record<string, string>>;
  /** The very words each fact came from. */
  readonly words: Readonly<Record<string, string>>;
  readonly places: Readonly<Record<string, Place>>;
  /** Facts whose value is said in words and not in figures. */
  readonly said: readonly Said[];
  /** What has to be asked before it is a fact. */
  readonly open: readonly Open[];
};

/** Something that a number may be, by a word for it that stands near. */
type Reading = {
  readonly fact: string;
  /** All that it may be, where the word leaves that open. */
  readonly among?: readonly string[];
  readonly amount: Amount;
  /** How far the word stands from the number, in characters; less is likelier. */
  readonly away: number;
  readonly from: number;
  readonly to: number;
  /** Whether its word opens: no other number stands right before it. */
  readonly opens: boolean;
  /** Whether its word stands behind it and right before the next number. */
  readonly leads: boolean;
};

/** A word stands for a number this far before it, or this far behind it. */
const before = 34;
const behind = 24;
/** A number without a unit is a weight or a price only right beside a word for one. */
const beside = 4;
const bare = ['lb', 'USD'];
/** Right beside its word a number of these needs no unit either: “sidewall says 80”. */
const bareBeside = ['psi', 'in', 'V', 'ft', 'mph', '°F', 'W', 'gal', 'Ah', ''];
const sure = 10;

/** Words that only join a number to what it is of. */
const joins =
  /(?<![\p{L}\d])(?:is|it|its|are|at|of|about|around|roughly|maybe|like|says|said|reads|was|only|just|a|an|the|up|to|for|comes|in|s|weigh|weighs|weighing|approx|has|have|got|with|that|which)(?![\p{L}\d])|[’':=~(]/giu;
const joined = (between: string): string => between.replace(joins, '').replace(/\s+/g, ' ').trim();

/** Between a number and its word no other sentence, number or list item stands. */
const isOneClause = (between: string): boolean => !/[.;?!\n]|\d/.test(between.replace(/\.$/, ''));

function unitFits(topic: Topic, fact: string, { unit, value }: Amount, away: number): boolean {
  const declared = topic.facts[fact];
  if (declared?.kind !== 'quantity') return false;
  if (unit === undefined) {
    if (declared.unit === 'ft' && value < 100) return false;
    if (away === 0 && bareBeside.includes(declared.unit)) return true;
    return bare.includes(declared.unit) && value >= 100 && away <= beside;
  }
  if (declared.unit === '') return false;
  const [is, wanted] = [findUnit(unit), findUnit(declared.unit)];
  return is !== undefined && wanted !== undefined && sameDimension(is.dimension, wanted.dimension);
}

/** A plate of a scale in one of its passes. */
const onScale = /^(?:tight|slack|alone)\.(?:front|rear|trailer)$/;

/** What stands behind the axle is ahead of it by less than nothing. */
const isBehindAxle = (fact: string, text: string, { to }: Amount): boolean =>
  (fact.endsWith('.ahead') || fact === 'camper.center') &&
  /^ ?(?:behind|back of|aft of|past)\b/i.test(text.slice(to));

type Near = Omit<Reading, 'fact' | 'among'> & { readonly between: string };

const andMore = /(?<![\p{L}\d])(?:and|n|but|with|w)(?![\p{L}\d])|[&+/]/iu;

/** So near, a number and a word stand side by side. */
const sideBySide = 2;

/** The numbers of a text that stand near a word, with how far. */
function nearTo(cue: string, text: string, amounts: readonly Amount[]): readonly Near[] {
  return [...placesOf(cue, text)].flatMap(({ from, to }) =>
    amounts.flatMap((amount): readonly Near[] => {
      const isBefore = to <= amount.from;
      const isBehind = from >= amount.to;
      if (!isBefore && !isBehind) return [];
      const between = isBefore ? text.slice(to, amount.from) : text.slice(amount.to, from);
      const most = isBefore ? before : behind;
      if (between.length > most || !isOneClause(between)) return [];
      // “7k and sticker on the door …”: behind “and” begins what belongs to the next number.
      if (isBehind && andMore.test(between)) return [];
      // Behind a comma begins what belongs to the next number.
      if (between.includes(',') && (isBehind || joined(between) !== ',')) return [];
      // “Two at 70 lb each” are not 70 lb, unless the word is of one of them.
      if (isForEach(text, amount) && !/each|per|^a /.test(cue)) return [];
      if (isYear(text, amount) || isEither(text, amount)) return [];
      const away = between.length + (between.includes(',') ? 12 : 0) - Math.min(4, cue.length / 4);
      const near = (gap: number): boolean => gap >= 0 && gap <= sideBySide;
      const opens = isBefore && !amounts.some((each) => near(from - each.to));
      const leads = isBehind && amounts.some((each) => near(each.from - to));
      return [{ amount, away, from, to, between, opens, leads }];
    }),
  );
}

/** Numbers right beside a word that leaves open which fact it is; a word beside them may say it. */
function unsaidIn(topic: Topic, text: string, amounts: readonly Amount[]): readonly Reading[] {
  return unsaidKinds.flatMap((unsaid) => {
    const among = Object.keys(unsaid.kinds);
    return unsaid.words.flatMap((cue) =>
      nearTo(cue, text, amounts).flatMap(({ between, ...near }) => {
        const { amount, away, from, to } = near;
        if (joined(between) !== '' || /[,&]/.test(between)) return [];
        const possible = among.filter((fact) => unitFits(topic, fact, amount, 0));
        const [first] = possible;
        if (first === undefined) return [];
        const [start, end] = [Math.min(from, amount.from), Math.max(to, amount.to)];
        const said = kindBeside(unsaid, text, start, end) ?? kindAround(unsaid, text);
        const fact = kindOf(unsaid, possible, said);
        // A word that says which belongs to this number, and to no other.
        const reading = { ...near, away: said === undefined ? away : away - sure };
        if (said !== undefined && !possible.includes(said)) return [];
        if (!possible.every((each) => isMeant(each, text, amount, { from, to }))) return [];
        return [
          fact === undefined ? { ...reading, fact: first, among: possible } : { ...reading, fact },
        ];
      }),
    );
  });
}

const cues = new WeakMap<Topic, readonly (readonly [string, readonly string[]])[]>();

/** What people call each fact: in this topic, and wherever it is asked. A count is said one way only. */
function cuesOf(topic: Topic): readonly (readonly [string, readonly string[]])[] {
  const before = cues.get(topic);
  if (before) return before;
  const made = Object.entries(topic.facts).flatMap(([fact, declared]) => {
    if (declared.kind !== 'quantity') return [];
    const own = declared.unit === '' ? [] : (topic.called?.facts?.[fact] ?? []);
    const all = [...new Set([...own, ...(wordsOfFacts.facts[fact] ?? [])])];
    return all.length === 0 ? [] : [[fact, all] as const];
  });
  cues.set(topic, made);
  return made;
}

/** Every way in which the numbers of a text may be facts of a topic. */
function readingsOf(topic: Topic, text: string, amounts: readonly Amount[]): readonly Reading[] {
  if (amounts.length === 0) return [];
  const unsaid = unsaidIn(topic, text, amounts);
  const plain = cuesOf(topic).flatMap(([fact, all]) =>
    all.flatMap((cue) =>
      nearTo(cue, text, amounts)
        .filter(({ amount, between }) => unitFits(topic, fact, amount, joined(between).length))
        .filter(({ amount, from, to }) => isMeant(fact, text, amount, { from, to }))
        .map((near): Reading => ({ ...near, fact })),
    ),
  );
  const isOf = (amount: Amount) => (each: Reading) => each.amount.from === amount.from;
  // Where the word itself leaves it open, no topic takes it for one; a longer word says more.
  const left = plain.filter(
    ({ amount, from, to }) =>
      !unsaid.filter(isOf(amount)).some((each) => each.from === from && each.to === to),
  );
  const open = unsaid.filter(
    ({ amount, from, to }) =>
      !left
        .filter(isOf(amount))
        .some((each) => each.from <= from && each.to >= to && each.to - each.from > to - from),
  );
  return [...open, ...left];
}

const isInKilograms = (amounts: readonly Amount[]): boolean =>
  amounts.some(({ unit }) => unit === 'kg') && !amounts.some(({ unit }) => unit === 'lb');

/**
 * The facts that a text tells, with the very words of each. A number is taken for a fact only by a
 * word for it that stands near and by its unit; what may be either of two is neither, as a wrong
 * weight is worse than none.
 */
export function factsIn(topic: Topic, text: string): Told {
  const all = asTheyHold(text, inThousands(text, withVolts(text, amountsIn(text))));
  const { coded, left: amounts } = codedIn(topic, text, all);
  const { told: sayings, unsettled } = sayingsIn(topic, text, amounts);
  const held = new Set(sayings.flatMap(({ amount }) => amount?.from ?? []));
  const spoken = new Set([...sayings.map(({ fact }) => fact), ...unsettled]);
  const near = readingsOf(
    topic,
    text,
    amounts.filter(({ from }) => !held.has(from)),
  ).filter(({ fact }) => !spoken.has(fact));
  const numberFirst = !near.some(({ opens }) => opens);
  const readings = near
    .map((each) => {
      // “Dry 5150 gvwr 6800”: each word belongs to the number behind it.
      const isNext =
        each.leads && near.some((one) => one.opens && one.amount.from === each.amount.from);
      // “40 gal fresh 32 gray 28 black”: each word belongs to the number before it.
      const isPast = numberFirst && each.to <= each.amount.from;
      return isNext || isPast ? { ...each, away: each.away + 2 } : each;
    })
    .toSorted((a, b) => a.away - b.away);
  const facts: Record<string, string> = {};
  const words: Record<string, string> = {};
  const places: Record<string, Place> = {};
  const open: Open[] = [];
  const taken = new Set(held);
  for (const { fact, value, amount, from, to } of sayings) {
    facts[fact] = value;
    words[fact] = text.slice(from, to);
    if (amount) places[fact] = { from, to, amount };
  }
  const heard = new Set<number>();
  for (const { fact, among, amount, away, from, to } of readings) {
    if (taken.has(amount.from) || Object.hasOwn(facts, fact) || heard.has(from)) continue;
    const rival = readings.find(
      (each) => each.fact !== fact && each.amount.from === amount.from && each.away <= away + 0.5,
    );
    taken.add(amount.from);
    const place = { from: Math.min(from, amount.from), to: Math.max(to, amount.to), amount };
    if (among) {
      heard.add(from);
      open.push({ ...place, among });
      continue;
    }
    if (rival && !Object.hasOwn(facts, rival.fact)) {
      open.push({ ...place, among: [fact, rival.fact] });
      continue;
    }
    heard.add(from);
    const declared = topic.facts[fact];
    const own = declared?.kind === 'quantity' ? declared.unit : '';
    facts[fact] =
      `${isBehindAxle(fact, text, amount) ? -amount.value : amount.value} ${amount.unit ?? own}`;
    words[fact] = text.slice(place.from, place.to);
    places[fact] = place;
  }
  const isTold = (fact: string): boolean => Object.hasOwn(facts, fact) || unsettled.has(fact);
  const byClause = numbersByClause(topic, text, amounts, taken, isTold);
  for (const { fact, value, amount } of byClause.told) {
    taken.add(amount.from);
    facts[fact] = isBehindAxle(fact, text, amount) ? `-${value}` : value;
    words[fact] = text.slice(amount.from, amount.to);
    places[fact] = { from: amount.from, to: amount.to, amount };
  }
  for (const { amount, among } of byClause.unclear) {
    taken.add(amount.from);
    open.push({ from: amount.from, to: amount.to, amount, among });
  }
  for (const [fact, unit] of Object.entries(wordsOfFacts.units)) {
    const declared = topic.facts[fact];
    if (declared?.kind !== 'quantity' || Object.hasOwn(facts, fact)) continue;
    // Only one amount of that unit, and it is nothing else: then the unit says which fact it is.
    const [amount, another] = amounts.filter((each) => each.unit === unit);
    if (!amount || another || taken.has(amount.from) || isForEach(text, amount)) continue;
    if (!isMeant(fact, text, amount, amount)) continue;
    taken.add(amount.from);
    facts[fact] = `${amount.value} ${unit}`;
    words[fact] = text.slice(amount.from, amount.to);
    places[fact] = { from: amount.from, to: amount.to, amount };
  }
  for (const [fact, { amount, from, to }] of Object.entries(places)) {
    const span = spanOf(text, amount, amounts, (other) => !taken.has(other.from));
    if (!span) continue;
    const { least, most, other } = span;
    taken.add(other.from);
    const unit = amount.unit ?? other.unit ?? /[^\d.-]*$/.exec(facts[fact] ?? '')?.[0].trim() ?? '';
    // One end of what has to be one figure says nothing.
    if (!mayBeSpan(topic, fact)) {
      for (const of of [facts, words, places]) delete of[fact];
      continue;
    }
    facts[fact] = `${least} to ${most} ${unit}`.trim();
    const place = { from: Math.min(from, other.from), to: Math.max(to, other.to), amount };
    words[fact] = text.slice(place.from, place.to);
    places[fact] = place;
  }
  const isOver = coded.some(({ fact }) => onScale.test(fact));
  // What is told as a pass or a code is read there, and as nothing else.
  for (const fact of Object.keys(facts)) {
    const isCoded = coded.some((each) => each.fact === fact);
    if (!isCoded && !(isOver && onScale.test(fact))) continue;
    for (const of of [facts, words, places]) delete of[fact];
  }
  // Whoever tells weights in kilograms, and none in pounds, means kilograms where no unit stands.
  if (isInKilograms(amounts)) {
    for (const [fact, { amount }] of Object.entries(places)) {
      if (amount.unit === undefined) facts[fact] = facts[fact]?.replace(/ lb$/, ' kg') ?? '';
    }
  }
  const choices = choicesIn(topic, text);
  const said = [...coded, ...choices.said].filter(({ fact }) => !Object.hasOwn(facts, fact));
  for (const { fact, value, from, to } of said) {
    facts[fact] = value;
    words[fact] = text.slice(from, to);
  }
  const clauses = choicesByClause(
    topic,
    text,
    (fact) => isTold(fact) || choices.unsettled.has(fact),
  );
  for (const { fact, value, from, to } of clauses) {
    facts[fact] = value;
    words[fact] = text.slice(from, to);
  }
  const bars = 'hitch.distribution';
  if (isOfReceiverLabel(topic, text, words[bars] ?? '\0')) {
    for (const of of [facts, words, places]) delete of[bars];
  }
  return { facts, words, places, said: [...said, ...clauses], open };
}
