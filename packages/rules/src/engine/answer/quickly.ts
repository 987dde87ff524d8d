import { refuse, refuseAsked, refuseOptions, refuseTopic } from '../check/asked';
import { readFacts } from '../check/facts';
import type { FactsGiven } from '../check/given';
import { compare } from '../condition/operators';
import { conditionRules, type RuleType } from '../condition/rules';
import { type Look, rulesHolding } from '../condition/walk';
import type { Condition, Finding, Level, Limit, State, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type ParameterValues, type Run, run as reckonRun } from '../formula/run';
import type { Inputs } from '../value/values';
import { type AskedOf, compiledOf, type OutcomeOf, today } from './answer';
import { verdictLevel } from './grounds';
import { allStates, type Holding, isAsked, levelOf } from './levels';
import { fromCatalogues } from './listed';
import { lookIn, namedValues } from './named';
import { inBase, parametersOn } from './parameters';

/** A verdict alone: what `answer` comes to, without a word of why. */
export type Verdict<Outcome extends string = string> = {
  readonly outcome: Outcome;
  readonly level: Level;
  /**
   * The first limit or finding, in the order of the rule set, that stands at this level, such as
   * `limit.payload`; null where nothing objects, and where nothing told can be compared.
   */
  readonly decidedBy: string | null;
};

type Test = (look: Look) => boolean;
type Both = { readonly certain: Test; readonly possible: Test };

/** A condition as closures, so that a name is looked up and reckoned only where it still counts. */
function testOf(condition: Condition, question: keyof Both): Test {
  if ('all' in condition) {
    const parts = condition.all.map((each) => testOf(each, question));
    return (look) => parts.every((part) => part(look));
  }
  if ('any' in condition) {
    const parts = condition.any.map((each) => testOf(each, question));
    return (look) => parts.some((part) => part(look));
  }
  const { fact, operator, value } = condition;
  if (typeof value === 'object' && 'fact' in value) {
    const other = value.fact;
    return (look) => compare(question, operator, look(fact), look(other));
  }
  return (look) => compare(question, operator, look(fact), value);
}

/** A limit or a finding with its own conditions. */
type Subject = {
  readonly of: string;
  readonly asked: Parameters<typeof isAsked>[0];
  readonly how: Parameters<typeof levelOf>[2];
  readonly tests: readonly (readonly [name: string, type: RuleType, both: Both])[];
};

function subjectsOf(topic: Topic): readonly Subject[] {
  const tests = new Map<string, Subject['tests'][number][]>();
  for (const { name, conditions, event } of conditionRules(topic)) {
    const { of } = event.params;
    const own = tests.get(of) ?? [];
    const [certain, possible] = [testOf(conditions, 'certain'), testOf(conditions, 'possible')];
    own.push([name, event.type, { certain, possible }]);
    tests.set(of, own);
  }
  const subject = (of: string, asked: Limit | Finding, how: Subject['how'] = {}): Subject => ({
    of,
    asked,
    how,
    tests: tests.get(of) ?? [],
  });
  return [
    ...Object.entries(topic.limits).map(([id, limit]) =>
      subject(`limit.${id}`, limit, { relieved: limit.relief !== undefined }),
    ),
    ...Object.entries(topic.findings).map(([id, finding]) =>
      subject(`finding.${id}`, finding, finding.stopOpen ? { stopOpen: finding.stopOpen } : {}),
    ),
  ];
}

/** Only a stop, and what makes it one, is ever asked for certain. */
function holdingOf({ tests }: Subject, look: Look): Holding {
  const [certain, possible] = [new Set<string>(), new Set<string>()];
  for (const [name, type, both] of tests) {
    if (type === 'firm') {
      if (both.certain(look)) certain.add(name);
      continue;
    }
    if (!both.possible(look)) continue;
    possible.add(name);
    if (type === 'stop' && both.certain(look)) certain.add(name);
  }
  return { certain, possible };
}

type Ready = {
  readonly topic: Topic;
  readonly compiled: Compiled;
  readonly parameters: ParameterValues;
  readonly subjects: readonly Subject[];
};

/** Up to the first stop, which nothing after it can undo. */
function statesUntilStop({ compiled, subjects }: Ready, run: Run): ReadonlyMap<string, State> {
  const look = lookIn(compiled, run);
  const states = new Map<string, State>();
  for (const subject of subjects) {
    const { of, asked, how } = subject;
    const state = isAsked(asked, run) ? levelOf(of, holdingOf(subject, look), how) : 'not-asked';
    states.set(of, state);
    if (state === 'stop') break;
  }
  return states;
}

/** Where it may be open which model is meant, each of them is looked at by itself. */
function statesByModel(ready: Ready, run: Run, inputs: Inputs): ReadonlyMap<string, State> {
  const { topic, compiled, parameters } = ready;
  const values = namedValues(compiled, run);
  const rules = conditionRules(topic);
  const plain = {
    certain: rulesHolding(rules, 'certain', values),
    possible: rulesHolding(rules, 'possible', values),
  };
  const { holding } = fromCatalogues().byModel(compiled, inputs, parameters, plain, run);
  return allStates(topic, run, holding);
}

/** What may be asked of a topic at once. */
export type QuickOptions = {
  /** The day whose parameters count, `2026-11-01`; absent: the day on which it is made ready. */
  readonly asOf?: string;
};

/**
 * Makes a topic ready once and gives what judges facts with it, again and again: the verdict of
 * `answer` and what decided it, without words, reasons or a trace.
 *
 *     const judged = quickly(towFit);
 *     judged({ 'trailer.gvwr': '5,000 lb', … }).outcome
 *
 * @throws InputError for what is no rule set, and, from what it gives, naming every fact that is not
 *   one or cannot be what was written.
 */
export function quickly<const T extends Topic>(
  topic: T,
  options?: QuickOptions,
): (facts: AskedOf<T>['facts']) => Verdict<OutcomeOf<T>>;
export function quickly(topic: Topic, options: QuickOptions = {}): (facts: FactsGiven) => Verdict {
  refuseTopic(topic);
  refuseOptions(options, ['asOf']);
  const asOf = options.asOf ?? today();
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  const ready: Ready = {
    topic,
    compiled: compiledOf(topic),
    parameters,
    subjects: subjectsOf(topic),
  };
  const hasModels = Object.keys(topic.catalogues ?? {}).length > 0;
  return (facts) => {
    refuseAsked(topic, { facts });
    const { inputs, problems } = readFacts(topic, facts);
    refuse(problems);
    const run = reckonRun(ready.compiled, inputs, parameters);
    const states = hasModels ? statesByModel(ready, run, inputs) : statesUntilStop(ready, run);
    const level = verdictLevel(ready.compiled, run, states);
    const decided = level === 'ok' ? undefined : [...states].find(([, state]) => state === level);
    return { outcome: topic.outcomes[level].id, level, decidedBy: decided?.[0] ?? null };
  };
}
