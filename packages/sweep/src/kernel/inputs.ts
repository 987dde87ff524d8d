import {
  type FactsGiven,
  InputError,
  type Inputs,
  readFacts,
  sayProblem,
  type Topic,
} from '@tarebook/rules/engine';

/** Facts of a topic as the engine reads them; what is wrong with them is told as it tells it. */
export function inputsOf(topic: Topic, facts: FactsGiven): Inputs {
  const { inputs, problems } = readFacts(topic, facts);
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  return inputs;
}
