import {
  type Asked,
  InputError,
  type Problem,
  refuseUnless,
  refuseUnlessParts,
} from '@tarebook/rules/engine';
import type { CaseDocument, Trouble } from './shapes';

/** @throws InputError for what is no text, such as a file that was read without its encoding */
export const refuseNoText = (given: unknown, place = 'text'): void =>
  refuseUnless(typeof given === 'string', place, given, 'a text, such as a file read as UTF-8');

/** @throws InputError for what no reader of this package gave */
export const refuseNoDocument = (given: unknown): void =>
  refuseUnlessParts(
    'document',
    given,
    { text: 'text', troubles: 'list', blocks: 'list', front: 'parts' },
    'what `readCase`, `readRig` or `readNote` gives',
  );

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
