import { type Asked, reckoned, today } from '../answer/answer';
import { refuseAsked } from '../check/asked';
import type { FactsGiven } from '../check/given';
import { presentFacts } from '../check/renamed';
import type { Level, Topic } from '../define/shapes';
import { text } from '../words/value';
import { givenAfter } from './edits';
import { type Bench, benchOf, judge, worth } from './trial';
import { tidy } from './way';
import { allWays, barred } from './ways';

/** A stretch of weights, or of whatever is moved, on which the outcome is one. */
export type Stretch = {
  readonly from: number;
  readonly to: number;
  readonly level: Level;
  readonly outcome: string;
  readonly words: string;
};

/**
 * Several facts moved in one proportion, such as a trailer with all that is in it, and where the
 * outcome turns on the way.
 *
 *     least ─── fits ───┼─ with care ─┼── start ──┼──── does not fit ──── most
 */
export type Along = {
  /** The result that it is told by, and what that is called. */
  readonly shown: string;
  readonly label: string;
  readonly unit: string;
  /** As the facts are. */
  readonly start: number;
  readonly step: number;
  /** In order, without a gap; every turn is rounded so that the better side holds up to it. */
  readonly stretches: readonly Stretch[];
  /** The facts with the result moved there. */
  readonly at: (x: number) => FactsGiven;
};

/** At so many points the outcome is looked at; between two of them it is taken to turn one way only. */
const looks = 48;

type Cut = { readonly x: number; readonly level: Level };

/** Every turn between two points, however short a stretch lies between: `x` is the last of the level. */
function turnsBetween(
  levelAt: (x: number) => Level,
  first: Cut,
  last: Cut,
  finest: number,
): readonly Cut[] {
  if (first.level === last.level) return [];
  let [lo, hi] = [first.x, last.x];
  while (hi - lo > finest) {
    const middle = (lo + hi) / 2;
    if (levelAt(middle) === first.level) lo = middle;
    else hi = middle;
  }
  const past = { x: hi, level: levelAt(hi) };
  return [{ x: lo, level: first.level }, ...turnsBetween(levelAt, past, last, finest)];
}

/** Onto the grid of the step, so that the better side holds up to it. */
function onStep(x: number, isBetterBelow: boolean, step: number): number {
  const on = x / step;
  return tidy((isBetterBelow ? Math.floor(on + 1e-6) : Math.ceil(on - 1e-6)) * step);
}

function stretchesOf(
  { topic, say }: Bench,
  levelAt: (x: number) => Level,
  [from, to]: readonly [number, number],
  step: number,
): readonly Stretch[] {
  const cuts = Array.from({ length: looks + 1 }, (_, i): Cut => {
    const x = from + ((to - from) * i) / looks;
    return { x, level: levelAt(x) };
  });
  const turns = cuts.slice(1).flatMap((cut, i) => {
    const before = cuts[i];
    return before ? turnsBetween(levelAt, before, cut, step / 1000) : [];
  });
  const last = cuts.at(-1);
  const found: Stretch[] = [];
  let begun = from;
  for (const [i, { x, level }] of [...turns, ...(last ? [last] : [])].entries()) {
    const next = turns[i + 1] ?? last;
    const isLast = i === turns.length;
    const end = isLast ? to : onStep(x, worth[level] < worth[next?.level ?? level], step);
    const { id, words } = topic.outcomes[level];
    // Between two turns that fall on one step there is nothing to be chosen.
    if (end > begun || isLast) {
      found.push({ from: begun, to: end, level, outcome: id, words: say(text(words)) });
      begun = end;
    }
  }
  return found;
}

/**
 * Moves what a topic lets be scaled – another trailer, loaded in proportion – and tells where the
 * outcome turns. Undefined where the topic scales nothing, or not in this case.
 *
 * @param upTo how far up, in the unit of the result; the least is the topic's own
 * @throws InputError for facts that are none.
 */
export function alongScale(topic: Topic, told: Asked, upTo: number): Along | undefined {
  refuseAsked(topic, told);
  const asked = { ...told, facts: presentFacts(topic, told.facts).facts };
  const asOf = asked.asOf ?? today();
  const { inputs } = reckoned(topic, asked, asOf);
  const bench = benchOf(topic, asOf, inputs, asked);
  const before = judge(bench, inputs);
  const ways = allWays({ bench, inputs, judged: before, given: asked.facts });
  const way = ways.find(({ change }) => change.kind === 'scale');
  if (!way?.line || way.change.kind !== 'scale' || barred(inputs, way.change)) return undefined;
  const { start, step, ends } = way.line;
  const from = Math.floor((ends[0] ?? start) / step) * step;
  const to = Math.ceil(Math.max(upTo, start) / step) * step;
  const levels = new Map<number, Level>();
  const levelAt = (x: number): Level => {
    const level = levels.get(x) ?? judge(bench, way.edit(inputs, x)).level;
    levels.set(x, level);
    return level;
  };
  const { shown } = way.change;
  return {
    ...{ shown, unit: way.unit, start, step },
    label: bench.say(text(topic.formulas[shown]?.label ?? shown)),
    stretches: stretchesOf(bench, levelAt, [from, to], step),
    at: (x) => givenAfter(topic, asked.facts, inputs, way.edit(inputs, x), new Map()),
  };
}
