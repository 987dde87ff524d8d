import { refuse, refuseAloud, refuseAsked, refuseUndefined } from '../check/asked';
import { readFacts } from '../check/facts';
import type { FactGiven, FactsGiven } from '../check/given';
import { conditionRules } from '../condition/rules';
import { rulesHolding } from '../condition/walk';
import type { Level, Topic } from '../define/shapes';
import { type Compiled, compile } from '../formula/compile';
import type { Node } from '../formula/grammar/nodes';
import { restsOnKnown } from '../formula/reckon';
import { type Run, run as reckonRun } from '../formula/run';
import { missingFacts } from '../missing/missing';
import type { Inputs } from '../value/values';
import { answerEnglish } from '../words/en-answer';
import type { Language } from '../words/language';
import { speakerOf, type Voice } from '../words/speaker';
import { type Said, type Say, type Text, text } from '../words/value';
import { choicesOf, rankingsOf, selectionsOf, seriesOf } from './beyond';
import { findingAnswers } from './findings';
import { verdictLevel } from './grounds';
import { allStates, type Holding } from './levels';
import { bindingLimit, limitAnswers } from './limits';
import { fromCatalogues } from './listed';
import { endsOf, namedValues } from './named';
import { datedOn, houseOn, inBase, parametersOn } from './parameters';
import { restsOn, sentenceOf } from './sentence';
import type { Answer, Assumed, Ends, LimitAnswer, Untraced } from './shapes';
import { textOf } from './shown';
import { tellings } from './telling';
import { whenRead } from './when-read';

export type Asked = {
  readonly facts: FactsGiven;
  /** The day whose parameters count, `2026-11-01`; absent: today. */
  readonly asOf?: string;
  /** Where each fact was read, for the trace. */
  readonly readFrom?: Readonly<Record<string, string>>;
  /** In which units, medium and language words are put; absent: US, written, English. Numbers stay as declared. */
} & Voice;

export type Names<T extends Topic> = keyof T['formulas'] & string;
export type Apart<T extends Topic> = keyof T['apart'] & string;
export type OutcomeOf<T extends Topic> = T['outcomes'][Level]['id'];
export type LimitOf<T extends Topic> = keyof T['limits'] & string;

/** What a topic answers with: its own results, outcomes and limits, known to the compiler. */
export type AnswerOf<T extends Topic> = Answer<Names<T>, Apart<T>, OutcomeOf<T>, LimitOf<T>>;

/** What is asked of a topic: facts that it has. */
export type AskedOf<T extends Topic> = Omit<Asked, 'facts'> & {
  readonly facts: string extends keyof T['facts']
    ? FactsGiven
    : { readonly [Id in keyof T['facts'] & string]?: FactGiven };
};

const compiledTopics = new WeakMap<Topic, Compiled>();

export const isCompiled = (topic: Topic): boolean => compiledTopics.has(topic);

/** @param parsed its formulas, where they have been read already */
export function compiledOf(topic: Topic, parsed?: ReadonlyMap<string, Node>): Compiled {
  const before = compiledTopics.get(topic);
  if (before) return before;
  refuseUndefined(topic);
  const made = compile(topic, parsed);
  compiledTopics.set(topic, made);
  return made;
}

/** Reads a topic's formulas and conditions ahead of its first answer, which then comes the sooner. */
export function prepare(topic: Topic): void {
  compiledOf(topic);
  conditionRules(topic);
}

function assumedIn(compiled: Compiled, inputs: Inputs, run: Run, say: Say): readonly Assumed[] {
  const { topic } = compiled;
  const said = (words: string): { says: string; message: Text } => {
    const message = textOf(compiled, run, words);
    return { says: say(message), message };
  };
  const silent = Object.entries(topic.facts).flatMap(([fact, { silent: taken }]) =>
    taken && !taken.quiet && inputs.get(fact)?.status === 'silent'
      ? [{ fact, ...said(taken.says), source: taken.source }]
      : [],
  );
  const taken = topic.assumptions.filter(({ when }) => {
    const value = run.value(when);
    return value.kind === 'truth' && value.yes;
  });
  return [...silent, ...taken.map(({ says, source }) => ({ ...said(says), source }))];
}

function valuesOf(compiled: Compiled, run: Run): Readonly<Record<string, Ends>> {
  const values: Record<string, Ends> = {};
  const { formulas, selections = {} } = compiled.topic;
  const totals = Object.entries(selections).flatMap(([id, { amounts }]) =>
    Object.keys(amounts).map((amount) => `${id}.${amount}`),
  );
  for (const name of [...Object.keys(formulas), ...totals]) {
    if (run.value(name).kind === 'number') values[name] = endsOf(compiled, run, name);
  }
  return values;
}

/** A result shown by itself: null where it is not known, or nothing above zero is left. */
function apartIn(compiled: Compiled, run: Run, name: string): Ends | null {
  const value = run.value(name);
  if (!restsOnKnown(value, run.isOpen)) return null;
  const ends = endsOf(compiled, run, name);
  return ends.hi > 0 ? { ...ends, lo: Math.max(0, ends.lo) } : null;
}

/** What of an answer stands on other parts of it. */
type Told = Pick<Answer, 'limits' | 'findings' | 'missing' | 'parameters'> & {
  readonly binding: LimitAnswer | null;
  readonly sentence: Said;
  readonly restsOn: Said | undefined;
  readonly cautions: readonly Text[];
};

/** What an answer was made from, for whatever is made of the answer. */
type Made = {
  readonly compiled: Compiled;
  readonly run: Run;
  readonly inputs: Inputs;
  readonly asked: Asked;
  readonly words: string;
};

const making = new WeakMap<Untraced, Made>();

/** Undefined of an answer that was not made here, such as one read from JSON. */
export const madeFrom = (given: Untraced): Made | undefined => making.get(given);

type Decided = { readonly run: Run; readonly inputs: Inputs; readonly holding: Holding };

export function assemble(
  topic: Topic,
  asked: Asked,
  asOf: string,
  decided: Decided,
  language: Language,
): Untraced {
  const { run, inputs } = decided;
  const compiled = compiledOf(topic);
  const numbers = parametersOn(topic, asOf);
  const parametersNow = inBase(numbers, asOf);
  const models = fromCatalogues().byModel(compiled, inputs, parametersNow, decided.holding, run);
  const { holding, rooms } = models;
  const states = allStates(topic, run, holding);
  const level = verdictLevel(compiled, run, states);
  const outcome = topic.outcomes[level];
  const say = speakerOf(asked, language);
  const setting = { compiled, inputs, parameters: parametersNow, run };
  const rest: Told = whenRead<Told>({
    limits: () => limitAnswers(compiled, run, states, say, rooms),
    findings: () => findingAnswers({ compiled, run, say }, states, holding),
    missing: () =>
      level === 'unknown' || level === 'if' ? missingFacts(setting, run, states, say) : [],
    binding: () => bindingLimit(compiled, run, rest.limits),
    sentence: () => {
      const { limits, findings, binding } = rest;
      const told = tellings(compiled, run, level);
      const missing = () => rest.missing;
      return sentenceOf(topic, level, { limits, findings, binding, missing, told });
    },
    restsOn: () => restsOn(topic, rest.limits),
    cautions: () => topic.cautions.map(({ says }) => textOf(compiled, run, says)),
    parameters: () => numbers.map((each) => ({ ...each, label: say(text(each.label)) })),
  });
  const made = whenRead<Untraced>({
    topic: () => topic.id,
    rules: () => topic.version,
    asOf: () => asOf,
    outcome: () => outcome.id,
    words: () => say(text(outcome.words)),
    sentence: () => say(rest.sentence),
    restsOn: () => (rest.restsOn ? say(rest.restsOn) : ''),
    messages: () => ({
      sentence: rest.sentence,
      ...(rest.restsOn && { restsOn: rest.restsOn }),
      cautions: rest.cautions,
    }),
    binding: () => rest.binding?.id ?? null,
    limits: () => rest.limits,
    values: () => valuesOf(compiled, run),
    findings: () => rest.findings,
    choices: () => choicesOf(compiled, run, say),
    selections: () => selectionsOf(compiled, run, say),
    rankings: () => rankingsOf(compiled, run, say),
    series: () => seriesOf(compiled, run, say),
    missing: () => rest.missing,
    apart: () =>
      Object.fromEntries(
        Object.entries(topic.apart).map(([id, name]) => [id, apartIn(compiled, run, name)]),
      ),
    cautions: () => rest.cautions.map(say),
    assumed: () => assumedIn(compiled, inputs, run, say),
    parameters: () => rest.parameters,
    dated: () => datedOn(topic, asOf, say),
    house: () => houseOn(topic, asOf, say),
  });
  making.set(made, { compiled, run, inputs, asked, words: outcome.words });
  return made;
}

export const today = (): string => new Date().toISOString().slice(0, 10);

export function reckoned(topic: Topic, asked: Asked, asOf: string): { run: Run; inputs: Inputs } {
  // Looked through first: facts are read by what the rule set says of them.
  const compiled = compiledOf(topic);
  const { inputs, problems } = readFacts(topic, asked.facts);
  refuse(problems);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  return { run: reckonRun(compiled, inputs, parameters), inputs };
}

/**
 * The same answer at once: the same conditions, walked without json-rules-engine. Its working is
 * `traceOf` it. It is written; for one that is spoken, `language: english` brings the words.
 *
 * @throws InputError as `answer` does
 */
export function answerNow<const T extends Topic>(
  topic: T,
  asked: AskedOf<T>,
): Untraced<AnswerOf<T>>;
export function answerNow(topic: Topic, asked: Asked): Untraced {
  refuseAsked(topic, asked);
  refuseAloud(asked);
  return answerIn(answerEnglish, topic, asked);
}

/** The same, in a language that need not be told by whoever asks. */
export function answerIn(language: Language, topic: Topic, asked: Asked): Untraced {
  const asOf = asked.asOf ?? today();
  const { run, inputs } = reckoned(topic, asked, asOf);
  const values = namedValues(compiledOf(topic), run);
  const rules = conditionRules(topic);
  const holding = {
    certain: rulesHolding(rules, 'certain', values),
    possible: rulesHolding(rules, 'possible', values),
  };
  return assemble(topic, asked, asOf, { run, inputs, holding }, language);
}
