import { mistakes } from './mistakes';
import type { Mistake, Problem } from './problem';

/** What belongs to a mistake beside what was found. */
export type Beside = Pick<
  Problem,
  'of' | 'row' | 'column' | 'unit' | 'least' | 'most' | 'options' | 'near'
>;

/** Takes down one mistake of a rule set: its kind, its place, what was found there. */
export type Note = (code: Mistake, at: string, found: string, beside?: Beside) => void;

const said = (value: unknown): string =>
  Array.isArray(value) ? value.filter((each) => each !== '').join(', ') : String(value ?? '');

/** A wording with what the problem says in its holes, of a count without a unit; nothing where there is nothing to choose from. */
function filled(wording: string, { options = [], ...problem }: Beside & { found: string }): string {
  if (wording.endsWith('$options') && said(options) === '') return '';
  const values = new Map<string, unknown>(Object.entries({ ...problem, options }));
  return wording.replaceAll(/( ?)\$(\w+)/g, (_, gap: string, name: string) => {
    const value = said(values.get(name));
    return value === '' ? '' : gap + value;
  });
}

/** What was found, worded. */
export const foundIn = (code: Mistake, problem: Beside & { found: string }): string =>
  filled(mistakes[code][0], problem);

/** Notes down in a list. */
export const noting =
  (problems: Problem[]): Note =>
  (code, fact, found, beside = {}) => {
    const wanted = filled(mistakes[code][1], { ...beside, found });
    problems.push({ code, fact, found, wanted, ...beside });
  };
