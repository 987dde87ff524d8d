import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Spoken } from '../state/round';
import { arranged, moved } from './arrange';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_129) };
const spoken: fc.Arbitrary<Spoken> = fc.record({
  message: fc.string({ minLength: 1, maxLength: 4 }),
  question: fc.constant('Does it fit?'),
  channel: fc.constantFrom('phone', 'mail', 'counter'),
  name: fc.constant(''),
  asks: fc.constant('Does it fit?'),
  answer: fc.constant('It does.'),
  topic: fc.constantFrom('tow-fit', 'tires', 'note'),
  isWarning: fc.boolean(),
  at: fc.constant(-1),
  saved: fc.constant({}),
});

test('no two warnings stand in a row as long as something can stand between; nothing is lost', () => {
  fc.assert(
    fc.property(fc.array(spoken, { maxLength: 14 }), (found) => {
      const items = found.map((each, at) => ({ ...each, message: `${each.message} ${at}` }));
      const order = arranged(items);
      expect(new Set(order)).toEqual(new Set(items));
      expect(order).toHaveLength(items.length);
      const warnings = items.filter(({ isWarning }) => isWarning).length;
      const rest = items.length - warnings;
      const inRow = order.filter((each, at) => each.isWarning && order[at - 1]?.isWarning).length;
      // The light one is kept for the end, so that one of the others does not stand between.
      const light = items.some((each) => each.topic === 'note' && !each.isWarning) ? 1 : 0;
      expect(inRow).toBe(Math.max(0, warnings - (rest - light) - 1));
      const last = order.at(-1);
      if (light > 0) expect(last?.topic).toBe('note');
    }),
    { ...seed, numRuns: 400 },
  );
});

test('a list keeps all its items when one moves', () => {
  expect(moved(['a', 'b', 'c'], 2, 0)).toEqual(['c', 'a', 'b']);
  expect(moved(['a', 'b'], 1, 2)).toEqual(['a', 'b']);
});

test('the questions of one message stay together, and in their order', () => {
  const [one] = fc.sample(spoken, { ...seed, numRuns: 1 });
  if (!one) throw new Error('There is nothing to put in order.');
  const of = (message: string, question: string, topic: string): Spoken => ({
    ...{ ...one, message, question, topic, channel: 'mail', isWarning: false },
  });
  const halves = [of('a', '1', 'tires'), of('b', '1', 'tow-fit'), of('a', '2', 'tires')];
  const order = arranged([...halves, of('c', '1', 'sway')]).map(
    ({ message, question }) => `${message}${question}`,
  );
  expect(order.indexOf('a2')).toBe(order.indexOf('a1') + 1);
  expect(order).toHaveLength(4);
});

test('what cannot wait comes first, though others would be pleasanter before it', () => {
  const [one] = fc.sample(spoken, { ...seed, numRuns: 1 });
  if (!one) throw new Error('There is nothing to put in order.');
  const plain = { ...one, topic: 'tires', isWarning: false };
  const urgent = { ...plain, message: 'gas', isUrgent: true };
  expect(arranged([plain, { ...plain, message: 'other' }, urgent])[0]).toBe(urgent);
  expect(arranged([plain, { ...urgent, isUrgent: false }])[0]).toBe(plain);
});
