import { unitOf } from '../../quantity';
import { type ConditionRule, conditionRules } from '../condition/rules';
import { holds } from '../condition/walk';
import type { State, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type Run, runLike } from '../formula/run';
import { asTruth } from '../value/truth';
import type { Input, NumberInput } from '../value/values';
import { type Asked, compiledOf, madeFrom, reckoned, today } from './answer';
import { factsBelow } from './grounds';
import { isAsked, levelOf } from './levels';
import { endsOf, lookIn } from './named';
import { inBase, parametersOn } from './parameters';
import type { Ends, Untraced } from './shapes';

/** One limit of a case, tried with a fact told otherwise. */
export type LimitTrials = {
  /** Quantities that the limit may hang on and that are not one number; what was spoken of first. */
  readonly open: (id: string) => readonly string[];
  /** How the limit stands where a fact is exactly this, in its declared unit. */
  readonly at: (id: string, fact: string, value: number) => State;
  /** What is used of it where an estimate comes out heavy but common; undefined where it is none. */
  readonly cautious: (id: string) => Ends | undefined;
  /** What is certainly left of it there, below zero where it may be gone over. */
  readonly left: (id: string, fact: string, value: number) => number;
};

const exact = (value: number): NumberInput => ({
  ...{ kind: 'number', lo: value, hi: value, status: 'known', open: false },
});

const isOpen = (input: Input | undefined): boolean =>
  input?.kind === 'number' && (input.open || input.status !== 'known' || input.lo !== input.hi);

const rulesKept = new WeakMap<Topic, Map<string, readonly ConditionRule[]>>();

function rulesOf(topic: Topic, of: string): readonly ConditionRule[] {
  const all = rulesKept.get(topic) ?? new Map<string, readonly ConditionRule[]>();
  rulesKept.set(topic, all);
  const own = all.get(of) ?? conditionRules(topic).filter(({ event }) => event.params.of === of);
  all.set(of, own);
  return own;
}

function stateIn(compiled: Compiled, run: Run, id: string): State {
  const limit = compiled.topic.limits[id];
  if (!limit || !isAsked(limit, run)) return 'not-asked';
  const of = `limit.${id}`;
  const look = lookIn(compiled, run);
  const holding = (question: 'certain' | 'possible'): ReadonlySet<string> =>
    new Set(
      rulesOf(compiled.topic, of).flatMap(({ name, conditions }) =>
        holds(conditions, question, look) ? [name] : [],
      ),
    );
  return levelOf(
    of,
    { certain: holding('certain'), possible: holding('possible') },
    { relieved: limit.relief !== undefined },
  );
}

/**
 * Tries limits of a case again and again, each time with one fact told otherwise: what does not rest on
 * that fact is reckoned once, and nothing is put into words. For topics without catalogues.
 *
 * @param given what was answered to the same: what was reckoned for it is not reckoned again
 * @throws InputError for facts that cannot be read
 */
export function limitTrials(topic: Topic, asked: Asked, given?: Untraced): LimitTrials {
  const asOf = asked.asOf ?? today();
  const compiled = compiledOf(topic);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  const { run, inputs } = (given && madeFrom(given)) ?? reckoned(topic, asked, asOf);
  const runAt = (fact: string, value: number): Run => {
    const declared = topic.facts[fact];
    const unit = declared?.kind === 'quantity' ? declared.unit : '';
    const told = new Map(inputs);
    told.set(fact, exact(value * (unit === '' ? 1 : unitOf(unit).factor)));
    return runLike(run, compiled, told, parameters);
  };
  return {
    open: (id) => {
      const { used = '', limit = '' } = topic.limits[id] ?? {};
      const below = new Set([...factsBelow(compiled, limit), ...factsBelow(compiled, used)]);
      const all = Object.keys(topic.facts).filter(
        (fact) => below.has(fact) && isOpen(inputs.get(fact)),
      );
      return all.toSorted((a, b) => Number(!run.given(a)) - Number(!run.given(b)));
    },
    cautious: (id) => {
      const { cautious } = topic.limits[id] ?? {};
      if (!cautious || !asTruth(run.value(cautious.when)).yes) return undefined;
      return endsOf(compiled, run, cautious.used);
    },
    at: (id, fact, value) => stateIn(compiled, runAt(fact, value), id),
    left: (id, fact, value) => {
      const { used = '', limit = '' } = topic.limits[id] ?? {};
      const then = runAt(fact, value);
      return endsOf(compiled, then, limit).lo - endsOf(compiled, then, used).hi;
    },
  };
}
