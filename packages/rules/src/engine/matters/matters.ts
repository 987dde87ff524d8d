import { rounded, sameDimension, unitOf } from '../../quantity';
import { type Asked, compiledOf, reckoned, today } from '../answer/answer';
import { isAsked } from '../answer/levels';
import { unitOfName } from '../answer/named';
import { inBase, parametersOn } from '../answer/parameters';
import { refuseAsked } from '../check/asked';
import type { Source, Topic } from '../define/shapes';
import { type Run, run as reckonRun, runLike } from '../formula/run';
import { inUnit } from '../formula/words';
import { nounOf } from '../trace/nouns';
import { message } from '../words/message';
import { say as inVoice, sayer } from '../words/say';
import type { Voice } from '../words/speaker';
import { nounOr, type Sayable, text } from '../words/value';
import { offSource } from './off';
import { atMiddle, type Varied, variedOf } from './vary';

/** One fact, and how much it moves a result if it is off by as much as it plausibly may be. */
export type Mover = {
  readonly fact: string;
  readonly label: string;
  /** What to do about it: “Weigh the tongue”. */
  readonly instead: string;
  readonly message: Sayable;
  /** How far off the fact may plausibly be, either way. */
  readonly off: { readonly value: number; readonly unit: string };
  /** How far that moves the result, either way. */
  readonly moves: { readonly value: number; readonly unit: string };
};

/** The few facts that a result, or the room below a limit, is most sensitive to. */
export type Matter = {
  /** A result by its name, or `limit.<id>` for the room below it. */
  readonly of: string;
  readonly label: string;
  readonly facts: readonly Mover[];
  readonly says: string;
  readonly messages: { readonly label: Sayable; readonly says: Sayable };
  /** Whose choice it is how far off a number that is no range may be. */
  readonly source: Source;
};

/** No more than so many facts are told, and none that moves less than this share of the first. */
const mostTold = 3;
const leastShare = 0.05;

type Target = {
  readonly of: string;
  readonly label: Sayable;
  readonly unit: string;
  /** In base units; undefined where it is not known. */
  readonly value: (run: Run) => number | undefined;
};

function pointOf(run: Run, name: string): number | undefined {
  const value = run.value(name);
  return value.kind === 'number' && value.lo === value.hi && Number.isFinite(value.lo)
    ? value.lo
    : undefined;
}

function targetsOf(topic: Topic, run: Run): readonly Target[] {
  const compiled = compiledOf(topic);
  const limits = Object.entries(topic.limits).flatMap(([id, limit]): Target[] => {
    if (!isAsked(limit, run)) return [];
    const value = (at: Run) => {
      const [used, rating] = [pointOf(at, limit.used), pointOf(at, limit.limit)];
      return used === undefined || rating === undefined ? undefined : rating - used;
    };
    const unit = unitOfName(compiled, limit.limit);
    return [{ of: `limit.${id}`, label: nounOr(limit, id), unit, value }];
  });
  const results = topic.headline.map((name) => ({
    of: name,
    label: nounOf(compiled, name),
    unit: unitOfName(compiled, name),
    value: (at: Run) => pointOf(at, name),
  }));
  return [...limits, ...results];
}

const isLength = (unit: string): boolean =>
  unit !== '' && sameDimension(unitOf(unit).dimension, unitOf('in').dimension);
const isWeight = (unit: string): boolean =>
  unit !== '' && sameDimension(unitOf(unit).dimension, unitOf('lb').dimension);

/** What to do about a fact: as it says itself, or made from its label and unit. */
function insteadOf(topic: Topic, { name, fact, unit }: Varied): Sayable {
  const declared = topic.facts[fact];
  const of = nounOr(declared, fact);
  if (name !== fact && isLength(unit)) return message('measure-place', { of });
  if (declared?.instead) return text(declared.instead);
  if (isWeight(unit)) return message('weigh-it', { of });
  return message(isLength(unit) ? 'measure-it' : 'look-again', { of });
}

/**
 * For each asked limit’s room and each headline result the facts that move it most: how fast it
 * changes with a fact, times how far off the fact may plausibly be (half its range; else by how it
 * was read). Reckoned with every range at its middle; results that rest on something unknown, and
 * facts nobody told, are left out. It changes no verdict.
 *
 * @throws InputError as `answer` does
 */
export function matters(topic: Topic, asked: Asked): readonly Matter[] {
  refuseAsked(topic, asked);
  const asOf = asked.asOf ?? today();
  const compiled = compiledOf(topic);
  const { inputs } = reckoned(topic, asked, asOf);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  const say = sayer(asked);
  const base = atMiddle(inputs);
  const middle = reckonRun(compiled, base, parameters);
  const targets = targetsOf(topic, middle);
  const varied = variedOf(topic, inputs, asked.readFrom ?? {}).map((each) => {
    const at = (by: -1 | 1) =>
      runLike(middle, compiled, new Map(base).set(each.fact, each.moved(by)), parameters);
    return { each, low: at(-1), high: at(1) };
  });
  return targets.flatMap((target): Matter[] => {
    const { of, label, unit } = target;
    const movers = varied.flatMap(({ each, low, high }): Mover[] => {
      const [a, b] = [target.value(low), target.value(high)];
      if (a === undefined || b === undefined) return [];
      const inOwn = (value: number, own: string) => inUnit({ lo: value, hi: value }, own).lo;
      const value = rounded(inOwn(Math.abs(b - a) / 2, unit));
      if (value === 0) return [];
      const instead = insteadOf(topic, each);
      return [
        {
          fact: each.fact,
          label: say(text(topic.facts[each.fact]?.label ?? each.fact)),
          instead: say(instead),
          message: instead,
          off: { value: rounded(inOwn(each.off, each.unit)), unit: each.unit },
          moves: { value, unit },
        },
      ];
    });
    const sorted = movers.toSorted((a, b) => b.moves.value - a.moves.value);
    const [first] = sorted;
    if (!first) return [];
    const { value } = first.moves;
    const facts = sorted
      .slice(0, mostTold)
      .filter(({ moves }) => moves.value >= leastShare * value);
    const by = { lo: value, hi: value, unit, style: 'exact' } as const;
    const told = message('matters-most', { instead: first.message, of: [label], by });
    return [
      {
        of,
        label: say(label),
        facts,
        says: say(told),
        messages: { label, says: told },
        source: offSource,
      },
    ];
  });
}

/** “Weigh the tongue: it matters most for payload and tongue weight.” – one line a fact, for a sheet. */
export function mattersSays(
  all: readonly Matter[],
  of: readonly string[],
  voice?: Voice,
): readonly string[] {
  const byFact = new Map<string, { instead: Sayable; of: Sayable[] }>();
  for (const name of of) {
    const matter = all.find((each) => each.of === name);
    const first = matter?.facts[0];
    if (!matter || !first) continue;
    const key = JSON.stringify(first.message);
    const line = byFact.get(key) ?? { instead: first.message, of: [] };
    line.of.push(matter.messages.label);
    byFact.set(key, line);
  }
  return [...byFact.values()].map((line) =>
    inVoice(message('matters-most', { ...line, by: null }), voice),
  );
}
