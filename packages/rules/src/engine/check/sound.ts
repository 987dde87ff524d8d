import type { Topic } from '../define/shapes';
import { namesOf } from '../define/topic';
import { topicProblems } from './asked';
import { checkLookedAt } from './beyond';
import { checkCatalogue } from './catalogue';
import { checkConditions } from './conditions';
import { sayProblem } from './messages';
import { noting } from './noted';
import { checkNumbers, checkPossible } from './numbers';
import { InputError, type Problem } from './problem';
import { shapeProblems } from './shaped';
import { checkTexts } from './text';

/**
 * Looks at what a verdict would silently go wrong by: an operator, an option, a name or a unit that
 * does not exist or does not fit, in a formula or a condition, a value that is none, a number that
 * cannot be. `checkTopic` is for authors and tells far more.
 *
 * @throws InputError naming each of them.
 */
export function refuseUnsound(topic: Topic): void {
  const problems: Problem[] = [...topicProblems(topic)];
  if (problems.length === 0) problems.push(...shapeProblems(topic));
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  const note = noting(problems);
  checkNumbers(topic, note);
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  checkPossible(topic, note);
  checkTexts(topic, note);
  checkConditions(topic, namesOf(topic), note);
  checkLookedAt(topic, note);
  for (const [id, each] of Object.entries(topic.catalogues ?? {})) {
    checkCatalogue(topic, `catalogues ${id}`, each, note);
  }
  if (problems.length > 0) throw new InputError(problems, sayProblem);
}
