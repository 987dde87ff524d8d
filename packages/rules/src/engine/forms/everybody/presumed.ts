import { endsOf } from '../../answer/named';
import type { FactsGiven } from '../../check/given';
import type { Facts } from '../../define/shapes';
import { restsOnKnown } from '../../formula/reckon';
import { isTold, type Matter } from '../matter';

const tidy = (value: number): number => Number(value.toPrecision(6));

/** `= name`: a result of the case, as a case writes it; undefined where it is not known. */
function resultOf({ compiled, run }: Matter, written: string): string | undefined {
  const name = written.slice(1).trim();
  if (!restsOnKnown(run.value(name), run.isOpen)) return undefined;
  const { lo, hi, unit } = endsOf(compiled, run, name);
  return lo === hi ? `${tidy(lo)} ${unit}`.trim() : `${tidy(lo)}–${tidy(hi)} ${unit}`.trim();
}

/**
 * What is presumed of a case: what it does not tell, and nothing that is to be looked for; undefined
 * where something would follow from a result that is not known, since the rest would not do alone.
 */
export function presumed(
  matter: Matter,
  given: Facts,
  looked: readonly string[],
): FactsGiven | undefined {
  const facts: Record<string, FactsGiven[string]> = {};
  for (const [fact, value] of Object.entries(given)) {
    if (isTold(matter, fact) || looked.includes(fact)) continue;
    const isResult = typeof value === 'string' && value.startsWith('=');
    const found = isResult ? resultOf(matter, value) : value;
    if (found === undefined) return undefined;
    facts[fact] = found;
  }
  return facts;
}
