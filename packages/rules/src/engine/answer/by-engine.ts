import { refuseAsked } from '../check/asked';
import { rulesHoldingByEngine } from '../condition/engine';
import { conditionRules } from '../condition/rules';
import type { Topic } from '../define/shapes';
import { aloudEnglish } from '../words/en-aloud';
import {
  type AnswerOf,
  type Asked,
  type AskedOf,
  assemble,
  compiledOf,
  reckoned,
  today,
} from './answer';
import { namedValues } from './named';
import type { Answer } from './shapes';
import { withTrace } from './traced';

/**
 * The answer to a topic's question with its whole reasoning, decided by json-rules-engine.
 *
 * @throws InputError naming every fact that is not one, or cannot be what was written.
 */
export async function answer<const T extends Topic>(
  topic: T,
  asked: AskedOf<T>,
): Promise<AnswerOf<T>>;
export async function answer(topic: Topic, asked: Asked): Promise<Answer> {
  refuseAsked(topic, asked);
  const asOf = asked.asOf ?? today();
  const { run, inputs } = reckoned(topic, asked, asOf);
  const values = namedValues(compiledOf(topic), run);
  const rules = conditionRules(topic);
  const certain = await rulesHoldingByEngine(rules, 'certain', values);
  const possible = await rulesHoldingByEngine(rules, 'possible', values);
  return withTrace(
    assemble(topic, asked, asOf, { run, inputs, holding: { certain, possible } }, aloudEnglish),
  );
}
