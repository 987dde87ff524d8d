import { topics } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { factsIn } from './facts';
import { lineReader } from './line';
import { ridersIn } from './people';

const tow = topics.towFit ?? Object.values(topics).find(({ id }) => id === 'tow-fit');
const read = (text: string) => factsIn(tow as Topic, text);

/** What somebody says and takes back, and the facts that hold with the words they came from. */
const told: readonly (readonly [string, Readonly<Record<string, readonly [string, string]>>])[] = [
  [
    'Tow rating 3,500, no sorry, 5,000.',
    { 'vehicle.maxTrailerWeight': ['5000 lb', '3,500, no sorry, 5,000'] },
  ],
  [
    'My tow rating is 3500 lbs, scratch that, 5000 lbs, and the trailer is 3,900 dry',
    {
      'vehicle.maxTrailerWeight': ['5000 lb', '3500 lbs, scratch that, 5000 lbs'],
      'trailer.dryWeight': ['3900 lb', '3,900'],
    },
  ],
  [
    'dry weight thirty-five hundred no wait I wrote it wrong thirty-nine hundred, payload 1,100 lb',
    {
      'trailer.dryWeight': ['3900 lb', 'thirty-five hundred no wait'],
      'vehicle.placardPayload': ['1100 lb', '1,100'],
    },
  ],
  [
    'gvwr of the trailer 6,500 lb. Sorry, I looked again, the gvwr is 6,800 lb.',
    { 'trailer.gvwr': ['6800 lb', '6,500'] },
  ],
  ['Payload 1,260 lb, not 1,620.', { 'vehicle.placardPayload': ['1260 lb', '1,260'] }],
  [
    'The door says payload not 1,620 but 1,260 lb',
    { 'vehicle.placardPayload': ['1260 lb', '1,620 but 1,260'] },
  ],
  [
    'tow rating 31 hundred, no, 41 hundred',
    { 'vehicle.maxTrailerWeight': ['4100 lb', '31 hundred'] },
  ],
];

test.each(told)('%s', (text, facts) => {
  const found = read(text);
  for (const [fact, [value, words]] of Object.entries(facts)) {
    expect(found.facts[fact], fact).toBe(value);
    expect(found.words[fact], fact).toContain(words);
    expect(text).toContain(found.words[fact]);
  }
});

test('what was taken back and not said anew is not told', () => {
  expect(read('Tow rating 3,500, scratch that, I will look it up.').facts).toEqual({});
});

test('two figures of two things are two facts, whatever is said between', () => {
  const { facts } = read(
    'Tow rating 5,000 lb, sorry for the long mail, the trailer is 3,900 lb dry',
  );
  expect(facts['vehicle.maxTrailerWeight']).toBe('5000 lb');
  expect(facts['trailer.dryWeight']).toBe('3900 lb');
  const other = read('Tow rating 5,000 lb, no brakes, dry weight 2,900 lb').facts;
  expect(other['vehicle.maxTrailerWeight']).toBe('5000 lb');
  expect(other['trailer.dryWeight']).toBe('2900 lb');
});

test('of who rides along the last count holds', () => {
  const count = (text: string) => ridersIn(text).map(({ who, count: n }) => `${n} ${who}`);
  expect(count('four of us, no wait, five')).toEqual(['5 adult']);
  expect(count('2 kids, sorry, 3 kids and a dog')).toEqual(['3 child', '1 dog']);
});

test('one line shows both, and takes the last', () => {
  const text = 'crossover rated 3,500, no sorry, 5,000, trailer 3,900 lb dry';
  const { marks } = lineReader(topics)(text, 'tow-fit');
  const mark = marks.find(
    (each) => each.kind === 'fact' && each.fact === 'vehicle.maxTrailerWeight',
  );
  expect(mark).toMatchObject({ value: '5000 lb' });
  expect(text.slice(mark?.from, mark?.to)).toContain('3,500, no sorry, 5,000');
});

test('of weights in kilograms one without a unit is in kilograms too, and beside pounds it is in pounds', () => {
  const { facts } = read(
    'Car is good for 1,800 kg with brakes, the trailer is 1,350 kg empty, gross 1,600',
  );
  expect(facts['trailer.gvwr']).toBe('1600 kg');
  const both = read('Tow rating 1,800 kg or 3,968 lb, the trailer gross 3,600').facts;
  expect(both['trailer.gvwr']).toBe('3600 lb');
});

test('a figure that is read aloud figure by figure is one', () => {
  const { facts } = read('the trailer’s own gross rating is nine nine fifty so am I all right');
  expect(facts['trailer.gvwr']).toBe('9950 lb');
  expect(read('my number is five five five oh one eight three').facts).toEqual({});
});

test('of two codes of tires neither is told, and one in another sentence than the spare is the tires’', () => {
  const tires = Object.values(topics).find(({ id }) => id === 'tires');
  const two = 'a new tire is on; its code ends in 1126. The other three end in 2219.';
  expect(factsIn(tires as Topic, two).facts).not.toHaveProperty(['tire.codeWeek']);
  const one = 'trailer tires are dated 4016, do they need to go. And we have got a spare';
  expect(factsIn(tires as Topic, one).facts).toMatchObject({ 'tire.codeWeek': '40' });
});
