import fc from 'fast-check';
import { expect, test } from 'vitest';
import { showMargin, type UnitSystem } from '../../quantity';
import { shelf } from '../define/small-topic.fixture';
import { say } from '../words/say';
import { answerNow } from './answer';
import { againstOf, leftOf, overOf } from './room';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** A number as it is told, and how many decimals it has. */
function read(text: string): { readonly value: number; readonly places: number } {
  const [number = ''] = /[\d,]+(\.\d+)?/.exec(text) ?? [];
  const [, tenths = ''] = number.split('.');
  return { value: Number(number.replaceAll(',', '')), places: tenths.length };
}

/** Boxes of so much, in tenths of a pound, on a shelf that may carry so much. */
function ratingOf(used: number, rating: number) {
  const facts = {
    'shelf.kind': 'oak',
    'box.weight': `${used / 10} lb`,
    'shelf.rating': `${rating / 10} lb`,
  };
  const answer = answerNow(shelf, { facts, asOf: '2026-11-01' });
  const [limit] = answer.limits;
  if (!limit) throw new Error('The shelf has lost its limit.');
  return { answer, limit };
}

/** What is told of both sides and between them, and by how much that does not come out. */
function told(used: number, rating: number, system: UnitSystem) {
  const { limit } = ratingOf(used, rating);
  const against = againstOf(limit, system);
  const isOver = used > rating;
  const between = isOver ? overOf(limit) : leftOf(limit);
  const left = showMargin(between, between.unit, system);
  const sides = [read(against.used), read(against.of)] as const;
  const rest = read(left);
  const off = sides[1].value - sides[0].value - (isOver ? -rest.value : rest.value);
  return { says: `${against.says}, ${left}`, off: Math.abs(off), places: rest.places, sides };
}

test.each(['us', 'metric'] as const)(
  'what is used and what is left come to the limit as all three are told, and so does what is too much (%s)',
  (system) => {
    const tenths = fc.integer({ min: 50, max: 10_000 });
    // The halves are where two are rounded up that must not both be.
    const halves = fc.integer({ min: 5, max: 999 }).map((whole) => whole * 10 + 5);
    const either = fc.oneof(tenths, halves);
    const near = fc.integer({ min: -400, max: 400 });
    const pairs = fc.oneof(
      fc.tuple(either, either),
      fc.tuple(either, near).map(([a, b]) => [a, Math.min(10_000, Math.max(50, a + b))] as const),
    );
    const property = fc.property(pairs, ([used, rating]) => {
      fc.pre(used !== rating);
      const { says, off, places, sides } = told(used, rating, system);
      // Below a hundred a side keeps its tenth, which what is left of much does not have.
      const isFiner = sides.some((side) => side.places > places);
      expect(off, says).toBeLessThanOrEqual(isFiner ? 0.5 + 1e-9 : 1e-9);
    });
    fc.assert(property, { seed, numRuns: 2000 });
  },
);

test('401.5 used and 98.5 left of 500 are told as 402 and 98', () => {
  expect(told(4015, 5000, 'us').says).toBe('402 lb of 500 lb, 98 lb');
  expect(told(4005, 5000, 'us').says).toBe('401 lb of 500 lb, 99 lb');
  expect(told(6015, 5000, 'us').says).toBe('602 lb of 500 lb, 102 lb');
  expect(told(885, 5000, 'us').says).toBe('88.5 lb of 500 lb, 412 lb');
});

test('in the sentence as well', () => {
  const { answer } = ratingOf(9015, 5000);
  expect(say(answer.messages.sentence)).toContain(`402 lb`);
});
