import { expect, test } from 'vitest';
import { planOf, vehiclesOf } from './shared-plan';

const plan = {
  facts: { 'load.occupants': [{ weight: '180 lb' }] },
  asOf: '2026-11-01',
  layer: null,
  trailers: [{ name: 'Heron 14', facts: { 'trailer.dryWeight': '1900 lb' } }],
  folder: '/elsewhere',
};
const read = (told: unknown) =>
  planOf(JSON.stringify(told), 'plan.json', '/shared/pairs.csv.parts');

test('a plan is taken as it was left, but for where parts are written', () => {
  expect(read(plan)).toEqual({ ...plan, folder: '/shared/pairs.csv.parts' });
  const spread = { draws: 100, seed: 1 };
  expect(read({ ...plan, spread })).toMatchObject({ spread });
});

test.each<readonly [string, unknown]>([
  ['a list', []],
  ['nothing', null],
  ['no day', { ...plan, asOf: 5 }],
  ['trailers without facts', { ...plan, trailers: [{ name: 'Heron 14' }] }],
  ['draws that are none', { ...plan, spread: { draws: 0, seed: 1 } }],
  ['a fact that is none', { ...plan, facts: { 'hitch.distribution': { of: 'yes' } } }],
])('%s is told in a sentence that names the file', (_, told) => {
  expect(() => read(told)).toThrow(/plan\.json: this is no plan of a sweep/);
});

test('what is no JSON and what are no vehicles are told', () => {
  expect(() => planOf('{', 'plan.json', '/shared')).toThrow(/plan\.json: this is no JSON/);
  expect(() => vehiclesOf('[{"name":1}]', '000001.in.json')).toThrow(/no vehicles of a sweep/);
  expect(vehiclesOf('[{"name":"Ousel","facts":{}}]', '000001.in.json')).toHaveLength(1);
});
