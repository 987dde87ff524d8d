import { readFileSync } from 'node:fs';
import { towFit } from '@tarebook/rules';
import { readFacts } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';

type Row = Readonly<Record<string, string>>;

function read(file: string): { readonly comment: string; readonly rows: readonly Row[] } {
  const text = readFileSync(new URL(`../../seeds/${file}`, import.meta.url), 'utf8');
  const [comment = '', head = '', ...lines] = text.trimEnd().split('\n');
  const names = head.split(',');
  const rows = lines.map((line) => {
    const cells = line.split(',');
    expect(cells, line).toHaveLength(names.length);
    return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? '']));
  });
  return { comment, rows };
}

/** Columns to choose by, and what other questions ask. */
const besideFacts = new Set(
  'name body group length sleeps price lot couplerHeight freshTank freshAhead grayTank grayAhead blackTank blackAhead'.split(
    ' ',
  ),
);

/** The facts of a row as a case would give them: canonical units, empty cells left out. */
function factsOf(row: Row, prefix: 'vehicle' | 'trailer'): Record<string, string> {
  const facts: Record<string, string> = {};
  for (const [name, value] of Object.entries(row)) {
    if (besideFacts.has(name) || value === '') continue;
    const id = `${prefix}.${name}`;
    const fact = Object.entries(towFit.facts).find(([known]) => known === id)?.[1];
    facts[id] = fact?.kind === 'quantity' && fact.unit !== '' ? `${value} ${fact.unit}` : value;
  }
  return facts;
}

const vehicles = read('vehicles.csv');
const trailers = read('trailers.csv');
const n = (row: Row, name: string): number => {
  const value = Number(row[name]);
  if (row[name] === '' || !Number.isFinite(value)) throw new Error(`${row.name}: ${name}`);
  return value;
};

test('both lists say first that they are invented, and hold at least two dozen, each once', () => {
  for (const { comment, rows } of [vehicles, trailers]) {
    expect(comment).toMatch(/^# Invented demo data/);
    expect(rows.length).toBeGreaterThanOrEqual(24);
    expect(new Set(rows.map(({ name }) => name)).size).toBe(rows.length);
  }
});

describe.each(vehicles.rows)('$name', (row) => {
  test('is read without a problem', () => {
    expect(readFacts(towFit, factsOf(row, 'vehicle')).problems).toEqual([]);
  });

  test('has ratings that agree with one another', () => {
    const curb = n(row, 'curbFront') + n(row, 'curbRear');
    expect(n(row, 'curbWeight')).toBe(curb);
    expect(n(row, 'gvwr')).toBe(curb + n(row, 'placardPayload'));
    expect(n(row, 'gawrFront') + n(row, 'gawrRear')).toBeGreaterThanOrEqual(n(row, 'gvwr'));
    expect(n(row, 'tireCapacityFront') * 2).toBeGreaterThanOrEqual(n(row, 'gawrFront'));
    const onRear = row.dualRearWheels === 'yes' ? 4 : 2;
    expect(n(row, 'tireCapacityRear') * onRear).toBeGreaterThanOrEqual(n(row, 'gawrRear'));
    expect(n(row, 'gcwr')).toBeGreaterThanOrEqual(curb + n(row, 'maxTrailerWeight'));
    if (row.distributionAllowed === 'no') expect(row.maxTongueDistributed).toBe('');
  });
});

describe.each(trailers.rows)('$name', (row) => {
  test('is read without a problem', () => {
    expect(readFacts(towFit, factsOf(row, 'trailer')).problems).toEqual([]);
  });

  test('has ratings that agree with one another', () => {
    expect(n(row, 'gvwr')).toBeGreaterThan(n(row, 'dryWeight') + n(row, 'propane'));
    expect(n(row, 'couplerRating')).toBeGreaterThanOrEqual(n(row, 'gvwr'));
    const axles = n(row, 'axles') * n(row, 'gawr');
    expect(axles).toBeGreaterThanOrEqual(n(row, 'gvwr') - n(row, 'dryTongueWeight'));
    expect(n(row, 'tireCapacity') * 2).toBeGreaterThanOrEqual(n(row, 'gawr'));
  });

  test('says what one chooses by', () => {
    expect(n(row, 'length')).toBeGreaterThan(8);
    expect(n(row, 'sleeps')).toBeGreaterThanOrEqual(2);
    expect(n(row, 'price')).toBeGreaterThan(5_000);
    expect(n(row, 'couplerHeight')).toBeGreaterThan(12);
    expect(['here', 'ordered', 'sold']).toContain(row.lot);
  });
});
