import type { Problem } from './problem';

export const placed = ({ fact, row, column }: Problem): string => {
  const name = `\`${fact}\``;
  if (row === undefined) return name;
  return column === undefined ? `${name}, row ${row}` : `${name}, row ${row}, ${column}`;
};

export const hint = (near: string | undefined): string =>
  near === undefined ? '' : ` Did you mean \`${near}\`?`;

/** Where nothing was given there is nothing to quote. */
export const withoutGaps = (said: string): string =>
  said.replaceAll(/“\s*”|(?<!\S)`\s*`/g, 'an empty text').replace(/^an/, 'An');

/** The sentence of what whoever asks can do wrong; undefined of what authors and houses can. */
export function wordedOfGiven(problem: Problem): string | undefined {
  const { code, fact, found, wanted, near } = problem;
  const at = placed(problem);
  switch (code) {
    case 'no-such-fact':
      return `\`${fact}\` is not a fact of ${wanted}.${hint(near)}`;
    case 'not-a-quantity':
      return `${at}: “${found}” cannot be read as a quantity; write ${wanted}.`;
    case 'no-unit':
      return `${at}: “${found}” has no unit; write ${wanted}.`;
    case 'no-such-unit':
      return `${at}: there is no unit “${found}”; write ${wanted}.${hint(near)}`;
    case 'two-units':
      return `${at}: “${found}” mixes two units; write ${wanted}.`;
    case 'two-ways':
      return `${at}: “${found}” can be read as thousands or as a decimal; write ${found.replace('.', ',')}, or one digit more behind the point.`;
    case 'wrong-unit':
      return `${at}: “${found}” is not ${wanted}.`;
    case 'back-to-front':
      return `${at}: the range “${found}” runs back to front; write the smaller end first.`;
    case 'out-of-range':
      return `${at}: ${found} is outside what it can be, ${wanted}.`;
    case 'no-such-option':
      return `${at}: “${found}” is not one of ${wanted}.${hint(near)}`;
    case 'not-rows':
      return `${at} is a list, and “${found}” is none; give ${wanted}.`;
    case 'too-many-rows':
      return `${at} has ${found} rows, and ${wanted} are the most; put small things together in one.`;
    case 'no-such-column':
      return `${at}: “${found}” is not one of its columns, ${wanted}.${hint(near)}`;
    case 'missing-cell':
      return `${at} is empty; write ${wanted}.`;
    case 'no-value-on':
      return `${at} has no value on ${found}; ${wanted}.`;
    case 'given-twice':
      return `${at} is the old id of \`${found}\`, which is given too; ${wanted}.`;
    case 'not-a-day':
      return `${at}: “${found}” is not a day; write ${wanted}.`;
    case 'not-plain':
    case 'not-a-row':
      return `${at}: ${found} cannot be read; give ${wanted}.`;
    case 'not-a-case':
      return `What is asked is ${found}; give ${wanted}.`;
    case 'not-facts':
    case 'not-an-answer':
    case 'not-options':
      return `${at} is ${found}; give ${wanted}.`;
    case 'no-such-asking':
    case 'no-such-part':
      return `\`${found}\` is nothing that ${fact} has; write ${wanted}.${hint(near)}`;
    case 'not-a-whole-number':
      return `${fact} is ${found}; give ${wanted}.`;
    case 'not-a-topic':
      return `${at}: ${found} is not a rule set; give ${wanted}.`;
    default:
      return undefined;
  }
}

/** Of what an entry is called with beside a rule set and facts. */
export const sayArgument = (problem: Problem): string =>
  withoutGaps(`${placed(problem)} is ${problem.found}; give ${problem.wanted}.`);

/** One sentence that names the place, what was found and what would be right. */
export const sayGiven = (problem: Problem): string =>
  withoutGaps(wordedOfGiven(problem) ?? `${placed(problem)}: ${problem.found}; ${problem.wanted}.`);
