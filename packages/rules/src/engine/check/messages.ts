import type { Problem } from './problem';

const placed = ({ fact, row, column }: Problem): string => {
  const name = `\`${fact}\``;
  if (row === undefined) return name;
  return column === undefined ? `${name}, row ${row}` : `${name}, row ${row}, ${column}`;
};

const hint = (near: string | undefined): string =>
  near === undefined ? '' : ` Did you mean \`${near}\`?`;

/** Where nothing was given there is nothing to quote. */
const withoutGaps = (said: string): string =>
  said.replaceAll(/“\s*”|(?<!\S)`\s*`/g, 'an empty text').replace(/^an/, 'An');

/** One sentence that names the place, what was found and what would be right. */
export const sayProblem = (problem: Problem): string => withoutGaps(worded(problem));

function worded(problem: Problem): string {
  const { code, fact, found, wanted, near, limit } = problem;
  const at = placed(problem);
  switch (code) {
    case 'no-such-fact':
      return `\`${fact}\` is not a fact of ${wanted}.${hint(near)}`;
    case 'no-such-parameter':
      return `\`${fact}\` is not a parameter of ${wanted}.${hint(near)}`;
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
      return `${at} is a list; give it as ${wanted}.`;
    case 'too-many-rows':
      return `${at} has ${found} rows, and ${wanted} are the most; put small things together in one.`;
    case 'no-such-column':
      return `${at}: “${found}” is not one of its columns, ${wanted}.${hint(near)}`;
    case 'missing-cell':
      return `${at} is empty; write ${wanted}.`;
    case 'not-plain':
      return `${at}: ${found} cannot be read; give ${wanted}.`;
    case 'no-value-on':
      return `${at} has no value on ${found}; ${wanted}.`;
    case 'given-twice':
      return `${at} is the old id of \`${found}\`, which is given too; ${wanted}.`;
    case 'not-a-day':
      return `${at}: “${found}” is not a day; write ${wanted}.`;
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
    case 'not-json':
      return `${at}: this is not JSON; write ${wanted}.`;
    case 'not-a-house-layer':
      return `${at}: this is missing or not as it should be; write ${wanted}.`;
    case 'other-topic':
      return `${at}: this layer is for “${found}”; write ${wanted}.`;
    case 'no-house-name':
      return `${at}: the layer does not say whose it is; write ${wanted}.`;
    case 'not-a-house-choice':
      return `${at}: this is not a house choice; a house may choose ${wanted}.`;
    case 'not-a-parameter':
      return `${at}: this is a fact of the case, such as a rating, and stays as it was read; a house may choose ${wanted}.`;
    case 'not-one-value':
      return `${at}: “${found}” is a range; write ${wanted}.`;
    case 'beyond-house-range':
      return `${at}: ${found} is outside what a house may choose; write ${wanted}.`;
    case 'no-reason':
      return `${at}: it has no reason; say in ${wanted}.`;
    case 'loosens-a-rating':
      return `${at}: ${found} would loosen a rating${limit === undefined ? '' : ` (${limit})`}; ${wanted}.`;
    case 'not-a-topic':
      return `${at}: ${found} is not a rule set; give ${wanted}.`;
    case 'broken-topic':
      return `${fact}: it is missing or not what it should be; give ${wanted}.`;
    case 'not-a-saved-answer':
    case 'rule-set':
      // What is found may be a sentence of its own, and there may be nothing to put in its place.
      return `${fact || '“”'}: ${[found.replace(/\.$/, ''), wanted].filter(Boolean).join('; ')}.`;
  }
}
