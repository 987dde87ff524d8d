import { isClosedBy, type OpenDecision, readings, type Setting } from './open';
import type { Plausible } from './plausible';

/** Pairs are tried at four places of each number, and at every option of each choice. */
const fourths = [0.1, 0.4, 0.6, 0.9];

function* inputsOf(values: Plausible) {
  if (values.kind === 'options') for (const option of values.options) yield values.input(option);
  else {
    const { from, to } = values;
    for (const share of fourths) yield values.input(from + share * (to - from));
  }
}

/** Whether two facts, both told, settle a condition wherever they may plausibly be. */
function pairSettles(
  setting: Setting,
  decision: OpenDecision,
  a: readonly [string, Plausible],
  b: readonly [string, Plausible],
): boolean {
  for (const first of inputsOf(a[1])) {
    for (const second of inputsOf(b[1])) {
      const set = new Map([
        [a[0], first],
        [b[0], second],
      ]);
      if (!isClosedBy(decision, readings(setting, [decision.rule], set)[0])) return false;
    }
  }
  return true;
}

/**
 * With which other facts one decides a condition that it does not settle alone: one partner where
 * a pair settles it, else all that it still moves with.
 */
export function partnersOf(
  setting: Setting,
  decision: OpenDecision,
  fact: string,
  values: ReadonlyMap<string, Plausible>,
): readonly string[] {
  const others = [...decision.facts.keys()].filter((each) => each !== fact);
  const [only, more] = others;
  if (only === undefined || more === undefined) return others;
  const mine = values.get(fact);
  if (!mine || others.length > 4) return others;
  const partners = others.filter((other) => {
    const theirs = values.get(other);
    return theirs && pairSettles(setting, decision, [fact, mine], [other, theirs]);
  });
  return partners.length > 0 ? partners.slice(0, 1) : others;
}
