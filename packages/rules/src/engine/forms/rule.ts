import { endsOf } from '../answer/named';
import { optionOf, textOf } from '../answer/shown';
import type { FactsGiven } from '../check/given';
import type { ForEverybody, Worked } from '../define/shapes';
import { isSettled } from '../formula/reckon';
import { holesIn } from '../words/fill';
import { message } from '../words/message';
import { nounOr, type Sayable } from '../words/value';
import { presumed } from './everybody/presumed';
import { isAnythingTold, isTold, type Matter, matterOf } from './matter';
import { isAnyShare } from './wide';

/** What is said to all who ask the same, if the topic has it. */
export function everybodyFor(
  { topic }: Matter,
  asking: string | undefined,
): ForEverybody | undefined {
  const own = topic.everybody ?? {};
  return (asking === undefined ? undefined : own[asking]) ?? own.any;
}

/** A text with the values of a case in its holes; nothing while one is not known well enough. */
export function saidIfKnown({ topic, compiled, run }: Matter, words: string): readonly Sayable[] {
  const isKnown = holesIn(words).every(
    (name) => isSettled(run.value(name), run.isOpen) && !isAnyShare(topic, name, run.value(name)),
  );
  return isKnown ? [textOf(compiled, run, words)] : [];
}

/**
 * Whether a figure would be worked out from what was told together with an amount that nobody told
 * and the text does not name: it would pass for an answer.
 */
function isMixed(
  matter: Matter,
  { says, given = {} }: NonNullable<ForEverybody['worked']>,
  presumed: FactsGiven,
): boolean {
  const named = holesIn(says);
  const isAmount = (fact: string): boolean => {
    const kind = matter.topic.facts[fact]?.kind;
    return kind === 'quantity' || kind === 'rows';
  };
  const amounts = Object.keys(given).filter(isAmount);
  return (
    amounts.some((fact) => isTold(matter, fact)) &&
    amounts.some((fact) => Object.hasOwn(presumed, fact) && !named.includes(fact))
  );
}

/** The worked figure: a text filled from the case and what it is worked out from. */
export function workedSaid(matter: Matter, { worked }: ForEverybody): readonly Sayable[] {
  const given = worked && presumed(matter, worked.given ?? {}, []);
  // Where all of it was told, it is no example any more: what was asked is answered with it.
  if (!worked || !given || Object.keys(given).length === 0 || isMixed(matter, worked, given))
    return [];
  // Nor where it comes out of what was told, whatever else would be given.
  if (isAnythingTold(matter) && saidIfKnown(matter, worked.says).length > 0) return [];
  const facts = { ...matter.asked.facts, ...given };
  const example = matterOf(matter.topic, { ...matter.asked, facts });
  return saidIfKnown(example, worked.says);
}

/** So many told facts are named once more where nothing could be made of them. */
const mostNamed = 2;

/** What was told, named once more, so that whoever told it knows that it was heard. */
function namedSaid(matter: Matter, asking: string | undefined): readonly Sayable[] {
  const { topic, asked, compiled, run } = matter;
  const told = Object.keys(asked.facts).filter(
    (fact) => isTold(matter, fact) && asked.facts[fact] !== 'other',
  );
  const about = (asking === undefined ? undefined : topic.askings?.[asking]?.impliedBy) ?? [];
  // What the question is about is named before all; else figures, which are heard best.
  const ofIt = told.filter((fact) => about.includes(fact));
  const figures = told.filter((fact) => topic.facts[fact]?.kind === 'quantity');
  const [named = told] = [ofIt, figures].filter((each) => each.length > 0);
  const of = named
    .flatMap((id): readonly Sayable[] => {
      const fact = topic.facts[id];
      const given = asked.facts[id];
      if (!fact || fact.kind === 'rows') return fact ? [nounOr(fact, id)] : [];
      const isOption = fact.kind !== 'quantity' && typeof given === 'string';
      const value: Sayable = isOption
        ? optionOf(compiled, id, given)
        : { ...endsOf(compiled, run, id), style: 'exact' };
      return [message('named-with', { noun: nounOr(fact, id), value })];
    })
    .slice(0, mostNamed);
  return of.length === 0 ? [] : [message('told-so-far', { of })];
}

/**
 * What is made of the little that was told: a sentence worked out with it, of several the one that
 * names most of it; where there is none, what was told is named.
 *
 * @param isOwnOnly neither an example with what was told in it, nor what was told named once more
 */
export function fromToldSaid(
  matter: Matter,
  asking: string | undefined,
  isOwnOnly = false,
): { readonly said: readonly Sayable[]; readonly isWorked: boolean } {
  if (!isAnythingTold(matter)) return { said: [], isWorked: false };
  const everybody = everybodyFor(matter, asking);
  const toldIn = ({ says }: Worked): number =>
    holesIn(says).filter((name) => isTold(matter, name)).length;
  const own = everybody?.fromTold ?? [];
  const worked = everybody?.worked;
  const isFit = worked && !isMixed(matter, worked, presumed(matter, worked.given ?? {}, []) ?? {});
  const all = [...own, ...(isFit && !isOwnOnly ? [worked] : [])]
    .filter((each) => toldIn(each) > 0)
    .toSorted((a, b) => toldIn(b) - toldIn(a));
  for (const { says, given = {} } of all) {
    const more = presumed(matter, given, []);
    if (!more) continue;
    const facts = { ...matter.asked.facts, ...more };
    const said = saidIfKnown(matterOf(matter.topic, { ...matter.asked, facts }), says);
    if (said.length > 0) return { said, isWorked: true };
  }
  return { said: isOwnOnly ? [] : namedSaid(matter, asking), isWorked: false };
}

/** The rule that answers a question without the figures of the one who asks. */
export function ruleSaid(matter: Matter, asking: string | undefined): readonly Sayable[] {
  const everybody = everybodyFor(matter, asking);
  return everybody ? saidIfKnown(matter, everybody.rule) : [];
}

/** Why it is so, and a figure worked out. */
export function reasonSaid(matter: Matter, asking: string | undefined): readonly Sayable[] {
  const everybody = everybodyFor(matter, asking);
  if (!everybody) return [];
  return [...saidIfKnown(matter, everybody.because), ...workedSaid(matter, everybody)];
}

/** What is safest for whoever does not know. */
export function defaultSaid(matter: Matter, asking: string | undefined): readonly Sayable[] {
  const everybody = everybodyFor(matter, asking);
  return everybody ? saidIfKnown(matter, everybody.otherwise) : [];
}
