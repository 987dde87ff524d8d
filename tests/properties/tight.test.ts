import { towFit } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Run } from '../../packages/rules/src/engine/formula/run';
import { movedBy } from '../../packages/rules/src/engine/value/values';
import { openCase, randomFrom } from '../differential/arbitrary-case';
import type { PlainCase } from '../differential/plain-case';
import { type Rig, rigOf } from './range-points';

const topic: Topic = towFit;
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** All results that a limit compares or a reader looks for; plain facts are as wide as they are. */
const names = [
  ...new Set([
    ...topic.headline,
    ...Object.values(topic.limits).flatMap(({ used, limit }) => [used, limit]),
  ]),
].filter((name) => Object.hasOwn(topic.formulas, name));

function endsAt(run: Run, name: string): { lo: number; hi: number } {
  const value = run.value(name);
  if (value.kind !== 'number') throw new Error(`${name} is no number.`);
  return value;
}

const slack = (end: number): number => (Number.isFinite(end) ? 1e-6 + 1e-9 * Math.abs(end) : 0);

test('a hundred thousand points of random ranges lie inside what is told of them', () => {
  let points = 0;
  let moved = 0;
  fc.assert(
    fc.property(openCase(), fc.nat(), (plain, pick) => {
      const rig = rigOf(plain);
      const random = randomFrom(pick);
      const whole = names.map((name) => endsAt(rig.whole, name));
      moved += rig.size;
      for (let i = 0; i < 320; i += 1) {
        // Corners, edges and points inside alike.
        const shares = Array.from({ length: rig.size }, () => {
          const where = random();
          return where < 0.3 ? 0 : where > 0.7 ? 1 : random();
        });
        const at = rig.at(shares);
        points += 1;
        names.forEach((name, n) => {
          const { lo, hi } = endsAt(at, name);
          const range = whole[n] ?? { lo: 0, hi: 0 };
          if (!(lo >= range.lo - slack(lo) && hi <= range.hi + slack(hi))) {
            expect.fail(`${name}: ${lo}–${hi} is outside ${range.lo}–${range.hi}`);
          }
        });
      }
    }),
    { numRuns: 320, seed },
  );
  expect(points).toBeGreaterThanOrEqual(100_000);
  expect(moved / 320).toBeGreaterThan(3);
}, 900_000);

/** Everything has its place: where nobody placed it, what is told is as wide as it may ride. */
function placed(plain: PlainCase): PlainCase {
  const made: PlainCase = { 'load.occupants': [], ...plain };
  // What bars restore that nobody set is anything up to all of it.
  if (typeof made['hitch.restored'] !== 'number') made['hitch.restored'] = 0.5;
  // The arm of every load stands on both sides of what they make: that may cost tightness.
  const arm = made['trailer.ballToAxle'];
  if (typeof arm === 'object' && 'lo' in arm) made['trailer.ballToAxle'] = arm.lo;
  for (const tank of ['fresh', 'gray', 'black']) made[`trailer.${tank}WaterAhead`] = 1;
  for (const [id, fact] of Object.entries(made)) {
    if (!Array.isArray(fact)) continue;
    made[id] = fact.map((row) => ({
      ...row,
      ahead: typeof row.ahead === 'string' ? 2 : (row.ahead ?? 2),
    }));
  }
  return made;
}

/** The least or most that a result takes: from corners at random, one input after another. */
function reached(rig: Rig, name: string, sign: 1 | -1, random: () => number): number {
  let best = -Infinity;
  const score = (shares: readonly number[]) => {
    const { lo, hi } = endsAt(rig.at(shares), name);
    return sign * (sign > 0 ? hi : lo);
  };
  for (let start = 0; start < 3; start += 1) {
    const shares = Array.from({ length: rig.size }, (): number => (random() < 0.5 ? 0 : 1));
    let now = score(shares);
    for (let pass = 0; pass < 3; pass += 1) {
      const before = now;
      for (let i = 0; i < rig.size; i += 1) {
        for (const share of [0, 0.5, 1]) {
          const tried = score(shares.with(i, share));
          if (tried <= now) continue;
          now = tried;
          shares[i] = share;
        }
      }
      if (now === before) break;
    }
    best = Math.max(best, now);
  }
  return sign * best;
}

test('what is told of a range is at most 1.2 times as wide as what it can come to', () => {
  const ratios = new Map<string, number[]>();
  fc.assert(
    fc.property(openCase(), fc.nat(), (plain, pick) => {
      const rig = rigOf(placed(plain));
      fc.pre(rig.size > 0);
      const random = randomFrom(pick);
      for (const name of names) {
        const { lo, hi } = endsAt(rig.whole, name);
        // Of what nobody knows there is no true width to compare with.
        const isOpen = movedBy(rig.whole.value(name)).some(rig.whole.isOpen);
        if (isOpen || !(hi - lo > 1e-6 && Number.isFinite(hi - lo))) continue;
        const width = reached(rig, name, 1, random) - reached(rig, name, -1, random);
        // Three figures of a value are told: what is wider by less than half of the third is not seen.
        const unseen = 5e-4 * Math.max(Math.abs(lo), Math.abs(hi));
        ratios.set(name, [...(ratios.get(name) ?? []), (hi - lo - unseen) / width]);
      }
    }),
    { numRuns: 90, seed },
  );
  const rows = [...ratios].map(([name, all]) => {
    const mean = all.reduce((a, b) => a + b, 0) / all.length;
    return { name, rigs: all.length, mean: mean.toFixed(4), most: Math.max(...all).toFixed(4) };
  });
  if (process.env.TAREBOOK_SHOW) console.table(rows);
  expect(rows.length).toBeGreaterThan(12);
  for (const { name, most } of rows) expect(Number(most), name).toBeLessThanOrEqual(1.2);
}, 900_000);
