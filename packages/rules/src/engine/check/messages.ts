import { hint, placed, sayArgument, withoutGaps, wordedOfGiven } from './messages-given';
import { mistakes } from './mistakes';
import { foundIn } from './noted';
import type { Mistake, Problem } from './problem';

/** One sentence that names the place, what was found and what would be right. */
export const sayProblem = (problem: Problem): string =>
  withoutGaps(wordedOfGiven(problem) ?? worded(problem));

const isMistake = (code: Problem['code']): code is Mistake => Object.hasOwn(mistakes, code);

/** What is found may be a sentence of its own, and there may be nothing to put in its place. */
const ofRuleSet = ({ fact, wanted, near }: Problem, found: string): string =>
  `${fact || '“”'}: ${[found.replace(/\.$/, ''), wanted].filter(Boolean).join('; ')}.${hint(near)}`;

function worded(problem: Problem): string {
  const { code, fact, found, wanted, limit, near } = problem;
  const at = placed(problem);
  switch (code) {
    case 'wrong-argument':
      return sayArgument(problem);
    case 'in-document':
      return `${fact}: ${/[.?]$/.test(found) ? found : `${found}.`}`;
    case 'not-a-ledger':
      return `${fact}: this is no entry of a ledger; ${wanted}.${hint(near)}`;
    case 'no-such-parameter':
      return `\`${fact}\` is not a parameter of ${wanted}.${hint(near)}`;
    case 'not-json':
      return `${at}: this is not JSON; write ${wanted}.`;
    case 'not-a-house-layer':
      return `${at}: ${found === '' ? 'this is missing' : `${found} stands there`}; write ${wanted}.`;
    case 'no-such-house-key':
      return `${at}: nothing reads this key; write ${wanted}.${hint(near)}`;
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
    case 'not-a-saved-answer':
      return ofRuleSet(problem, found);
    default:
      if (isMistake(code)) return ofRuleSet(problem, foundIn(code, problem));
      return `${at}: ${found}; ${wanted}.`;
  }
}
