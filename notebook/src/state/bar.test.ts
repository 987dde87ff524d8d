import type { LimitAnswer } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { barOf, drawnTo } from './bar';

const lb = (lo: number, hi = lo) => ({ lo, hi, unit: 'lb' });
const limitOf = (used: number, limit: number, most = used): LimitAnswer => ({
  id: 'a',
  label: 'A',
  used: lb(used, most),
  limit: lb(limit),
  headroom: lb(limit - most, limit - used),
  share: { lo: used / limit, hi: most / limit },
  roomUsed: { lo: used / limit, hi: most / limit },
  state: most > limit ? 'stop' : 'ok',
  careAt: lb(0.9 * limit),
  source: { class: 'invented', cite: 'A shelf of our own' },
});

test('a bar begins at zero: half the limit is half the way to the line, whatever is empty', () => {
  expect(barOf(limitOf(500, 1000), lb(300))).toEqual({
    empty: 0.3,
    used: { from: 0.5, to: 0.5 },
    careFrom: 0.9,
  });
});

test('what is over ends beyond the line, and no bar leaves its drawing', () => {
  expect(barOf(limitOf(1100, 1000), undefined).used).toEqual({ from: 1.1, to: 1.1 });
  expect(barOf(limitOf(4000, 1000), undefined).used).toEqual({ from: drawnTo, to: drawnTo });
});

test('a range keeps both its ends, and what nobody knows is no bar', () => {
  expect(barOf(limitOf(800, 1000, 1050), undefined).used).toEqual({ from: 0.8, to: 1.05 });
  const open = { ...limitOf(500, 1000), share: { lo: 0, hi: Infinity } };
  expect(barOf(open, lb(300)).used).toBeUndefined();
});

test('what is so much or more is drawn so far for sure, past the line where it is over, and may go on to the end', () => {
  const over = { ...limitOf(1100, 1000), share: { lo: 1.1, hi: Infinity } };
  expect(barOf(over, undefined).used).toEqual({ from: 1.1, to: drawnTo });
  const under = { ...limitOf(800, 1000), share: { lo: 0.8, hi: Infinity } };
  expect(barOf(under, lb(300))).toMatchObject({ empty: 0.3, used: { from: 0.8, to: drawnTo } });
});

test('the empty part never reaches past what is used', () => {
  expect(barOf(limitOf(500, 1000), lb(700)).empty).toBe(0.5);
});
