import { expect, test } from 'vitest';
import { splitBunch } from './bunch';

const nothing = { channel: '', askedOn: '' };

test('a chat has a message for each who speaks, and nobody’s name is in the question', () => {
  const chat = `# Chat
Mara: hi, we have a wagon rated 3,500 lb
Sallowbridge: Hello, what can we do for you?
Mara: can it pull a trailer of 2,900 lb dry?
it has brakes
Tom Ash: how often do I repack the bearings?

marsh_hen88: what tire pressure should I run?`;
  const here = { ...nothing, channel: 'Chat' };
  expect(splitBunch(chat)).toEqual([
    {
      ...here,
      asker: 'Mara',
      text: 'hi, we have a wagon rated 3,500 lb\ncan it pull a trailer of 2,900 lb dry?\nit has brakes',
    },
    { ...here, asker: 'Sallowbridge', text: 'Hello, what can we do for you?' },
    { ...here, asker: 'Tom Ash', text: 'how often do I repack the bearings?' },
    { ...here, asker: 'marsh_hen88', text: 'what tire pressure should I run?' },
  ]);
});

test('one line that somebody says has its speaker, too', () => {
  expect(splitBunch('Kenji: two e-bikes of 62 lb each, how much is left?')).toEqual([
    { ...nothing, asker: 'Kenji', text: 'two e-bikes of 62 lb each, how much is left?' },
  ]);
});

test.each([
  'Payload: 1,100 lb says the sticker, is that enough?',
  'GVWR: 5,000 lb and we are four',
  'Question: can I tow with a bumper hitch?',
  'Kids: two of them, eight and ten',
  'Smoke: it comes out of the converter',
  'Gas Smell: all through the camper, what do we do',
  'We have this\nOsier: 4,200 lb dry\nWagon: 5,000 lb rated\nDoes it go?',
  'Osier: 4,200 lb\nPayload: 1,100 lb\nDoes it go?',
  'Short version: it will not stop, what do we do',
])('what stands before a colon is no name, and stays: %j', (text) => {
  expect(splitBunch(text)).toEqual([{ ...nothing, asker: '', text }]);
});

test('two chats in one paste are two, though the same person speaks in both', () => {
  const found = splitBunch('Mara: what ball height do I need?\n\nMara: are you open on Sunday?');
  expect(found.map(({ text }) => text)).toEqual([
    'what ball height do I need?',
    'are you open on Sunday?',
  ]);
});
