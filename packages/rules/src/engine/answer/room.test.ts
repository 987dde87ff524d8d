import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';
import { answerNow } from './answer';
import { againstOf } from './room';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';

function boxesOn(facts: Readonly<Record<string, string>>) {
  const { limits } = answerNow(shelf, { facts: { 'shelf.kind': 'oak', ...facts }, asOf });
  const [boxes] = limits;
  if (!boxes) throw new Error('The shelf has lost its limit.');
  return boxes;
}

describe('what stands against a limit is said in words that tell something', () => {
  test('in either system of units', () => {
    const boxes = boxesOn({ 'box.weight': '40 lb', 'shelf.rating': '100 lb' });
    expect(againstOf(boxes).says).toBe('40 lb of 100 lb');
    expect(againstOf(boxes, 'metric').says).toBe('18.1 kg of 45.4 kg');
  });

  test('in whole pounds, but never so that a little too much looks like none', () => {
    const far = boxesOn({ 'box.weight': '140.4 lb', 'shelf.rating': '200 lb' });
    expect(againstOf(far).says).toBe('140 lb of 200 lb');
    const near = boxesOn({ 'box.weight': '200.4 lb', 'shelf.rating': '200 lb' });
    expect(againstOf(near).says).toBe('200.4 lb of 200 lb');
  });

  test('whatever a tenth of a pound parts is shown apart', () => {
    const tenths = fc.integer({ min: 0, max: 9999 }).map((tenth) => tenth / 10);
    const near = fc.integer({ min: -200, max: 200 }).map((tenth) => tenth / 10);
    const property = fc.property(tenths, near, (rating, off) => {
      fc.pre(off !== 0 && rating + off >= 0 && rating + off <= 1000);
      const weight = `${(rating + off).toFixed(1)} lb`;
      const boxes = boxesOn({ 'box.weight': weight, 'shelf.rating': `${rating} lb` });
      const { used, of } = againstOf(boxes);
      expect(used).not.toBe(of);
    });
    fc.assert(property, { numRuns: 200, seed });
  });

  test('a rating that nobody knows is unknown, not none or more', () => {
    const boxes = boxesOn({ 'box.weight': '40 lb', 'shelf.rating': 'unknown' });
    expect(againstOf(boxes).says).toBe('40 lb of a limit nobody has read');
  });

  test('nothing is asked of it: no figure, and none of its room is used', () => {
    const boxes = boxesOn({ 'box.weight': '0 lb', 'shelf.rating': 'unknown' });
    expect(againstOf(boxes)).toEqual({ used: 'none asked', of: '', says: 'none asked' });
    expect(boxes.roomUsed).toEqual({ lo: 0, hi: 0 });
  });

  test('nothing of nothing is full all the same', () => {
    expect(boxesOn({ 'box.weight': '0 lb', 'shelf.rating': '0 lb' }).roomUsed.hi).toBe(Infinity);
  });
});

describe('what is out of an order is not weighed against its like', () => {
  const of = { here: { by: 'here', says: 'here' }, there: { by: 'there', says: 'there' } };
  const ranked = (first: 'least' | 'most', here: string, there: string) => {
    const topic: Topic = defineTopic<Topic>({
      ...shelf,
      formulas: { ...shelf.formulas, here: formula(here), there: formula(there) },
      rankings: { order: { label: 'Order', first, of, source } },
    });
    const facts = { 'box.weight': '40 lb', 'shelf.kind': 'oak', 'shelf.rating': '100 lb' };
    return answerNow(topic, { facts, asOf }).rankings[0]?.entries.map(({ apart }) => apart);
  };

  test('two that come to nothing', () => {
    expect(ranked('most', 'box.weight - box.weight', 'box.lid')).toEqual([true, true]);
  });

  test('two that come to the same are not told apart', () => {
    expect(ranked('most', 'box.weight', 'load.total')).toEqual([false, true]);
    expect(ranked('least', 'box.lid', 'box.weight - box.weight')).toEqual([false, true]);
  });
});
