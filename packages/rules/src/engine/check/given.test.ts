import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';
import { isCell, isRows } from './given';

// zod, a schema library, says what is of these shapes; see https://zod.dev/api.
const end = z.nullable(z.number());
const cell = z.union([
  z.string(),
  z.number(),
  z.object({
    value: z.number(),
    unit: z.string(),
    lo: z.optional(z.never()),
    hi: z.optional(z.never()),
  }),
  z.object({ lo: end, hi: end, unit: z.string(), value: z.optional(z.never()) }),
]);
const rows = z.array(z.record(z.string(), cell));

const anyEnd = fc.oneof(fc.double(), fc.string(), fc.constant(null));
const anyCell = fc.oneof(
  fc.string(),
  fc.anything(),
  fc.record(
    { value: anyEnd, lo: anyEnd, hi: anyEnd, unit: fc.oneof(fc.string(), fc.integer()) },
    { requiredKeys: [] },
  ),
);

test('only text, a number, a number with a unit, or two ends with one, is a cell', () => {
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
