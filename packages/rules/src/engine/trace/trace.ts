import type { UnitSystem } from '../../quantity';
import { endsOf, unitOfName } from '../answer/named';
import type { FindingAnswer, LimitAnswer, ParameterAnswer, Step, Trace } from '../answer/shapes';
import { onceRead } from '../answer/when-read';
import { factsRead } from '../catalogue/facts-read';
import { conditionRules, namesCompared } from '../condition/rules';
import type { Topic } from '../define/shapes';
import { calendarUnits, isYear } from '../define/topic';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { usedNames } from '../formula/used-names';
import { inUnit, namedSaid, working } from '../formula/words';
import type { Input } from '../value/values';
import { message } from '../words/message';
import { nounOr, type Say, type Sayable, text } from '../words/value';
import { nounOf, origin, shownFormula } from './nouns';
import { told } from './told';

export type Traced = {
  readonly compiled: Compiled;
  readonly run: Run;
  readonly inputs: ReadonlyMap<string, Input>;
  readonly parameters: readonly ParameterAnswer[];
  readonly readFrom: Readonly<Record<string, string>>;
  readonly limits: readonly LimitAnswer[];
  readonly findings: readonly FindingAnswer[];
  readonly words: Sayable;
  /** The units in which values and working are written. */
  readonly system: UnitSystem;
  readonly say: Say;
};

type Words = 'label' | 'noun' | 'value' | 'working' | 'told';

/** A step in codes and values, and in words, which are found when they are read: few ever are. */
function worded({ say }: Traced, { kind, messages, ...rest }: Omit<Step, Words>): Step {
  const { label, noun, value, working: sum, told: how } = messages;
  const step: { -readonly [K in keyof Step]: Step[K] } = {
    kind,
    label: '',
    noun: '',
    value: '',
    ...(sum && { working: '' }),
    ...(how && { told: '' }),
    messages,
    ...rest,
  };
  onceRead(step, 'label', () => say(label));
  onceRead(step, 'noun', () => say(noun));
  onceRead(step, 'value', () => say(value));
  if (sum) onceRead(step, 'working', () => say(sum));
  if (how) onceRead(step, 'told', () => say(how));
  return step;
}

type Entry = { readonly label: string; readonly noun?: string | undefined };

/** What a thing is called, as a heading and inside a sentence. */
const called = (entry: Entry | undefined, id: string) => ({
  label: text(entry?.label ?? id),
  noun: nounOr(entry, id),
});

function factValue(input: Input, unit: string, year: boolean): Sayable {
  if (input.kind === 'rows') return message('rows', { rows: input.rows.length });
  const said = (): Sayable => {
    if (input.kind === 'number') {
      if (input.open) return message('not-known', {});
      // A bound is said as one: how far the other end could be at all was told by nobody.
      const lo = input.bound === 'most' ? -Infinity : input.lo;
      const hi = input.bound === 'least' ? Infinity : input.hi;
      return { ...inUnit({ lo, hi }, unit), unit, style: year ? 'year' : 'exact' };
    }
    const [only, more] = input.options;
    return only !== undefined && more === undefined ? { option: only } : message('not-known', {});
  };
  return input.status === 'silent' ? message('unsaid', { value: said() }) : said();
}

function factStep(traced: Traced, name: string, input: Input): Step {
  const { topic } = traced.compiled;
  const declared = topic.facts[name];
  const unit = declared?.kind === 'quantity' ? declared.unit : '';
  const readFrom = traced.readFrom[name];
  const silent = input.status === 'silent' ? declared?.silent : undefined;
  return worded(traced, {
    kind: input.kind === 'rows' ? 'list' : 'fact',
    messages: {
      ...called(declared, name),
      value: factValue(input, unit, isYear(topic, name)),
    },
    status: input.status,
    ...(input.kind === 'number' && { ends: endsOf(traced.compiled, traced.run, name) }),
    ...(input.kind === 'among' && { among: input.options }),
    from: [],
    ...(readFrom && { readFrom }),
    ...(silent && { source: silent.source }),
  });
}

const tableUnitOf = ({ topic }: Compiled, table: string): string =>
  (topic.tables[table] ?? topic.wordTables?.[table])?.valueUnit ?? '';

/** The steps that names stand in, each once: a column of a list stands with its list. */
function stepsOf({ topic }: Compiled, names: readonly string[]): readonly string[] {
  const found = names.map((name) => {
    const list = name.slice(0, Math.max(0, name.lastIndexOf('.')));
    return topic.facts[list]?.kind === 'rows' ? list : name;
  });
  return [...new Set(found)];
}

/** A formula that came down to one other is told by the working and the source of that other. */
function formulaStep(traced: Traced, name: string): Step | undefined {
  const { compiled, run, readFrom } = traced;
  const { scope } = run;
  const own = compiled.formulas.get(name)?.formula;
  const shown = shownFormula(compiled, scope, name);
  if (!own || !shown) return undefined;
  const unit = (each: string) => unitOfName(compiled, each);
  const value = run.value(name);
  const tableUnit = (table: string) => tableUnitOf(compiled, table);
  const year = (each: string) => isYear(compiled.topic, each);
  const telling = { compiled, scope, unit, tableUnit, isYear: year, readFrom };
  const inOthers = told(telling, shown.node, own.unit);
  const read = origin(telling, name);
  const from = stepsOf(compiled, usedNames(shown.node, scope).from);
  const deciders = shown.way.flatMap((node) => usedNames(node, scope).decidedBy);
  const decidedBy = stepsOf(compiled, deciders).filter((each) => !from.includes(each));
  return worded(traced, {
    kind: 'formula',
    messages: {
      ...called(own, name),
      value: namedSaid(value, own.unit, year(name)),
      working: working(shown.node, telling),
      ...(inOthers && { told: inOthers }),
    },
    ...(value.kind === 'number' && { ends: endsOf(compiled, run, name) }),
    ...(value.kind === 'among' && { among: value.options }),
    ...(value.kind === 'truth' && {
      among: [...(value.yes ? ['yes'] : []), ...(value.no ? ['no'] : [])],
    }),
    ...(shown.node.kind === 'known' && { tests: true }),
    is: shown.formula.is,
    from,
    ...(decidedBy.length > 0 && { decidedBy }),
    source: shown.formula.source,
    ...(read && { readFrom: read }),
  });
}

function decisionStep(traced: Traced, name: string): Step | undefined {
  const decision = traced.compiled.topic.decisions?.[name];
  if (!decision) return undefined;
  const { on, results, source } = decision;
  const value = traced.run.value(name);
  const among = value.kind === 'among' ? value.options : [];
  const of = among.map((word) => text(results[word]?.label ?? word));
  const messages = { ...called(decision, name), value: message('any-of', { of }) };
  return worded(traced, { kind: 'decision', messages, among, from: on, source });
}

function simulationStep(traced: Traced, name: string): Step | undefined {
  const compiled = traced.compiled.simulations.get(name);
  if (!compiled) return undefined;
  const { simulation } = compiled;
  const { length } = traced.run.scope.simulation(name).steps;
  const value = message('steps', { steps: length });
  const messages = { ...called(simulation, name), value };
  const from = stepsOf(traced.compiled, [...compiled.uses, ...compiled.asks]);
  return worded(traced, { kind: 'simulation', messages, from, source: simulation.source });
}

function tableStep(traced: Traced, name: string): Step | undefined {
  const { topic } = traced.compiled;
  const table = topic.tables[name];
  const options = topic.wordTables?.[name];
  const found = table ?? options;
  if (!found) return undefined;
  const rows = table?.rows.length ?? Object.keys(options?.values ?? {}).length;
  const messages = { ...called(found, name), value: message('rows', { rows }) };
  return worded(traced, { kind: 'table', messages, from: [], source: found.source });
}

/** The day a case is judged as of, where formulas reckon with it. */
function dayStep(traced: Traced, name: string): Step | undefined {
  if (!Object.hasOwn(calendarUnits, name)) return undefined;
  const value = traced.run.value(name);
  if (value.kind !== 'number') return undefined;
  const ends = { lo: value.lo, hi: value.hi, unit: '' };
  const noun = nounOf(traced.compiled, name);
  const messages = { label: noun, noun, value: { ...ends, style: 'exact' as const } };
  return worded(traced, { kind: 'day', messages, ends, from: [] });
}

function catalogueStep(traced: Traced, name: string): Step | undefined {
  const catalogue = traced.compiled.topic.catalogues?.[name];
  if (!catalogue) return undefined;
  const { models, options, source } = catalogue;
  const value = message('catalogue-holds', {
    models: Object.keys(models).length,
    options: Object.keys(options).length,
  });
  const from = factsRead(catalogue).filter((fact) => traced.run.given(fact));
  const messages = { ...called(catalogue, name), value };
  return worded(traced, { kind: 'catalogue', messages, from, source });
}

function valueStep(traced: Traced, name: string): Step | undefined {
  const reckoned =
    formulaStep(traced, name) ??
    decisionStep(traced, name) ??
    simulationStep(traced, name) ??
    catalogueStep(traced, name) ??
    tableStep(traced, name) ??
    dayStep(traced, name);
  if (reckoned) return reckoned;
  const parameter = traced.parameters.find((each) => each.id === name);
  if (parameter) {
    const { value, unit, source } = parameter;
    const ends = { lo: value, hi: value, unit };
    const { topic } = traced.compiled;
    const style = isYear(topic, name) ? 'year' : 'exact';
    const messages = {
      ...called(topic.parameters[name], name),
      value: { ...ends, style } as const,
    };
    return worded(traced, { kind: 'parameter', messages, ends, from: [], source });
  }
  const input = traced.inputs.get(name);
  if (input) return factStep(traced, name, input);
  const list = name.slice(0, name.lastIndexOf('.'));
  const rows = traced.inputs.get(list);
  return rows && factStep(traced, list, rows);
}

const namesOf = new WeakMap<Topic, ReadonlyMap<string, readonly string[]>>();

/** The names that each limit and finding of a topic compares. */
function comparedIn(topic: Topic): ReadonlyMap<string, readonly string[]> {
  const before = namesOf.get(topic);
  if (before) return before;
  const found = new Map<string, readonly string[]>();
  for (const { conditions, event } of conditionRules(topic)) {
    const { of } = event.params;
    found.set(of, [...new Set([...(found.get(of) ?? []), ...namesCompared(conditions)])]);
  }
  namesOf.set(topic, found);
  return found;
}

/** The whole reasoning, from the verdict down to facts and parameters, each step once. */
export function traceOf(traced: Traced): Trace {
  const { topic } = traced.compiled;
  const steps: Record<string, Step> = {};
  const include = (name: string): void => {
    if (Object.hasOwn(steps, name)) return;
    const step = valueStep(traced, name);
    if (!step) return;
    steps[name] = step;
    for (const each of [...step.from, ...(step.decidedBy ?? [])]) include(each);
  };
  const compared = comparedIn(topic);
  const asked: string[] = [];
  for (const limit of traced.limits) {
    if (limit.state === 'not-asked') continue;
    const id = `limit.${limit.id}`;
    const from = compared.get(id) ?? [];
    const messages = {
      ...called(topic.limits[limit.id], limit.id),
      value: { option: limit.state },
    };
    steps[id] = worded(traced, { kind: 'limit', messages, from, source: limit.source });
    asked.push(id);
    for (const each of from) include(each);
  }
  for (const finding of traced.findings) {
    if (finding.level === 'not-asked') continue;
    const id = `finding.${finding.id}`;
    const from = compared.get(id) ?? [];
    const { source, messages: found } = finding;
    const of = [found.wrong, found.because, found.do].flatMap((each) => each ?? []);
    const value = message('sentences', { of });
    const messages = { ...called(topic.findings[finding.id], finding.id), value };
    steps[id] = worded(traced, { kind: 'finding', messages, from, source });
    asked.push(id);
    for (const each of from) include(each);
  }
  for (const name of topic.headline) include(name);
  const title = { label: text(topic.title), noun: text(topic.title) };
  const messages = { ...title, value: traced.words };
  steps.verdict = worded(traced, { kind: 'verdict', messages, from: asked });
  return { root: 'verdict', units: traced.system, steps };
}
