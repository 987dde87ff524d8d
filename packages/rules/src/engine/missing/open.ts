import { namedValues } from '../answer/named';
import { type ConditionRule, conditionRules, namesCompared } from '../condition/rules';
import { holds } from '../condition/walk';
import type { State, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type ParameterValues, type Run, run as reckonRun } from '../formula/run';
import { type Input, type Inputs, keyName, movedBy } from '../value/values';

export type Setting = {
  readonly compiled: Compiled;
  readonly inputs: Inputs;
  readonly parameters: ParameterValues;
};

/** How a condition stands: it stops for sure, it cannot stop, or either. */
export type Reading = 'over' | 'within' | 'undecided';

/** How conditions stand once some facts are set. */
export function readings(
  { compiled, inputs, parameters }: Setting,
  rules: readonly ConditionRule[],
  set: ReadonlyMap<string, Input>,
): readonly Reading[] {
  const trial = reckonRun(compiled, new Map([...inputs, ...set]), parameters);
  return rules.map(({ conditions }) => {
    const values = namedValues(compiled, trial, namesCompared(conditions));
    if (holds(conditions, 'certain', values)) return 'over';
    return holds(conditions, 'possible', values) ? 'undecided' : 'within';
  });
}

/** A condition that may stop or not, and the inputs that it still moves with, by fact. */
export type OpenDecision = {
  readonly rule: ConditionRule;
  readonly facts: ReadonlyMap<string, readonly string[]>;
};

/** The fact a key of a slope belongs to: a cell or column belongs to its list. */
function factOf(topic: Topic, key: string): string | undefined {
  const name = keyName(key);
  if (Object.hasOwn(topic.facts, name)) return name;
  const list = name.slice(0, name.lastIndexOf('.'));
  return Object.hasOwn(topic.facts, list) ? list : undefined;
}

function isUnknown(inputs: Inputs, run: Run, key: string): boolean {
  const input = inputs.get(key);
  return input?.kind === 'among' ? input.options.length > 1 : run.isOpen(key);
}

const isOpenState = (state: State | undefined): boolean => state === 'unknown' || state === 'if';

/**
 * The conditions that may or may not stop it. Where one still moves with something that nobody
 * knows, its ranges are left aside: what is unknown is asked first.
 */
export function openDecisions(
  { compiled, inputs }: Setting,
  run: Run,
  states: ReadonlyMap<string, State>,
): readonly OpenDecision[] {
  const { topic } = compiled;
  return conditionRules(topic)
    .filter(({ event }) => event.type !== 'care' && isOpenState(states.get(event.params.of)))
    .map((rule) => {
      const moved = namesCompared(rule.conditions).flatMap((name) => movedBy(run.value(name)));
      const keys = [...new Set(moved)];
      const unknown = keys.filter((key) => isUnknown(inputs, run, key));
      const facts = new Map<string, string[]>();
      for (const key of unknown.length > 0 ? unknown : keys) {
        const fact = factOf(topic, key);
        if (fact) facts.set(fact, [...(facts.get(fact) ?? []), key]);
      }
      return { rule, facts };
    });
}
