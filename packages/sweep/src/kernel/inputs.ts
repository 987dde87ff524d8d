import {
  type FactsGiven,
  type Input,
  InputError,
  type Inputs,
  type Problem,
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

/** So many facts are kept as they were read; a yard says the same again and again. */
const mostKept = 20_000;

/** What was read of some facts, each by its name, and what is wrong with them. */
type Found = { readonly read: Map<string, Input>; readonly problems: readonly Problem[] };

/** Reads facts of one rig after another; one that was read before in the same words is read no more. */
export function factReader(topic: Topic): (facts: FactsGiven) => Found {
  const kept = new Map<string, Input>();
  const keyOf = (id: string, given: string): string => `${id}\n${given}`;
  return (facts) => {
    const read = new Map<string, Input>();
    const fresh: Record<string, FactsGiven[string]> = {};
    let isAnyFresh = false;
    for (const id in facts) {
      const given = facts[id];
      if (given === undefined) continue;
      const before = typeof given === 'string' ? kept.get(keyOf(id, given)) : undefined;
      if (before) read.set(id, before);
      else {
        fresh[id] = given;
        isAnyFresh = true;
      }
    }
    if (!isAnyFresh) return { read, problems: [] };
    const { inputs, problems } = readFacts(topic, fresh);
    if (kept.size > mostKept) kept.clear();
    for (const [id, given] of Object.entries(fresh)) {
      const input = inputs.get(id);
      if (!input) continue;
      read.set(id, input);
      if (problems.length === 0 && typeof given === 'string') kept.set(keyOf(id, given), input);
    }
    return { read, problems };
  };
}

/** The same for some facts alone, with what stands for each that nobody tells. */
export function sideReader(topic: Topic, ids: readonly string[]): (facts: FactsGiven) => Inputs {
  const silent = inputsOf(topic, {});
  const readerOf = factReader(topic);
  return (facts) => {
    const { read, problems } = readerOf(facts);
    if (problems.length > 0) throw new InputError(problems, sayProblem);
    const inputs = new Map<string, Input>();
    for (const id of ids) {
      const input = read.get(id) ?? silent.get(id);
      if (input) inputs.set(id, input);
    }
    return inputs;
  };
}
