import { show, type UnitSystem } from '../../quantity';
import { endsOf, unitOfName } from '../answer/named';
import type { FindingAnswer, LimitAnswer, ParameterAnswer, Step, Trace } from '../answer/shapes';
import { factsRead } from '../catalogue/facts-read';
import { conditionRules, namesCompared } from '../condition/rules';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import { usedNames } from '../formula/used-names';
import { inUnit, namedInWords, working } from '../formula/words';
import type { Input } from '../value/values';
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
  readonly words: string;
  /** The units in which values and working are written. */
  readonly system: UnitSystem;
};

function factValue(input: Input, unit: string, system: UnitSystem): string {
  if (input.kind === 'rows') {
    return input.rows.length === 0 ? 'none' : `${input.rows.length} rows`;
  }
  const said = input.status === 'silent' ? ' (not said)' : '';
  if (input.kind === 'among') {
    return (input.options.length === 1 ? `${input.options[0]}` : 'unknown') + said;
  }
  return (input.open ? 'unknown' : show(inUnit(input, unit), unit, system)) + said;
}

function factStep(traced: Traced, name: string, input: Input): Step {
  const declared = traced.compiled.topic.facts[name];
  const unit = declared?.kind === 'quantity' ? declared.unit : '';
  const readFrom = traced.readFrom[name];
  const silent = input.status === 'silent' ? declared?.silent : undefined;
  return {
    kind: input.kind === 'rows' ? 'list' : 'fact',
    label: declared?.label ?? name,
    noun: nounOf(traced.compiled, name),
    value: factValue(input, unit, traced.system),
    ...(input.kind === 'number' && { ends: endsOf(traced.compiled, traced.run, name) }),
    from: [],
    ...(readFrom && { readFrom }),
    ...(silent && { source: silent.source }),
  };
}

const tableUnitOf = ({ topic }: Compiled, table: string): string =>
  (topic.tables[table] ?? topic.wordTables?.[table])?.valueUnit ?? '';

/** A formula that came down to one other is told by the working and the source of that other. */
function formulaStep(traced: Traced, name: string): Step | undefined {
  const { compiled, run, system, readFrom } = traced;
  const { scope } = run;
  const own = compiled.formulas.get(name)?.formula;
  const shown = shownFormula(compiled, scope, name);
  if (!own || !shown) return undefined;
  const unit = (each: string) => unitOfName(compiled, each);
  const value = run.value(name);
  const tableUnit = (table: string) => tableUnitOf(compiled, table);
  const telling = { compiled, scope, unit, tableUnit, system, readFrom };
  const inOthers = told(telling, shown.node, own.unit);
  const read = origin(telling, name);
  return {
    kind: 'formula',
    label: own.label,
    noun: nounOf(compiled, name),
    value: namedInWords(name, value, own.unit, system),
    ...(value.kind === 'number' && { ends: endsOf(compiled, run, name) }),
    working: working(shown.node, telling),
    ...(inOthers && { told: inOthers }),
    is: shown.formula.is,
    from: usedNames(shown.node, scope),
    source: shown.formula.source,
    ...(read && { readFrom: read }),
  };
}

function decisionStep(traced: Traced, name: string): Step | undefined {
  const decision = traced.compiled.topic.decisions?.[name];
  if (!decision) return undefined;
  const { label, on, results, source } = decision;
  const value = traced.run.value(name);
  const among = value.kind === 'among' ? value.options : [];
  const words = among.map((word) => results[word]?.label ?? word).join(' or ');
  return { kind: 'decision', label, value: words, among, from: on, source };
}

function simulationStep(traced: Traced, name: string): Step | undefined {
  const compiled = traced.compiled.simulations.get(name);
  if (!compiled) return undefined;
  const { label, source } = compiled.simulation;
  const { length } = traced.run.scope.simulation(name).steps;
  return { kind: 'simulation', label, value: `${length} steps`, from: compiled.uses, source };
}

function catalogueStep(traced: Traced, name: string): Step | undefined {
  const catalogue = traced.compiled.topic.catalogues?.[name];
  if (!catalogue) return undefined;
  const { label, models, options, source } = catalogue;
  const value = `${Object.keys(models).length} models, ${Object.keys(options).length} options`;
  const from = factsRead(catalogue).filter((fact) => traced.run.given(fact));
  return { kind: 'catalogue', label, value, from, source };
}

function valueStep(traced: Traced, name: string): Step | undefined {
  const reckoned =
    formulaStep(traced, name) ??
    decisionStep(traced, name) ??
    simulationStep(traced, name) ??
    catalogueStep(traced, name);
  if (reckoned) return reckoned;
  const parameter = traced.parameters.find((each) => each.id === name);
  if (parameter) {
    const { label, value, unit, source } = parameter;
    const ends = { lo: value, hi: value, unit };
    const noun = nounOf(traced.compiled, name);
    const shown = show(ends, unit, traced.system);
    return { kind: 'parameter', label, noun, value: shown, ends, from: [], source };
  }
  const input = traced.inputs.get(name);
  if (input) return factStep(traced, name, input);
  const list = name.slice(0, name.lastIndexOf('.'));
  const rows = traced.inputs.get(list);
  return rows && factStep(traced, list, rows);
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
    for (const each of step.from) include(each);
  };
  const compared = (of: string): string[] => [
    ...new Set(
      conditionRules(topic)
        .filter((rule) => rule.event.params.of === of)
        .flatMap((rule) => namesCompared(rule.conditions)),
    ),
  ];
  const asked: string[] = [];
  for (const limit of traced.limits) {
    if (limit.state === 'not-asked') continue;
    const id = `limit.${limit.id}`;
    const from = compared(id);
    steps[id] = {
      kind: 'limit',
      label: limit.label,
      value: limit.state,
      from,
      source: limit.source,
    };
    asked.push(id);
    for (const each of from) include(each);
  }
  for (const finding of traced.findings) {
    if (finding.level === 'not-asked') continue;
    const id = `finding.${finding.id}`;
    const from = compared(id);
    const { label, source, says } = finding;
    steps[id] = { kind: 'finding', label, value: says, from, source };
    asked.push(id);
    for (const each of from) include(each);
  }
  for (const name of topic.headline) include(name);
  steps.verdict = { kind: 'verdict', label: topic.title, value: traced.words, from: asked };
  return { root: 'verdict', units: traced.system, steps };
}
