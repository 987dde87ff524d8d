import { livingClauses } from './living';
import { paperClauses } from './papers';
import { rigClauses } from './rig';
import type { Clauses } from './shapes';

const parts: readonly Clauses[] = [rigClauses, livingClauses, paperClauses];

const together = <T>(part: (of: Clauses) => Readonly<Record<string, T>> | undefined) =>
  Object.fromEntries(parts.flatMap((each) => Object.entries(part(each) ?? {})));

/** What clauses must hold to tell facts, whichever topic asks them. */
export const clauses: Required<Clauses> = {
  numbers: together(({ numbers }) => numbers),
  values: together(({ values }) => values),
};
