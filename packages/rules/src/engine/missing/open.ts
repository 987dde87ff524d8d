import { lookIn } from '../answer/named';
import { type ConditionRule, conditionRules, namesCompared } from '../condition/rules';
import { holds } from '../condition/walk';
import type { Condition, State, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type ParameterValues, type Run, runLike } from '../formula/run';
import { type Input, type Inputs, keyName, movedBy } from '../value/values';

export type Setting = {
  readonly compiled: Compiled;
  readonly inputs: Inputs;
  readonly parameters: ParameterValues;
  /** As told. */
  readonly run: Run;
};

/** How a condition stands: it stops for sure, it cannot stop, or either. */
export type Reading = 'over' | 'within' | 'undecided';

/** What makes a stop firm: that no other use, which nobody ruled out, would relieve it. */
function firmOf(topic: Topic, { event }: ConditionRule): ConditionRule | undefined {
  const { of } = event.params;
  return event.type === 'stop'
    ? conditionRules(topic).find(
        (rule) => rule.event.type === 'firm' && rule.event.params.of === of,
      )
    : undefined;
}

/** How conditions stand once some facts are set. */
export function readings(
  { compiled, inputs, parameters, run }: Setting,
  rules: readonly ConditionRule[],
  set: ReadonlyMap<string, Input>,
): readonly Reading[] {
  const told = new Map(inputs);
  for (const [fact, input] of set) told.set(fact, input);
  const trial = runLike(run, compiled, told, parameters);
  const look = lookIn(compiled, trial);
  const stands = (conditions: Condition, sureness: 'certain' | 'possible'): boolean =>
    holds(conditions, sureness, look);
  return rules.map((rule) => {
    const { conditions } = rule;
    if (!stands(conditions, 'possible')) return 'within';
    if (!stands(conditions, 'certain')) return 'undecided';
    const firm = firmOf(compiled.topic, rule);
    return !firm || stands(firm.conditions, 'certain') ? 'over' : 'undecided';
  });
}

/** A condition that may stop or not, and the inputs that it still moves with, by fact. */
export type OpenDecision = {
  readonly rule: ConditionRule;
  readonly facts: ReadonlyMap<string, readonly string[]>;
  /** How it stands as told: undecided, or certain and yet to be ruled out, such as a proviso. */
  readonly base: Reading;
};

/** Whether, as read now, it is open no more. */
export const isClosedBy = ({ base }: OpenDecision, found: Reading | undefined): boolean =>
  base === 'over' ? found === 'within' : found !== 'undecided';

/** What makes for a proviso, or for not knowing, stops nothing: no value tips the verdict against it. */
export const isStop = ({ rule }: OpenDecision): boolean => rule.event.type === 'stop';

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

/** A care is told and not asked about; what makes a stop firm is asked with the stop. */
const asking: ReadonlySet<string> = new Set(['stop', 'unknown', 'if']);
const isOpenState = (state: State | undefined): boolean => state === 'unknown' || state === 'if';

/**
 * The conditions that may or may not stop it. Where one still moves with something that nobody
 * knows, its ranges are left aside: what is unknown is asked first.
 */
export function openDecisions(
  setting: Setting,
  run: Run,
  states: ReadonlyMap<string, State>,
): readonly OpenDecision[] {
  const { compiled, inputs } = setting;
  const { topic } = compiled;
  const rules = conditionRules(topic).filter(
    ({ event }) => asking.has(event.type) && isOpenState(states.get(event.params.of)),
  );
  const bases = readings(setting, rules, new Map());
  return rules
    .map((rule, i): { rule: ConditionRule; base: Reading } => ({
      rule,
      base: bases[i] ?? 'undecided',
    }))
    .filter(({ base }) => base !== 'within')
    .map(({ rule, base }) => {
      const moved = namesCompared(rule.conditions).flatMap((name) => movedBy(run.value(name)));
      const keys = [...new Set(moved)];
      const unknown = keys.filter((key) => isUnknown(inputs, run, key));
      const facts = new Map<string, string[]>();
      for (const key of unknown.length > 0 ? unknown : keys) {
        const fact = factOf(topic, key);
        if (fact) facts.set(fact, [...(facts.get(fact) ?? []), key]);
      }
      return { rule, facts, base };
    });
}
