import { readFileSync } from 'node:fs';
import { type FactsGiven, levels, type Topic } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { type Matrix, matrixOf, readCatalogue, type Settled } from '@tarebook/sweep';
import { kernelFrom, packedKernel } from '@tarebook/sweep/kernels';
import { expect, test } from 'vitest';
import {
  mostCargo,
  mostPeople,
  packedFor,
  packedWithin,
  reachAt,
  reachesFrom,
  wholeReach,
} from './matrix-words';

const seed = (file: string): string =>
  readFileSync(new URL(`../../../seeds/${file}`, import.meta.url), 'utf8');
const topic: Topic = towFit;
const matrix = matrixOf(
  readCatalogue({ 'vehicles.csv': seed('vehicles.csv'), 'trailers.csv': seed('trailers.csv') }),
  '2026-11-01',
  topic,
  kernelFrom(topic, packedKernel()),
);
const pairs = matrix.vehicles.length * matrix.trailers.length;

function settle({ settle: steps }: Matrix, within: FactsGiven, wider?: Settled): Settled {
  const going = steps(within, wider);
  for (;;) {
    const { done, value } = going.next();
    if (done) return value;
  }
}

const levelsOf = (facts: FactsGiven, settled?: Settled): readonly number[] =>
  [...matrix.rows(facts, settled)].flatMap(({ levels: found }) => [...found]);
const isOpen = (level: number): boolean => levels[level] === undefined;

test('with what no slider can change left out every pair comes out as it does judged whole', () => {
  const whole = settle(matrix, packedWithin(wholeReach));
  const left = whole.levels.filter(isOpen).length;
  // Some pairs are stopped whoever comes along and whatever is packed, and most are not.
  expect(left).toBeLessThan(pairs * 0.9);
  expect(left).toBeGreaterThan(pairs * 0.05);
  for (const [adults, cargo] of [
    [1, 50],
    [2, 300],
    [3, 950],
    [mostPeople, mostCargo],
  ] as const) {
    const wanted = levelsOf(packedFor(adults, cargo));
    expect(levelsOf(packedFor(adults, cargo), whole)).toEqual(wanted);
    const reach = reachAt(adults, cargo);
    if (!reach) throw new Error('Something is packed.');
    const part = settle(matrix, packedWithin(reach), whole);
    expect(part.levels.filter(isOpen).length).toBeLessThan(left);
    expect(levelsOf(packedFor(adults, cargo), part)).toEqual(wanted);
    // What is settled is so at both ends of the part, too.
    for (const end of reach.cargo) {
      const there = levelsOf(packedFor(adults, end));
      part.levels.forEach((level, at) => {
        if (!isOpen(level)) expect(there[at]).toBe(level);
      });
    }
  }
}, 60_000);

test('each place of the sliders lies in one part, and nothing packed in none', () => {
  expect(reachAt(2, 0)).toBeUndefined();
  expect(reachAt(2, 100)).toEqual({ adults: [2, 2], cargo: [1, 100] });
  expect(reachAt(2, 150)).toEqual({ adults: [2, 2], cargo: [101, 200] });
  const near = reachesFrom(2, 300);
  expect(near[0]).toEqual(reachAt(2, 300));
  for (let cargo = 50; cargo <= mostCargo; cargo += 50) {
    expect(near).toContainEqual(reachAt(2, cargo));
  }
  for (let adults = 1; adults <= mostPeople; adults += 1) {
    expect(near).toContainEqual(reachAt(adults, 300));
  }
});
