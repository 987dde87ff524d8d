import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { isCell, isRows } from './given';

// zod, a schema library, says what is of these shapes; see https://zod.dev/api.
const cell = z.union([z.string(), z.object({ lo: z.number(), hi: z.number(), unit: z.string() })]);
const rows = z.array(z.record(z.string(), cell));

const end = fc.oneof(fc.double(), fc.string(), fc.constant(undefined));
const anyCell = fc.oneof(
  fc.string(),
  fc.anything(),
  fc.record({ lo: end, hi: end, unit: fc.oneof(fc.string(), fc.integer()) }, { requiredKeys: [] }),
);

test('only text, or two numbers with a unit, is a cell', () => {
  fc.assert(
    fc.property(anyCell, (given) => {
      expect(isCell(given)).toBe(cell.safeParse(given).success);
    }),
    { numRuns: 2000 },
  );
});

test('only a list of plain objects of cells is rows', () => {
  const row = fc.oneof(fc.dictionary(fc.string(), anyCell), fc.anything());
  fc.assert(
    fc.property(fc.oneof(fc.array(row), fc.anything()), (given) => {
      expect(isRows(given)).toBe(rows.safeParse(given).success);
    }),
    { numRuns: 2000 },
  );
});

test.each([new Map(), new Date(0), [], 7, null, () => ''])('%s is no row', (given) => {
  expect(isRows([given])).toBe(false);
});
