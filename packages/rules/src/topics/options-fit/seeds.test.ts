import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { seedRows } from '../../../../../tests/run/catalogue.mjs';
import { optionsFit } from './index';

const seeds = new URL('../../../../../seeds/', import.meta.url);
const number = z.coerce.number().check(z.gte(0));
const place = z.coerce.number().check(z.gte(-30), z.lte(30));
const text = z.string().check(z.minLength(1));
const id = z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/));
const spot = z.enum(['nose', 'front', 'axle', 'rear', 'tail']);
const year = z.string().check(z.regex(/^20\d\d$/));

/** What a row of each file is; a column that is not named here is refused. */
const shapes = {
  'floor-plans': {
    id,
    name: text,
    line: id,
    first: year,
    last: year,
    nose: place,
    front: place,
    axle: place,
    rear: place,
    tail: place,
  },
  options: { id, name: text, weight: number, place: spot },
  offers: {
    line: id,
    option: id,
    as: z.enum(['standard', 'optional']),
    from: year,
    to: z.union([year, z.literal('')]),
    because: z.string(),
  },
  'option-rules': {
    kind: z.enum(['requires', 'excludes', 'one-of']),
    option: z.string(),
    others: text,
  },
  batteries: {
    name: text,
    chemistry: z.enum(['flooded', 'agm', 'gel', 'lithium']),
    volts: z.enum(['6', '12']),
    ampereHours: number,
    weight: number,
  },
  'solar-panels': { name: text, watts: number, weight: number, length: number, width: number },
  chargers: {
    name: text,
    kind: z.enum(['converter', 'dc-dc', 'solar']),
    volts: z.enum(['12']),
    amperes: number,
    weight: number,
  },
  appliances: {
    name: text,
    kind: text,
    supply: z.enum(['12V', '120V', 'gas']),
    watts: number,
    hoursPerDay: z.coerce.number().check(z.gte(0), z.lte(24)),
    gas: number,
  },
  cylinders: {
    name: text,
    fill: number,
    tare: number,
    kind: z.enum(['upright', 'horizontal', 'composite']),
  },
  tires: {
    name: text,
    kind: z.enum(['trailer', 'passenger', 'light truck']),
    loadIndex: number,
    load: number,
    speed: z.string().check(z.regex(/^[A-Z]$/)),
    pressure: number,
  },
  'add-ons': {
    name: text,
    weight: number,
    touches: z.enum(['plumbing', '12V', '120V', 'gas', 'structure', 'roof seal']),
    place: spot,
    watts: number,
  },
} as const;

test('every file of the catalogue says first that it is invented', () => {
  const files = readdirSync(seeds).filter((name) => name.endsWith('.csv'));
  expect(files.length).toBeGreaterThanOrEqual(13);
  for (const file of files) {
    expect(readFileSync(new URL(file, seeds), 'utf8'), file).toMatch(/^# Invented demo data: /);
  }
});

describe.each(Object.entries(shapes))('%s.csv', (file, columns) => {
  const rows = seedRows(file);

  test('has rows of the shape that is promised, each named once', () => {
    const shape = z.strictObject(columns);
    for (const row of rows) {
      const { success, error } = shape.safeParse(row);
      expect(success, `${JSON.stringify(row)}: ${error?.message}`).toBe(true);
    }
    const names = rows.flatMap(({ name }) => name ?? []);
    expect(new Set(names).size).toBe(names.length);
  });
});

test('there are two dozen floor plans over several years, and thirty options or more', () => {
  expect(seedRows('floor-plans').length).toBeGreaterThanOrEqual(24);
  expect(seedRows('options').length).toBeGreaterThanOrEqual(30);
  const offers = seedRows('offers');
  const years = new Set(offers.map(({ from }) => from));
  expect(years.size).toBeGreaterThanOrEqual(4);
  expect(offers.some(({ to }) => to !== '')).toBe(true);
  const kinds = new Set(seedRows('option-rules').map(({ kind }) => kind));
  expect([...kinds].toSorted()).toEqual(['excludes', 'one-of', 'requires']);
});

test('every option is offered somewhere', () => {
  const offered = new Set(seedRows('offers').map(({ option }) => option));
  expect(seedRows('options').filter((option) => !offered.has(option.id))).toEqual([]);
});

test('the places of a floor plan lie in their order, between ball and tail', () => {
  const trailers = new Map(seedRows('trailers').map((row) => [row.name, row]));
  for (const { name = '', ...plan } of seedRows('floor-plans')) {
    const at = [plan.nose, plan.front, plan.axle, plan.rear, plan.tail].map(Number);
    expect(at, name).toEqual(at.toSorted((a, b) => b - a));
    expect(at[0], name).toBeLessThanOrEqual(Number(trailers.get(name)?.ballToAxle));
  }
});

test('vehicles are of every body and drive kind', () => {
  const vehicles = seedRows('vehicles');
  const bodies = new Set(vehicles.map(({ body }) => body));
  for (const body of ['hatchback', 'sedan', 'wagon', 'crossover', 'suv', 'minivan', 'van']) {
    expect(bodies).toContain(body);
  }
  expect([...bodies].filter((body) => body?.includes('pickup')).length).toBe(2);
  const engines = new Set(vehicles.map(({ engine }) => engine));
  expect([...engines].toSorted()).toEqual(['electric', 'naturally-aspirated', 'turbocharged']);
  expect(vehicles.some(({ name }) => name?.includes('Hybrid'))).toBe(true);
  expect(vehicles.some(({ name }) => name?.includes('Diesel'))).toBe(true);
});

test('options-fit carries every floor plan, option and offer of the seeds', () => {
  const { yard } = optionsFit.catalogues;
  const ids = (file: string) => seedRows(file).flatMap(({ id = '' }) => id);
  expect(Object.keys(yard.models)).toEqual(ids('floor-plans'));
  expect(Object.keys(yard.options)).toEqual(ids('options'));
  const offered = Object.entries(yard.offers).flatMap(([line, all]) =>
    all.map(({ option, from }) => `${line} ${option} ${from}`),
  );
  const rows = seedRows('offers').map(({ line, option, from }) => `${line} ${option} ${from}`);
  expect(offered.toSorted()).toEqual(rows.toSorted());
  for (const { name = '', dryWeight } of seedRows('trailers')) {
    const model = Object.values(yard.models).find(({ label }) => label === name);
    expect(model?.figures.dryWeight, name).toBe(Number(dryWeight));
  }
});
