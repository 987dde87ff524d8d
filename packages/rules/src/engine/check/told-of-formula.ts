import { FormulaError } from '../formula/grammar/problem';
import { nearest } from './near';
import type { Note } from './noted';

/** The message of an error, without its stop. */
const messageOf = ({ message }: Error): string => message.replace(/\.$/, '');

/**
 * Takes down what a formula or a condition could not be read by.
 *
 * @param known names of which one may have been meant
 */
export function noteFormula(problem: unknown, at: string, known: Iterable<string>, note: Note) {
  if (!(problem instanceof Error)) throw problem;
  const { code, beside } = problem instanceof FormulaError ? problem : new FormulaError('');
  if (!beside) {
    note(code, at, messageOf(problem));
    return;
  }
  const { found, ...more } = beside;
  const near = nearest(found, more.options ?? known);
  const isMeant = near !== undefined && code !== 'word-without-quotes';
  note(code, at, found, { ...more, ...(isMeant && { near }) });
}
