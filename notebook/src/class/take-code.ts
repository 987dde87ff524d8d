import { type Group, waiting } from '../state/group';
import type { Reason } from './class-case-events';
import { readGuessCode } from './guess-code';
import { walkedCase } from './record';

/**
 * A guess that came as a code, ready to be taken down, or why it is not, in one sentence.
 *
 * @param isAgain whether its learner takes back what was said before, as it was mistyped
 */
export function guessByCode(
  group: Group,
  code: string,
  why = '',
  isAgain = false,
): { readonly learner: string; readonly said: string; readonly reason: Reason } | string {
  const read = readGuessCode(code, group.cases, group.learners, (at) => {
    const each = group.cases[at];
    return each && walkedCase(each)?.question;
  });
  if (typeof read === 'string') return read;
  const learner = group.learners[read.learner] ?? '';
  if (read.case !== group.at) {
    return `This code is of case ${read.case + 1}, and case ${group.at + 1} is on.`;
  }
  if (group.opened.includes(group.at)) return 'The working is open, so no guess is taken any more.';
  if (!isAgain && !waiting(group).includes(learner)) {
    return `${learner} has committed already; take that guess back first if it was mistyped.`;
  }
  const reason = { ...(read.sure && { sure: read.sure }), ...(why && { why }) };
  return { learner, said: read.said, reason };
}
