import type { Asked } from '../answer/answer';
import { endsOf, unitOfName } from '../answer/named';
import { refuseAsked, refuseUnlessWhole } from '../check/asked';
import { isPlain } from '../check/given';
import type { Topic } from '../define/shapes';
import { restsOnKnown } from '../formula/reckon';
import { rankNames } from './decide';
import { type Prepared, prepare } from './prepare';
import type { Spread, SpreadOptions } from './shapes';
import { chanceOf } from './statistics';
import {
  chanceTally,
  choiceTally,
  densityTally,
  fixedQuantiles,
  quantileTally,
  rankTally,
} from './tally';

/** How many draws are reckoned at once. What comes out does not hang on it. */
const width = 1024;

export const mostDraws = 10_000_000;
export const mostSeed = 0xffff_ffff;

function refuseSpread(options: SpreadOptions): void {
  const { draws, seed } = isPlain(options) ? options : {};
  refuseUnlessWhole('The number of draws', draws, 1, mostDraws);
  refuseUnlessWhole('The seed', seed, 0, mostSeed);
}

const isKnown = ({ setting: { run } }: Prepared, name: string): boolean =>
  restsOnKnown(run.value(name), run.isOpen);

/** A result's lanes in its own unit; undefined for one that is no number. */
function lanesShown({ shown }: Prepared, name: string): Float64Array | undefined {
  const lanes = shown(name);
  return lanes.kind === 'numbers' ? lanes.lo : undefined;
}

/** What is counted of each asked limit. */
function limitTallies(prepared: Prepared) {
  const { setting, states, verdicts } = prepared;
  const { compiled, run } = setting;
  return Object.entries(compiled.topic.limits)
    .filter(([id]) => states.get(`limit.${id}`) !== 'not-asked')
    .map(([id, { used, limit }]) => {
      const known = isKnown(prepared, used) && isKnown(prepared, limit);
      const ends = endsOf(compiled, run, used);
      const lanes = known && ends.lo < ends.hi ? lanesShown(prepared, used) : undefined;
      const chance = chanceTally(known, verdicts.get(`limit.${id}.stop`));
      return { id, chance, density: lanes && densityTally(ends, lanes) };
    });
}

/** What is kept of each headline result. */
function valueTallies(prepared: Prepared, draws: number) {
  const { compiled, run } = prepared.setting;
  const numbers = compiled.topic.headline.filter((name) => run.value(name).kind === 'number');
  return numbers.map((name) => {
    const unit = unitOfName(compiled, name);
    if (!isKnown(prepared, name)) return { name, unit };
    const { lo, hi } = endsOf(compiled, run, name);
    if (lo === hi) return { name, unit, kept: fixedQuantiles(lo) };
    const lanes = lanesShown(prepared, name);
    return { name, unit, ...(lanes && { kept: quantileTally(lanes, draws) }) };
  });
}

/** What is counted of each headline result that is a choice, or true or not. */
function choiceTallies(prepared: Prepared) {
  return prepared.setting.compiled.topic.headline.flatMap((name) => {
    const lanes = prepared.shown(name);
    return lanes.kind === 'numbers' ? [] : [{ name, words: choiceTally(lanes) }];
  });
}

/**
 * Draws the ranges of a case again and again, and counts. Yields how many draws are done after each
 * block, so that a caller can show progress or leave off; the last `next` returns the result.
 *
 * @throws InputError for draws or a seed that are none, and for facts that cannot be read
 */
export function* spreadInBlocks(
  topic: Topic,
  asked: Asked,
  options: SpreadOptions,
): Generator<number, Spread> {
  refuseAsked(topic, asked);
  refuseSpread(options);
  const { draws, seed } = options;
  const prepared = prepare(topic, asked, Math.min(width, draws), seed);
  const limits = limitTallies(prepared);
  const values = valueTallies(prepared, draws);
  const choices = choiceTallies(prepared);
  const ranks = rankTally(prepared.ranks);
  for (let done = 0; done < draws; ) {
    const count = Math.min(width, draws - done);
    prepared.next(count);
    ranks.take(count, done);
    for (const { chance, density } of limits) {
      chance.take(count, done);
      density?.take(count, done);
    }
    for (const { kept } of values) kept?.take(count, done);
    for (const { words } of choices) words.take(count, done);
    done += count;
    yield done;
  }
  const counts = ranks.result(draws);
  const outcomes = rankNames.map((rank, i) => [
    topic.outcomes[rank].id,
    chanceOf(counts[i] ?? 0, draws),
  ]);
  return {
    draws,
    seed,
    drawn: prepared.draws.map(({ told }) => told),
    limits: Object.fromEntries(limits.map(({ id, chance }) => [id, chance.result(draws)])),
    outcomes: Object.fromEntries(outcomes),
    values: Object.fromEntries(
      values.map(({ name, unit, kept }) => [
        name,
        kept ? { unit, quantiles: kept.result(draws) } : null,
      ]),
    ),
    choices: Object.fromEntries(choices.map(({ name, words }) => [name, words.result(draws)])),
    densities: Object.fromEntries(
      limits.flatMap(({ id, density }) => (density ? [[id, density.result(draws)]] : [])),
    ),
  };
}

/** How likely each limit is gone over, each outcome, and where the results lie, from seeded draws. */
export function spread(topic: Topic, asked: Asked, options: SpreadOptions): Spread {
  const blocks = spreadInBlocks(topic, asked, options);
  for (;;) {
    const { done, value } = blocks.next();
    if (done) return value;
  }
}
