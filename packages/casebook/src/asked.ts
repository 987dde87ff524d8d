import type { Asked } from '@tarebook/rules/engine';
import type { CaseDocument } from './shapes';

/**
 * What a case asks, under no house.
 *
 * @param day the day whose parameters count, in place of the case's own
 */
export function askedIn({ troubles, facts, readFrom, front }: CaseDocument, day?: string): Asked {
  const [first] = troubles;
  if (first) throw new Error(`${first.line}:${first.column}: ${first.says}`);
  const asOf = day ?? front.asOf;
  return { facts, readFrom, ...(asOf !== undefined && { asOf }) };
}
