import { type Asked, InputError, type Problem } from '@tarebook/rules/engine';
import type { CaseDocument, Trouble } from './shapes';

/** @throws InputError with everything that is wrong with a document, each with its place */
export function refuseTroubled(troubles: readonly Trouble[]): void {
  if (troubles.length === 0) return;
  const problems = troubles.map(({ line, column, says }): Problem => {
    const wanted = 'a document without troubles';
    return { code: 'in-document', fact: `${line}:${column}`, found: says, wanted };
  });
  throw new InputError(problems, ({ fact, found }) => `${fact}: ${found}`);
}

/**
 * What a case asks, under no house.
 *
 * @param day the day whose parameters count, in place of the case's own
 */
export function askedIn({ troubles, facts, readFrom, front }: CaseDocument, day?: string): Asked {
  refuseTroubled(troubles);
  const asOf = day ?? front.asOf;
  return { facts, readFrom, ...(asOf !== undefined && { asOf }) };
}
