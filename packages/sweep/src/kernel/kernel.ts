import {
  compiledOf,
  type FactsGiven,
  InputError,
  type Inputs,
  inBase,
  parametersOn,
  readFacts,
  sayProblem,
  type Topic,
} from '@tarebook/rules/engine';
import type { Like } from './form';
import { type Program, programOf } from './program';
import type { Sides } from './sides';

/** A case with rows and columns still to come, and what is asked of every pair. */
export type KernelAsked = {
  readonly topic: Topic;
  readonly sides: Sides;
  readonly asOf: string;
  /** Facts of the case: whatever is of neither side. */
  readonly inputs: Inputs;
  /** Also which limit binds and what is left of it, or the level alone. */
  readonly withRoom: boolean;
};

/** Facts of a topic as the engine reads them; what is wrong with them is told as it tells it. */
export function inputsOf(topic: Topic, facts: FactsGiven): Inputs {
  const { inputs, problems } = readFacts(topic, facts);
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  return inputs;
}

/** The inputs of a case with those of one row and one column in their place. */
export function withSides(given: Inputs, sides: Sides, row: Inputs, column: Inputs): Inputs {
  const joined = new Map(given);
  for (const [id, input] of row) if (id.startsWith(sides.rows)) joined.set(id, input);
  for (const [id, input] of column) {
    if (id.startsWith(sides.columns) && input.kind !== 'rows') joined.set(id, input);
  }
  return joined;
}

/** The program for rows of one form and columns of another. */
export function programFor(asked: KernelAsked, rows: Like, columns: Like): Program {
  const { topic, sides, asOf, inputs, withRoom } = asked;
  const like = withSides(inputs, sides, rows.example, columns.example);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  return programOf(compiledOf(topic), like, parameters, sides, withRoom);
}
