import { expect, test } from 'vitest';
import { loadsIn } from './loads';

/** What somebody writes of what is packed, and the rows that stand in a case. */
const told: readonly (readonly [string, readonly string[]])[] = [
  ['Plus 300 lb of firewood in the bed.', ['load.cargo: Firewood, 300 lb']],
  [
    'We carry 120 kg of tools in the truck and a generator, 95 lb, in the trailer.',
    ['load.cargo: Tools, 120 kg', 'trailer.cargo: Generator, 95 lb'],
  ],
  ['dog 60, about 150 of stuff in the bed', ['load.cargo: Stuff, 150 lb']],
  ['Bikes on the roof, about 90 lb. Tongue is 500.', ['load.cargo: Bikes, 90 lb']],
  ['our truck carries 200 pounds of camping gear', ['load.cargo: Camping gear, 200 lb']],
  [
    'dry 4,300, and 250 pounds of food and clothes in the camper',
    ['trailer.cargo: Food and clothes, 250 lb'],
  ],
];

test.each(told)('%s', (text, rows) => {
  expect(loadsIn(text).map(({ list, label, weight }) => `${list}: ${label}, ${weight}`)).toEqual(
    rows,
  );
  for (const { from, to } of loadsIn(text)) expect(from).toBeLessThan(to);
});

/** Nothing of this is a row: only asked, a rating, each of several, no place, or no weight. */
const none = [
  'Can I put 300 lb of firewood in the bed?',
  'If I load 500 lb of tools in the truck, does it still fit?',
  'The truck bed holds 1,500 lb of gear.',
  'Two kayaks at 60 lb each on the roof',
  '300 lb of firewood',
  '12 of our chairs in the truck',
  'The trailer weighs 4,300 lb dry.',
  'We have tools in the truck.',
  'Payload is 1,260 lb on the truck door',
];

test.each(none)('%s', (text) => {
  expect(loadsIn(text)).toEqual([]);
});
