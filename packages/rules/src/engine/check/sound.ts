import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { checkConditions } from './conditions';
import { sayProblem } from './messages';
import { InputError, type Problem } from './problem';
import { checkTexts } from './text';

/** Every name that a condition may compare. */
export const namesOf = (topic: Topic): ReadonlySet<string> =>
  new Set([
    ...Object.keys(topic.facts),
    ...Object.keys(topic.parameters),
    ...allFormulas(topic).keys(),
    ...Object.keys(topic.decisions ?? {}),
  ]);

/**
 * Looks at what a verdict would silently go wrong by: an operator, an option, a name or a unit that
 * does not exist or does not fit, in a formula or a condition. `checkTopic` is for authors and tells
 * far more.
 *
 * @throws InputError naming each of them.
 */
export function refuseUnsound(topic: Topic): void {
  const problems: Problem[] = [];
  const note = (fact: string, found: string, wanted: string): void => {
    problems.push({ code: 'rule-set', fact, found, wanted });
  };
  checkTexts(topic, note);
  checkConditions(topic, namesOf(topic), note);
  if (problems.length > 0) throw new InputError(problems, sayProblem);
}
