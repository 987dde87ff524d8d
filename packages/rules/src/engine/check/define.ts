import { lookedAtBy } from '../define/looked-at';
import type { Topic } from '../define/shapes';
import { refuseUnsound } from './sound';

/**
 * Names a topic and keeps its exact type. It is looked through before it is first asked; `checkTopic`
 * tells an author more.
 */
export function defineTopic<const T extends Topic>(made: T): T {
  // What is none is refused by whatever is asked of it.
  return typeof made === 'object' && made !== null ? lookedAtBy(made, refuseUnsound) : made;
}
