import { readFileSync } from 'node:fs';
import { towFit } from '@tarebook/rules';
import { answerNow, type FactsGiven, levels, quickly, type Topic } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { type Catalogue, readCatalogue } from './catalogue';
import { programOf } from './kernel/program';
import { towSides } from './kernel/sides';
import { matrixOf } from './matrix';

const seed = (file: string): string =>
  readFileSync(new URL(`../../../seeds/${file}`, import.meta.url), 'utf8');
const invented = readCatalogue({
  'vehicles.csv': seed('vehicles.csv'),
  'trailers.csv': seed('trailers.csv'),
});
const topic: Topic = towFit;
const asOf = '2026-11-01';
const four: FactsGiven = {
  'load.occupants': [{ label: 'Four', weight: '600 lb' }],
  'trailer.cargo': [{ label: 'A weekend', weight: '280 lb' }],
};

/** Pairs that come out otherwise than judged one by one, and every level that came out. */
function differences(catalogue: Catalogue, facts: FactsGiven, mostPlain?: number) {
  const { vehicles, trailers, rows } = matrixOf(catalogue, asOf, topic, undefined, mostPlain);
  const seen = new Set<number>();
  const wrong: string[] = [];
  let pairs = 0;
  for (const { row, levels: found } of rows(facts)) {
    const vehicle = vehicles[row];
    trailers.forEach((trailer, column) => {
      const pair = { ...vehicle?.facts, ...trailer.facts, ...facts };
      const level = found[column] ?? -1;
      const name = levels[level];
      const wanted = answerNow(topic, { facts: pair, asOf }).outcome;
      if (!name || topic.outcomes[name].id !== wanted)
        wrong.push(`${vehicle?.name}, ${trailer.name}`);
      seen.add(level);
      pairs += 1;
    });
  }
  return { wrong, seen, pairs };
}

test('every pair of the invented catalogue comes out as it does judged one by one', () => {
  const { wrong, seen, pairs } = differences(invented, four);
  expect(pairs).toBe(invented.vehicles.length * invented.trailers.length);
  expect(wrong).toEqual([]);
  expect(seen.size).toBeGreaterThan(2);
}, 60_000);

test('so does every pair of a large catalogue, which kernels judge', () => {
  const some = (entries: Catalogue['vehicles'], name: string, fact: string, step: number) =>
    Array.from({ length: 12 }, (_, i) => {
      const entry = entries.find((each) => each.name === name);
      const value = 3_000 + i * step;
      return {
        name: `${name} ${i}`,
        cells: entry?.cells ?? {},
        facts: { ...entry?.facts, [fact]: `${value} lb` },
      };
    });
  const large: Catalogue = {
    ...invented,
    vehicles: some(invented.vehicles, 'Corrie Hybrid', 'vehicle.maxTrailerWeight', 180),
    trailers: some(invented.trailers, 'Hurdle 14 Hard-Side', 'trailer.gvwr', 60),
  };
  const { wrong, pairs } = differences(large, four, 0);
  expect(pairs).toBe(144);
  expect(wrong).toEqual([]);
}, 60_000);

test('with one load after another each pair comes out as it does judged one by one', () => {
  const { vehicles, trailers, rows } = matrixOf(invented, asOf, topic, programOf(topic, towSides));
  const judge = quickly(topic, { asOf });
  const loads: FactsGiven[] = [
    four,
    { 'load.occupants': [{ label: 'One', weight: '150 lb to 200 lb' }] },
    { 'trailer.cargo': [{ label: 'Much', weight: '1,400 lb', ahead: '-2 ft' }] },
    { ...four, 'hitch.distribution': 'yes', 'hitch.restored': '60 %' },
    four,
  ];
  for (const facts of loads) {
    const wrong: string[] = [];
    for (const { row, levels: found } of rows(facts)) {
      trailers.forEach((trailer, column) => {
        const pair = { ...vehicles[row]?.facts, ...trailer.facts, ...facts };
        const { level } = judge(pair);
        if (level !== levels[found[column] ?? -1]) wrong.push(`${row} ${column} ${level}`);
      });
    }
    expect(wrong).toEqual([]);
  }
}, 60_000);
