import { expect, test } from 'vitest';
import { splitBunch } from './bunch';
import { urgentIn } from './urgent';

/** Words of danger, or of what is asked about, where a name or a heading might stand. */
const told: readonly (readonly [string, string])[] = [
  ['**Smoke:** out of the converter, what now', 'Smoke: out of the converter, what now'],
  [
    'Gas Smell\nall through the camper, what do we do',
    'Gas Smell\nall through the camper, what do we do',
  ],
  ['Gas Smell, 9:14 AM\nwhat do we do', 'Gas Smell, 9:14 AM\nwhat do we do'],
  [
    '9:14 AM smell of gas at the stove: what do we do',
    '9:14 AM smell of gas at the stove: what do we do',
  ],
  ['Phone (gas smell): what do we do', 'gas smell: what do we do'],
  ['Gas smell in the camper:\nwhat do we do', 'Gas smell in the camper:\nwhat do we do'],
  ['# Gas smell\nall through the camper', '# Gas smell\nall through the camper'],
  ['**Carbon Monoxide:** the thing keeps going', 'Carbon Monoxide: the thing keeps going'],
  ['Propan Leak\nin the front, what do we do', 'Propan Leak\nin the front, what do we do'],
  ['Fried Wires\nbehind the panel', 'Fried Wires\nbehind the panel'],
  ['Sparks Everywhere\nbehind the panel', 'Sparks Everywhere\nbehind the panel'],
];

test.each(told)('the word that tells of danger stays: %j', (pasted, text) => {
  const found = splitBunch(pasted);
  expect(found.map((each) => each.text)).toEqual([text]);
  expect(urgentIn(text)).not.toBeNull();
});

test.each([
  ['**Tires:** what pressure cold?', 'Tires: what pressure cold?'],
  ['**Brakes:** how often are they looked at?', 'Brakes: how often are they looked at?'],
  ['Payload Question\nwhich sticker is it', 'Payload Question\nwhich sticker is it'],
])('a thing is no name: %j', (pasted, text) => {
  expect(splitBunch(pasted)).toEqual([{ channel: '', asker: '', askedOn: '', text }]);
});

test('names that are words too stay names, and a place stays a heading', () => {
  const names = ['Rose Hill', 'Mark Woods', 'Dawn', 'Carl Brown', 'Dale Burns', 'Wren Waters'];
  for (const asker of names) {
    const [found] = splitBunch(`${asker}\nWhat ball height do we need?`);
    expect(found).toMatchObject({ asker, text: 'What ball height do we need?' });
  }
  const [found] = splitBunch('Comments under the brake film:\nWhat ball height do we need?');
  expect(found).toMatchObject({ channel: 'Comments under the brake film' });
});
