import { readFileSync } from 'node:fs';
import { towFit } from '@tarebook/rules';
import {
  answerNow,
  answerTraced,
  type FactsGiven,
  quickly,
  type Topic,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { readCatalogue } from './catalogue';
import { needsOf } from './needs';
import { which } from './which';
import { sleepsSaid, whichSaid } from './which-words';

const seed = (file: string): string =>
  readFileSync(new URL(`../../../seeds/${file}`, import.meta.url), 'utf8');

const invented = readCatalogue({
  'vehicles.csv': seed('vehicles.csv'),
  'trailers.csv': seed('trailers.csv'),
  'loads.csv': seed('loads.csv'),
});
const topic: Topic = towFit;
const asOf = '2026-11-01';

const four: FactsGiven = {
  'vehicle.maxTrailerWeight': '3,500 lb',
  'vehicle.maxTongueCarried': '350 lb',
  'vehicle.placardPayload': 'unknown',
  'load.occupants': [{ label: 'Four of us', weight: '485 lb' }],
};

test('the invented catalogue is read whole', () => {
  expect(invented.refused).toEqual([]);
  expect(invented.vehicles.length).toBeGreaterThan(24);
  expect(invented.trailers.length).toBeGreaterThan(24);
  expect(invented.loads.map(({ name }) => name)).toContain('two and a dog');
});

describe('a vehicle against the trailers', () => {
  const found = which(invented, { facts: four, asOf });

  test('comes out for each as one case would', () => {
    expect(found.against).toBe('trailers');
    for (const { entry, outcome, binding } of found.rows) {
      const alone = answerNow(topic, { facts: { ...entry.facts, ...four }, asOf });
      expect([outcome, binding]).toEqual([alone.outcome, alone.binding]);
    }
  });

  test('for what is stopped in any case nothing has to be looked up', () => {
    const stopped = found.rows.filter(({ outcome }) => outcome === topic.outcomes.stop.id);
    expect(stopped.length).toBeGreaterThan(3);
    expect(stopped.flatMap(({ needs }) => Object.keys(needs))).toEqual([]);
  });

  test('what an unknown must be is enough, and two less is not', () => {
    let tried = 0;
    for (const { entry, needs } of found.rows) {
      const least = needs['vehicle.placardPayload']?.atLeast;
      if (least === undefined) continue;
      tried += 1;
      const judged = (value: number) => {
        const facts = { ...entry.facts, ...four, 'vehicle.placardPayload': `${value} lb` };
        const { limits, values } = answerNow(topic, { facts, asOf });
        const heavy = values['payload.heavy']?.hi ?? 0;
        return { state: limits.find(({ id }) => id === 'payload')?.state, isOver: heavy > value };
      };
      expect(['ok', 'care']).toContain(judged(least).state);
      // The tongue is estimated: what would be as common keeps within, too.
      expect(judged(least).isOver).toBe(false);
      const less = judged(least - 2);
      expect(less.state === 'stop' || less.isOver).toBe(true);
    }
    expect(tried).toBeGreaterThan(3);
  });

  test('an estimated tongue that comes out heavy but common stays within what is to be looked up', () => {
    const rated = { 'vehicle.maxTrailerWeight': '3,500 lb' };
    const { rows } = which(invented, { facts: rated, asOf });
    const asked = rows.filter(({ needs }) => needs['vehicle.maxTongueCarried'] !== undefined);
    expect(asked.length).toBeGreaterThan(3);
    for (const { needs, answer } of asked) {
      const least = needs['vehicle.maxTongueCarried']?.atLeast ?? 0;
      expect(least).toBeGreaterThanOrEqual(answer.values['tongue.heavy']?.hi ?? Infinity);
    }
  });

  test('a tongue that was weighed is looked up as it was weighed', () => {
    const facts = {
      'trailer.dryWeight': '2,000 lb',
      'trailer.dryTongueWeight': '200 lb',
      'trailer.measuredTongueWeight': '210 lb',
      'trailer.gvwr': '2,900 lb',
      'vehicle.maxTrailerWeight': '3,500 lb',
      'vehicle.maxTongueCarried': 'unknown',
    };
    const least = (asked: FactsGiven) => {
      const at = { facts: asked, asOf };
      const needs = needsOf(topic, at, answerTraced(topic, at));
      return needs['vehicle.maxTongueCarried']?.atLeast;
    };
    expect(least(facts)).toBe(210);
    const { 'trailer.measuredTongueWeight': _, ...estimated } = facts;
    expect(least(estimated)).toBeGreaterThan(220);
  });

  test('of those that may go it is said in which four can sleep, and nothing where all can', () => {
    expect(sleepsSaid(topic, found, 4)).toMatch(/^\d of these \d+ sleeps? 4: .*Hurdle 9 Folding/);
    expect(sleepsSaid(topic, found, 4)).not.toContain('Rushlight');
    expect(sleepsSaid(topic, found, 2)).toBe('');
    expect(sleepsSaid(topic, found, 12)).toBe('None of them sleeps 12.');
    expect(sleepsSaid(topic, found, 0)).toBe('');
  });

  test('the sentence counts them, names at the most five, and tells what stops the next', () => {
    const { sentence, next } = whichSaid(topic, found);
    expect(sentence).toMatch(new RegExp(`^Of ${found.rows.length} trailers, `));
    expect(next).toMatch(/ lb too much\.$/);
  });
});

test('a trailer is set against the vehicles', () => {
  const facts = {
    'trailer.dryWeight': '3,900 lb',
    'trailer.gvwr': '5,000 lb',
    'trailer.dryTongueWeight': '430 lb',
  };
  const found = which(invented, { facts, asOf });
  expect(found.against).toBe('vehicles');
  expect(found.rows).toHaveLength(invented.vehicles.length);
});

test('every pair of the invented catalogue comes out the same from either side as judged by itself', () => {
  const load: FactsGiven = {
    'load.occupants': [{ label: 'Two of us', weight: '310 lb' }],
    'trailer.cargo': [{ label: 'A weekend', weight: '280 lb' }],
  };
  const judge = quickly(topic, { asOf });
  const wrong: string[] = [];
  let pairs = 0;
  const against = new Map(
    invented.trailers.map((trailer) => {
      const { rows } = which(invented, { facts: { ...trailer.facts, ...load }, asOf });
      return [trailer.name, new Map(rows.map((row) => [row.name, row]))] as const;
    }),
  );
  for (const vehicle of invented.vehicles) {
    const { rows, count } = which(invented, { facts: { ...vehicle.facts, ...load }, asOf });
    for (const row of rows) {
      pairs += 1;
      const alone = judge({ ...vehicle.facts, ...row.entry.facts, ...load });
      const other = against.get(row.name)?.get(vehicle.name);
      const same =
        row.outcome === alone.outcome &&
        row.outcome === other?.outcome &&
        row.binding === other.binding &&
        JSON.stringify(row.left) === JSON.stringify(other.left) &&
        JSON.stringify(row.needs) === JSON.stringify(other.needs);
      if (!same) wrong.push(`${vehicle.name}, ${row.name}: ${row.outcome}, ${alone.outcome}`);
    }
    const counted = Object.values(count).reduce((sum, each) => sum + each, 0);
    expect(counted, vehicle.name).toBe(invented.trailers.length);
  }
  expect(pairs).toBe(invented.vehicles.length * invented.trailers.length);
  expect(wrong).toEqual([]);
});

test('a rating alone is set against each trailer at its own maximum', () => {
  const found = which(invented, { facts: { 'vehicle.maxTrailerWeight': '3,500 lb' }, asOf });
  for (const { entry, answer } of found.rows) {
    const gross = Number(entry.cells.gvwr);
    expect(answer.limits.find(({ id }) => id === 'trailer-weight')?.state === 'stop').toBe(
      gross > 3500,
    );
  }
});

test('only what has the cells asked for', () => {
  const found = which(invented, {
    facts: four,
    asOf,
    where: [{ column: 'axles', is: '=', value: '1' }],
  });
  expect(found.rows.every(({ entry }) => entry.cells.axles === '1')).toBe(true);
  expect(found.rows.length).toBeGreaterThan(0);
});

test('what is sold is told as sold, comes last of what comes out alike, and is not the next one', () => {
  const catalogue = readCatalogue({
    'trailers.csv':
      'name,dryWeight,gvwr,sleeps,lot\nTeal 10,900,1800,4,sold\nTeal 14,1000,2000,4,here\nTeal 15,1200,2100,4,Sold\nTeal 30,3000,3900,4,sold\nTeal 31,3100,4000,4,here\n',
  });
  const found = which(catalogue, { facts: { 'vehicle.maxTrailerWeight': '3,500 lb' }, asOf });
  expect(found.rows.map(({ name }) => name)).toEqual([
    ...['Teal 14', 'Teal 10', 'Teal 15'],
    ...['Teal 31', 'Teal 30'],
  ]);
  const { sentence, next } = whichSaid(towFit, found);
  expect(sentence).toContain(
    'Of 5 trailers, 3 may fit, once more is known: Teal 14, Teal 10 (sold) and Teal 15 (sold).',
  );
  const looked = whichSaid(topic, which(catalogue, { facts: four, asOf })).sentence;
  expect(looked).toContain('For the Teal 14 it takes');
  expect(next).toContain('The Teal 31 is stopped by');
  expect(sleepsSaid(towFit, found, 5)).toBe('None of them sleeps 5.');
  const all = which(
    { ...catalogue, trailers: catalogue.trailers.filter(({ cells }) => cells.lot !== 'here') },
    { facts: { 'vehicle.maxTrailerWeight': '3,500 lb' }, asOf },
  );
  expect(whichSaid(towFit, all).next).toContain('The Teal 30 (sold) is stopped by');
});

describe('a catalogue as it comes out of a spreadsheet', () => {
  const read = (text: string) => readCatalogue({ 'trailers.csv': text });

  test('a mark at the beginning, quotes, units, blank rows and other columns are read', () => {
    const { trailers, refused } = read(
      '\ufeffname,dryWeight,gvwr,lot,note\r\n"Heron, the small one",1.2 t,"3,500 lb",here,"a ""good"" one"\r\n,,,,\r\nBittern,2100,2900,sold,\r\n',
    );
    expect(refused).toEqual([]);
    expect(trailers.map(({ name }) => name)).toEqual(['Heron, the small one', 'Bittern']);
    expect(trailers[1]?.facts).toEqual({
      'trailer.dryWeight': '2100 lb',
      'trailer.gvwr': '2900 lb',
    });
  });

  test('letters of any kind, tabs, a last line without an end, and heads as people write them', () => {
    const { trailers, refused } = read(
      'Floor plan\tDry Weight (kg)\tTrailer GVWR (lb)\tHitch Weight\tOverall length\tAsking price\nBécasse – 22′ “L”\t1 000\t3,500\t210 lbs\t22 ft\t$18,900',
    );
    expect(refused).toEqual([]);
    expect(trailers[0]?.facts).toEqual({
      'trailer.dryWeight': '1 000 kg',
      'trailer.gvwr': '3,500 lb',
      'trailer.dryTongueWeight': '210 lbs',
    });
    expect(trailers[0]?.cells).toMatchObject({ length: '22 ft', price: '$18,900' });
  });

  test('what would harm is refused or kept as plain text, and never runs', () => {
    const hostile =
      'name,dryWeight,__proto__,constructor,note\n"=HYPERLINK(""https://example.org"")",2100,,,\n@SUM(A1),2100,,,\n<script>alert(1)</script>,2100,polluted,x,"a\nb"\nHeron\u202e,2100,,,-2+3\n+cmd|calc,2100,,,\n';
    const { trailers, refused } = read(hostile);
    expect(refused.map(({ line }) => line)).toEqual([2, 3, 7]);
    expect(trailers.map(({ name }) => name)).toEqual(['<script>alert(1)</script>', 'Heron\u202e']);
    expect(Object.keys({})).toEqual([]);
    expect('polluted' in {}).toBe(false);
  });

  test.each([
    ['a quote that is never closed', 'name,dryWeight\n"Heron,2100\n'],
    ['NUL bytes', 'name,dryWeight\nHe\0ron,2100\n'],
    ['too many rows', `name,dryWeight\n${'Heron,2100\n'.repeat(10_001)}`],
    ['too many columns', `name,${'a,'.repeat(300)}\nHeron\n`],
    ['over 5 MB', `name,dryWeight\n${'x'.repeat(5_000_001)},1\n`],
  ])('%s is refused as a whole, with one sentence', (_, text) => {
    const { trailers, refused } = read(text);
    expect(trailers).toEqual([]);
    expect(refused).toHaveLength(1);
    expect(refused[0]?.says).toMatch(/\.$/);
  });

  test.each([
    ['name,dryWeight\nHeron,heavy\n', 2, /heavy/],
    ['name,dryWeight\n,2100\n', 2, /no name/],
    ['name,dryWeight\nHeron,2100\nHeron,2200\n', 3, /already/],
    ['name,dryWeight\nHeron,2100,7\n', 2, /3 cells under 2 columns/],
    ['name,dryWeight\nHeron,-5\n', 2, /−5 lb/],
  ])('a row that cannot be read is told with its line: %j', (text, line, says) => {
    const { trailers, refused } = read(text);
    expect(refused).toHaveLength(1);
    expect(refused[0]?.line).toBe(line);
    expect(refused[0]?.says).toMatch(says);
    expect(trailers.length).toBeLessThan(2);
  });
});
