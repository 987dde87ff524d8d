import fc from 'fast-check';
import { onEdges } from './edges';
import type { PlainCase, PlainFact, PlainRow } from './plain-case';
import { few, lists, numbers, words } from './rig-numbers';

/** How often a value is given as a range, and how often as unknown. */
type Openness = { readonly range: number; readonly unknown: number };

const tidy = (value: number, step: number): number => Math.round(value / step) * step;

/** A small generator of its own, so that a seed alone tells the case. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const oneOf = <T>(all: readonly T[], random: () => number, otherwise: T): T =>
  all[Math.floor(random() * all.length)] ?? otherwise;

/** What axle loads cannot be reckoned without. */
const forAxles = new Set([
  'vehicle.curbFront',
  'vehicle.curbRear',
  'vehicle.wheelbase',
  'vehicle.overhang',
  'trailer.ballToAxle',
  'hitch.restored',
]);

/** What a verdict hangs on once the weights are right. */
const mustBeTold = new Set([
  'vehicle.distributionAllowed',
  'vehicle.sevenWay',
  'vehicle.brakeController',
  'trailer.brakes',
]);

const isRating = /Rating|Carried|Distributed|Above|Payload|gvwr|gcwr|gawr|tireCapacity|max[A-Z]/;

function draw(random: () => number, openness: Openness): PlainCase {
  const made: PlainCase = {};
  const between = (lo: number, hi: number): number => lo + random() * (hi - lo);
  /** The value, or a range about it that stays within what can be, or unknown. */
  const opened = (value: number, lo: number, hi: number): PlainFact => {
    if (random() < openness.unknown) return 'unknown';
    if (random() >= openness.range) return value;
    const width = (hi - lo) * random() * 0.2;
    const [least, most] = [Math.min(lo, 0), hi <= 1 ? 1 : Infinity];
    return { lo: Math.max(least, value - width), hi: Math.min(most, value + width) };
  };
  // Half of the rigs are told well enough for axle loads; half load less than they may.
  const whole = random() < 0.5;
  const light = random() < 0.5;
  for (const [id, [lo, hi, chance]] of Object.entries(numbers)) {
    if (random() >= (whole && forAxles.has(id) ? 1 : chance)) continue;
    const share = light ? (isRating.test(id) ? [0.6, 1.3] : [0, 0.6]) : [0, 1];
    const [from = 0, to = 1] = lo < 0 || hi <= 1 ? [0, 1] : share;
    const value = between(lo + from * (hi - lo), lo + to * (hi - lo));
    made[id] = opened(tidy(value, hi <= 1 ? 0.01 : 0.5), lo, hi);
  }
  // Most tongues are near the usual share of their trailer.
  const dry = made['trailer.dryWeight'];
  if (typeof dry === 'number' && made['trailer.dryTongueWeight'] !== undefined && random() < 0.8) {
    made['trailer.dryTongueWeight'] = opened(tidy(dry * between(0.1, 0.16), 0.5), 0, dry / 5);
  }
  for (const [id, [options, chance]] of Object.entries(words)) {
    if (random() >= (light && mustBeTold.has(id) ? 0.97 : chance)) continue;
    const word = light ? options[0] : oneOf(options, random, 'unknown');
    made[id] = random() < openness.unknown ? 'unknown' : (word ?? 'unknown');
  }
  for (const [id, [values, chance]] of Object.entries(few)) {
    if (random() >= chance) continue;
    made[id] = random() < openness.unknown ? 'unknown' : oneOf(values, random, 1);
  }
  // A pin stands over the rear axle, or a little ahead of it.
  if (made['trailer.coupling'] === 'fifth-wheel' && made['vehicle.overhang'] !== undefined) {
    made['vehicle.overhang'] = tidy(between(-12, 6), 0.5);
    const dryTongue = made['trailer.dryTongueWeight'];
    if (typeof dryTongue === 'number') made['trailer.dryTongueWeight'] = dryTongue * 1.5;
  }
  for (const [id, [most, behind, ahead]] of Object.entries(lists)) {
    if (random() < (light ? 0.05 : 0.2)) continue;
    const placed = whole ? (random() < 0.7 ? 1 : 0.7) : random() < 0.5 ? 0.5 : 0;
    const row = (): PlainRow => {
      const weight = opened(tidy(between(10, most), 0.5), 10, most);
      if (random() >= placed) return { weight };
      return { weight, ahead: opened(tidy(between(behind, ahead), 0.5), behind - 5, ahead) };
    };
    made[id] = Array.from({ length: Math.floor(random() * 4) }, row);
  }
  return made;
}

const seeds = fc.noShrink(fc.integer({ min: 0, max: 0xffffffff }));

/** Everything that is said is said exactly; much is not said at all. */
export const exactCase = (): fc.Arbitrary<PlainCase> =>
  seeds.map((seed) => draw(randomFrom(seed), { range: 0, unknown: 0 }));

/** Some of what is said is a range, some is unknown. */
export const openCase = (): fc.Arbitrary<PlainCase> =>
  seeds.map((seed) => {
    const random = randomFrom(seed);
    const openness =
      random() < 0.5 ? { range: 0.15, unknown: 0.02 } : { range: 0.05, unknown: 0.05 };
    return draw(random, openness);
  });

/** Ratings exactly at, just under or just over what is used, with and without the margin. */
export const latticeCase = (): fc.Arbitrary<PlainCase> =>
  seeds.map((seed) => {
    const random = randomFrom(seed);
    return onEdges(draw(random, { range: 0, unknown: 0 }), random);
  });

/**
 * Facts whose being known changes the way of reckoning and not only a number: without its place
 * propane rides on the A-frame, without a scale ticket the tongue is an estimate, an unknown
 * altitude takes nothing off, and only a rating that is known leaves open what bars nobody told of
 * would do. What is unknown among them stays unknown in every point.
 */
const waysOfReckoning = new Set([
  'vehicle.curbWeight',
  'vehicle.curbFront',
  'vehicle.curbRear',
  'vehicle.gvwr',
  'vehicle.placardPayload',
  'vehicle.wheelbase',
  'vehicle.overhang',
  'vehicle.engine',
  'vehicle.maxTongueDistributed',
  'vehicle.maxTrailerWeight',
  'hitch.receiverRating',
  'hitch.receiverTongueRating',
  'vehicle.distributionRequiredAbove',
  'hitch.ballSize',
  'trailer.couplerSize',
  'trailer.ballToAxle',
  'trailer.measuredTongueWeight',
  'trailer.dryTongueWeight',
  'trailer.propaneAhead',
  'trailer.freshWaterAhead',
  'trailer.grayWaterAhead',
  'trailer.blackWaterAhead',
  'trailer.cargoCapacity',
  'trailer.gvwr',
  'trailer.dryWeight',
  'trailer.brakes',
  'vehicle.maxUnbraked',
  'hitch.restored',
  'hitch.extension',
  'hitch.pinRating',
  'vehicle.maxPin',
  'trip.altitude',
]);

/** One case that an open one allows: each range, and what is unknown, given some value inside it. */
export function pointOf(open: PlainCase, random: () => number): PlainCase {
  const inRange = (value: PlainFact): PlainFact => {
    if (typeof value !== 'object') return value;
    const where = random();
    // At nothing at all what is aboard would not be aboard, and be reckoned another way.
    if (where < 0.25 && value.lo !== 0) return value.lo;
    return where > 0.75 ? value.hi : value.lo + random() * (value.hi - value.lo);
  };
  const inside = (value: PlainFact, id: string): PlainFact => {
    if (value !== 'unknown') return inRange(value);
    if (waysOfReckoning.has(id)) return 'unknown';
    const options = words[id]?.[0];
    if (options) return oneOf(options, random, 'unknown');
    const usual = few[id]?.[0];
    if (usual) return oneOf(usual, random, 1);
    const most = numbers[id]?.[1] ?? 300;
    return most <= 1 ? random() : random() * most * 1.5;
  };
  const made: PlainCase = {};
  for (const [id, value] of Object.entries(open)) {
    made[id] = Array.isArray(value)
      ? value.map((row) => ({
          weight: inside(row.weight, id),
          ...(row.ahead !== undefined && { ahead: inRange(row.ahead) }),
        }))
      : inside(value, id);
  }
  return made;
}
