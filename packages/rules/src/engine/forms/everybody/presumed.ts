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

/** What is presumed of a case: what it does not tell, and nothing that is to be looked for. */
export function presumed(matter: Matter, given: Facts, looked: readonly string[]): FactsGiven {
  return Object.fromEntries(
    Object.entries(given).flatMap(([fact, value]): [string, FactsGiven[string]][] => {
      if (isTold(matter, fact) || looked.includes(fact)) return [];
      if (typeof value !== 'string' || !value.startsWith('=')) return [[fact, value]];
      const found = resultOf(matter, value);
      return found === undefined ? [] : [[fact, found]];
    }),
  );
}
