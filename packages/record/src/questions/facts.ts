import type { Topic } from '@tarebook/rules/engine';
import { findUnit, sameDimension } from '@tarebook/rules/quantity';
import { type Amount, amountsIn } from './amounts';

type Told = {
  readonly facts: Readonly<Record<string, string>>;
  /** The very words each fact came from. */
  readonly words: Readonly<Record<string, string>>;
};

/** Something that a number may be, by a word for it that stands near. */
type Reading = {
  readonly fact: string;
  readonly amount: Amount;
  /** How far the word stands from the number, in characters; less is likelier. */
  readonly away: number;
  readonly from: number;
  readonly to: number;
};

/** A word stands for a number this far before it, or this far behind it. */
const before = 34;
const behind = 24;
/** A number without a unit is a weight or a price only right beside a word for one. */
const beside = 4;
const bare = ['lb', 'USD'];

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

function* placesOf(cue: string, text: string): Generator<{ from: number; to: number }> {
  const words = escaped(cue).replace(/[ -]/g, '[ -]');
  for (const found of text.matchAll(
    new RegExp(`(?<![\\p{L}\\d])${words}s?(?![\\p{L}\\d])`, 'giu'),
  )) {
    yield { from: found.index, to: found.index + found[0].length };
  }
}

/** Between a number and its word no other sentence, number or list item stands. */
const isOneClause = (between: string): boolean => !/[.;?!\n]|\d/.test(between.replace(/\.$/, ''));

function unitFits(topic: Topic, fact: string, { unit, value }: Amount, away: number): boolean {
  const declared = topic.facts[fact];
  if (declared?.kind !== 'quantity') return false;
  if (unit === undefined) return bare.includes(declared.unit) && value >= 100 && away <= beside;
  const [is, wanted] = [findUnit(unit), findUnit(declared.unit)];
  return is !== undefined && wanted !== undefined && sameDimension(is.dimension, wanted.dimension);
}

/** Every way in which the numbers of a text may be facts of a topic. */
function readingsOf(topic: Topic, text: string): readonly Reading[] {
  const amounts = amountsIn(text);
  return Object.entries(topic.called?.facts ?? {}).flatMap(([fact, cues]) =>
    cues.flatMap((cue) =>
      [...placesOf(cue, text)].flatMap(({ from, to }) =>
        amounts.flatMap((amount): readonly Reading[] => {
          const isBefore = to <= amount.from;
          const isBehind = from >= amount.to;
          if (!isBefore && !isBehind) return [];
          const between = isBefore ? text.slice(to, amount.from) : text.slice(amount.to, from);
          const most = isBefore ? before : behind;
          if (between.length > most || !isOneClause(between)) return [];
          // Behind a comma begins what belongs to the next number.
          if (isBehind && between.includes(',')) return [];
          const away =
            between.length + (between.includes(',') ? 12 : 0) - Math.min(4, cue.length / 4);
          if (!unitFits(topic, fact, amount, between.trim().length)) return [];
          return [{ fact, amount, away, from, to }];
        }),
      ),
    ),
  );
}

/**
 * The facts that a text tells, with the very words of each. A number is taken for a fact only by a
 * word for it that stands near and by its unit; what may be either of two is neither, as a wrong
 * weight is worse than none.
 */
export function factsIn(topic: Topic, text: string): Told {
  const readings = readingsOf(topic, text).toSorted((a, b) => a.away - b.away);
  const facts: Record<string, string> = {};
  const words: Record<string, string> = {};
  const taken = new Set<number>();
  const cues = new Set<number>();
  for (const { fact, amount, away, from, to } of readings) {
    if (taken.has(amount.from) || Object.hasOwn(facts, fact) || cues.has(from)) continue;
    const rival = readings.find(
      (each) => each.fact !== fact && each.amount.from === amount.from && each.away <= away + 0.5,
    );
    taken.add(amount.from);
    if (rival && !Object.hasOwn(facts, rival.fact)) continue;
    cues.add(from);
    const declared = topic.facts[fact];
    const own = declared?.kind === 'quantity' ? declared.unit : '';
    facts[fact] = `${amount.value} ${amount.unit ?? own}`;
    words[fact] = text.slice(Math.min(from, amount.from), Math.max(to, amount.to));
  }
  return { facts, words };
}
