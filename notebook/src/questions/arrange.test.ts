import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Spoken } from '../state/round';
import { arranged, asSpoken, moved } from './arrange';

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

test('a question is read out in at most 25 words, and a list keeps all its items when one moves', () => {
  const told = `${'We have had the trailer for years and it always worked. '.repeat(4)}Does it fit?`;
  // With what leads up to it, as far as 25 words.
  expect(asSpoken(told)).toMatch(/^We have had .*always worked\. Does it fit\?$/);
  expect(asSpoken(told).split(' ')).toHaveLength(25);
  expect(asSpoken('word '.repeat(60)).split(' ')).toHaveLength(26);
  expect(moved(['a', 'b', 'c'], 2, 0)).toEqual(['c', 'a', 'b']);
  expect(moved(['a', 'b'], 1, 2)).toEqual(['a', 'b']);
});

test('a question is never a scrap, and what leads up to it goes with it', () => {
  const over =
    'Quick one for the folks there. Yellow door sticker on my truck says 1,480 lbs payload. Me and the wife are 390 together. Tongue weight is listed 620 lb on the new one. Am I over?';
  expect(asSpoken(over)).toBe(
    'Me and the wife are 390 together. Tongue weight is listed 620 lb on the new one. Am I over?',
  );
  const phone =
    'Tues 9:10 Mrs. Adele Quarrie called, and she said that it was windy. Backed into a post, dent about 8 in. on rear left corner. Wants to know if worth going through insurance, deductible is $500. Call back after 4.';
  expect(asSpoken(phone)).toBe(
    'Backed into a post, dent about 8 in. on rear left corner. Wants to know if worth going through insurance, deductible is $500.',
  );
});

test.each([
  [
    'Mon 4:35 - Ray Pruitt. Backed into a post, dent in rear corner abt 8 inches, no water yet. Should he go thru insurance, deductable is 500, and will we fix it',
    /^Backed into a post, dent .* Should he go thru insurance, .* will we fix it$/,
  ],
  [
    'Mon 5:02 - lady, no name. battery panel shows 12.1 volts this morning, was 12.7 last night. Ran furnace all night. Is the battery bad?',
    /^battery panel shows 12\.1 volts .* Is the battery bad\?$/,
  ],
  [
    'Hello, We plan to dry camp two nights in October with one 100 amp-hour lead acid battery. Furnace blower draws 7 amps and I guess it would run about half of the time overnight, 10 hours. Will the battery make it through the night?',
    /^Furnace blower draws 7 amps .* through the night\?$/,
  ],
  [
    'Hi, our trailer has the low pressure quick connect on the side and we bought a little table top grill that has its own regulator for the 1 lb bottles. Can I just get a hose and plug it in to the side port? My brother in law says take the regulator off.',
    /grill .* Can I just get a hose and plug it in to the side port\?$/,
  ],
  [
    'We are putting the camper up for winter this weekend, do we have to blow out the lines AND put in the pink antifreeze or is one enough. And what about the water heater, do i fill that too? its 6 gal.',
    /^We are putting .* or is one enough\. And what about the water heater/,
  ],
  [
    'tongue weight\nMy loaded trailer weighed 6150 lbs at the scale and the tongue 560. It sways when semis pass me. Is 560 enough?',
    /^My loaded trailer weighed 6150 lbs/,
  ],
  ['Mon 4:35 - My hub is hot. Can I go?', /^My hub is hot\. Can I go\?$/],
])('a question is spoken with its thing: %s', (told, spoken) => {
  expect(asSpoken(told)).toMatch(spoken);
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
