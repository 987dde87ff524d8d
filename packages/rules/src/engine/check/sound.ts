import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { checkConditions } from './conditions';
import { sayProblem } from './messages';
import { InputError, type Problem } from './problem';

const sound = new WeakSet<Topic>();

/** Every name that a condition may compare. */
export const namesOf = (topic: Topic): ReadonlySet<string> =>
  new Set([
    ...Object.keys(topic.facts),
    ...Object.keys(topic.parameters),
    ...allFormulas(topic).keys(),
    ...Object.keys(topic.decisions ?? {}),
  ]);

/**
 * Looks once at what a verdict would silently go wrong by: an operator, an option or a name in a
 * condition that does not exist. Everything that answers goes through here; `checkTopic` is for
 * authors and tells far more.
 *
 * @throws InputError naming each of them.
 */
export function refuseUnsound(topic: Topic): void {
  if (sound.has(topic)) return;
  const problems: Problem[] = [];
  checkConditions(topic, namesOf(topic), (fact, found, wanted) =>
    problems.push({ code: 'rule-set', fact, found, wanted }),
  );
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  sound.add(topic);
}
