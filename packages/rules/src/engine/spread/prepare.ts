import { type Asked, compiledOf, reckoned, today } from '../answer/answer';
import { allStates } from '../answer/levels';
import { namedValues } from '../answer/named';
import { inBase, parametersOn } from '../answer/parameters';
import { conditionRules } from '../condition/rules';
import { rulesHolding } from '../condition/walk';
import type { State, Topic } from '../define/shapes';
import { run as reckonRun } from '../formula/run';
import { type Lanes, type Numbers, newNumbers, type Program } from '../value/lanes';
import { decider, ranker, shower, type Verdict } from './decide';
import { type Draw, drawsOf, filler } from './draws';
import { slowWay } from './slow';
import { type Setting, walker } from './walk';

/** A case made ready to be drawn. Each call of `next` draws and reckons one more block of lanes. */
export type Prepared = {
  readonly setting: Setting;
  readonly draws: readonly Draw[];
  readonly named: (name: string) => Lanes;
  /** In the unit it is declared in, to a millionth. */
  readonly shown: (name: string) => Lanes;
  readonly verdicts: ReadonlyMap<string, Verdict>;
  readonly states: ReadonlyMap<string, State>;
  readonly ranks: Uint8Array;
  readonly next: (count: number) => void;
};

/** @throws InputError for facts that cannot be read */
export function prepare(topic: Topic, asked: Asked, width: number, seed: number): Prepared {
  const asOf = asked.asOf ?? today();
  const compiled = compiledOf(topic);
  const { run, inputs } = reckoned(topic, asked, asOf);
  const program: Program = { width, steps: [] };
  const draws = drawsOf(topic, inputs, asked.facts);
  const lanes = draws.map(({ key }) => [key, newNumbers(program, true)] as const);
  const drawn: ReadonlyMap<string, Numbers> = new Map(lanes);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  const slow = slowWay(program, drawn, run, (pins) =>
    reckonRun(compiled, inputs, parameters, pins, run),
  );
  const setting: Setting = { compiled, run, program, drawn, slowly: slow.lanesOf };
  const named = walker(setting);
  const values = namedValues(compiled, run);
  const rules = conditionRules(topic);
  const states = allStates(topic, run, {
    certain: rulesHolding(rules, 'certain', values),
    possible: rulesHolding(rules, 'possible', values),
  });
  const shown = shower(setting, named);
  const verdicts = decider(setting, shown);
  const ranks = ranker(setting, verdicts, states);
  const fill = filler(draws, seed);
  const into = lanes.map(([, { lo }]) => lo);
  const next = (count: number): void => {
    fill(into, count);
    slow.begin();
    for (const step of program.steps) step(count);
  };
  return { setting, draws, named, shown, verdicts, states, ranks, next };
}
