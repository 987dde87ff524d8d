import { rounded, show } from '../../quantity';
import { type ConditionRule, conditionRules, namesCompared } from '../condition/rules';
import { holds } from '../condition/walk';
import type { State, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type ParameterValues, type Run, run as reckonRun } from '../formula/run';
import { type Input, type Inputs, keyName, movedBy } from '../formula/values';
import { inUnit } from '../formula/words';
import { namedValues } from './named';
import type { Ends, Missing } from './shapes';

type Setting = {
  readonly compiled: Compiled;
  readonly inputs: Inputs;
  readonly parameters: ParameterValues;
};

type Reading = 'over' | 'within' | 'undecided';

/** How a condition stands with one fact set. */
function reading(setting: Setting, rule: ConditionRule, fact: string, input: Input): Reading {
  const { compiled, inputs, parameters } = setting;
  const trial = reckonRun(compiled, new Map(inputs).set(fact, input), parameters);
  const values = namedValues(compiled, trial, namesCompared(rule.conditions));
  if (holds(rule.conditions, 'certain', values)) return 'over';
  return holds(rule.conditions, 'possible', values) ? 'undecided' : 'within';
}

const known = (at: number): Input => ({
  kind: 'number',
  lo: at,
  hi: at,
  status: 'known',
  open: false,
});

/** The last point, going from `good` to `bad`, of which `test` is still true. */
function edge(good: number, bad: number, test: (at: number) => boolean): number {
  let [from, to] = [good, bad];
  for (let i = 0; i < 60 && Math.abs(to - from) > 1e-9; i += 1) {
    const middle = (from + to) / 2;
    if (test(middle)) from = middle;
    else to = middle;
  }
  return from;
}

export type Tip = { readonly lo: number; readonly hi: number; readonly side: 'above' | 'below' };

/** Between which values of a fact a condition turns from not holding to holding; base units. */
function tipOf(setting: Setting, rule: ConditionRule, fact: string, from: number, to: number) {
  const at = (value: number) => reading(setting, rule, fact, known(value));
  const [first, last] = [at(from), at(to)];
  if (first === last || first === 'undecided' || last === 'undecided') return undefined;
  const [good, bad] = first === 'within' ? [from, to] : [to, from];
  const lastWithin = edge(good, bad, (value) => at(value) === 'within');
  const firstOver = edge(bad, good, (value) => at(value) === 'over');
  const tip: Tip = {
    lo: Math.min(lastWithin, firstOver),
    hi: Math.max(lastWithin, firstOver),
    side: bad > good ? 'above' : 'below',
  };
  return tip;
}

type Decision = { readonly rule: ConditionRule; readonly keys: readonly string[] };

/** The conditions that may or may not stop it, each with the inputs it still moves with. */
function openDecisions(topic: Topic, run: Run, states: ReadonlyMap<string, State>): Decision[] {
  return conditionRules(topic)
    .filter(({ event }) => event.type === 'stop' && states.get(event.params.of) === 'unknown')
    .map((rule) => {
      const keys = namesCompared(rule.conditions).flatMap((name) => movedBy(run.value(name)));
      return { rule, keys: [...new Set(keys)] };
    });
}

/** The fact a key of a slope belongs to: a cell or column belongs to its list. */
function factOf(topic: Topic, key: string): string | undefined {
  const name = keyName(key);
  if (Object.hasOwn(topic.facts, name)) return name;
  const list = name.slice(0, name.lastIndexOf('.'));
  return Object.hasOwn(topic.facts, list) ? list : undefined;
}

/** Comparisons round to a millionth, so an edge is found half a millionth off where it stands. */
const tidy = (value: number): number => rounded(Math.round(value * 1e5) / 1e5);

function numberTips(setting: Setting, fact: string, rules: readonly ConditionRule[]) {
  const input = setting.inputs.get(fact);
  const declared = setting.compiled.topic.facts[fact];
  if (input?.kind !== 'number' || declared?.kind !== 'quantity') return undefined;
  const factor = inUnit({ lo: 1, hi: 1 }, declared.unit).lo;
  const from = Number.isFinite(input.lo) ? input.lo : declared.least / factor;
  const to = Number.isFinite(input.hi) ? input.hi : declared.most / factor;
  const tips = rules.flatMap((rule) => {
    const tip = tipOf(setting, rule, fact, from, to);
    return tip ? [{ ...tip, of: rule.event.params.of }] : [];
  });
  // Of several, the one that the fact meets first.
  const first = tips.reduce<(typeof tips)[number] | undefined>((best, tip) => {
    if (!best || best.side !== tip.side) return best ?? tip;
    const sooner = tip.side === 'above' ? tip.lo < best.lo : tip.hi > best.hi;
    return sooner ? tip : best;
  }, undefined);
  if (!first) return undefined;
  const ends = inUnit(first, declared.unit);
  return { ...first, lo: tidy(ends.lo), hi: tidy(ends.hi), unit: declared.unit };
}

function optionTips(
  setting: Setting,
  fact: string,
  rules: readonly ConditionRule[],
): string | null {
  const input = setting.inputs.get(fact);
  if (input?.kind !== 'among') return null;
  const over = input.options.filter((option) =>
    rules.some(
      (rule) =>
        reading(setting, rule, fact, { kind: 'among', options: [option], status: 'known' }) ===
        'over',
    ),
  );
  return over.length === 0 ? null : over.join(', ');
}

function says(topic: Topic, decides: readonly string[], tips: Missing['tips'], side?: string) {
  const names = decides.map((of) => {
    const [kind = '', id = ''] = of.split(/\.(.*)/);
    const entry = kind === 'limit' ? topic.limits[id] : topic.findings[id];
    return entry?.label.toLowerCase() ?? id;
  });
  const what = names.join(', ');
  if (tips === null) return `Decides ${what}, together with other facts.`;
  if (typeof tips === 'string') return `Decides ${what}: “${tips}” would rule it out.`;
  const at = show(tips, tips.unit);
  const way = side === 'above' ? 'above' : 'below';
  return `Decides ${what}: ${way} ${at} it does not fit.`;
}

/** What to ask next when it cannot be said: the facts that decide, unknown ones before ranges. */
export function missingFacts(
  setting: Setting,
  run: Run,
  states: ReadonlyMap<string, State>,
): readonly Missing[] {
  const { topic } = setting.compiled;
  const found = new Map<string, ConditionRule[]>();
  for (const { rule, keys } of openDecisions(topic, run, states)) {
    const open = keys.filter((key) => isUnknown(setting.inputs, run, key));
    for (const key of open.length > 0 ? open : keys) {
      const fact = factOf(topic, key);
      if (!fact) continue;
      const rules = found.get(fact) ?? [];
      if (!rules.includes(rule)) found.set(fact, [...rules, rule]);
    }
  }
  return [...found].flatMap(([fact, rules]) => {
    const declared = topic.facts[fact];
    if (!declared) return [];
    const decides = rules.map((rule) => rule.event.params.of);
    const tip = numberTips(setting, fact, rules);
    const ends: Ends | null = tip ? { lo: tip.lo, hi: tip.hi, unit: tip.unit } : null;
    const tips = ends ?? optionTips(setting, fact, rules);
    const { label, ask, where } = declared;
    return [
      { fact, label, ask, where, decides, tips, says: says(topic, decides, tips, tip?.side) },
    ];
  });
}

function isUnknown(inputs: Inputs, run: Run, key: string): boolean {
  const input = inputs.get(key);
  return input?.kind === 'among' ? input.options.length > 1 : run.isOpen(key);
}
