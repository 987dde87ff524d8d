import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { reader } from './read';

const read = reader({ topics });
const partOf = (text: string) =>
  read({ id: '1', channel: 'forum', askedOn: '2026-12-01', asker: '', text }).parts[0];

/** How somebody sums up what the vehicle carries: who rides along, what is packed, the label and the tongue. */
const sums: readonly {
  readonly text: string;
  readonly people?: readonly string[];
  readonly loads?: readonly string[];
  readonly payload: number;
  readonly tongue: number;
}[] = [
  {
    text: 'Myself and wife 390, dog 60, stuff 150, sticker 1480, tongue 620. Am I over?',
    people: ['2 adult 195 lb', '1 dog 60 lb'],
    loads: ['load.cargo Stuff 150 lb'],
    ...{ payload: 1480, tongue: 620 },
  },
  {
    text: 'Wife and I 390, dog 60, gear 150, door sticker 1480, tongue 620, are we over?',
    people: ['2 adult 195 lb', '1 dog 60 lb'],
    loads: ['load.cargo Gear 150 lb'],
    ...{ payload: 1480, tongue: 620 },
  },
  {
    text: 'us two 390 lb, kids 120, payload 1480, tongue 620 lb. will this be too much',
    people: ['2 adult 195 lb'],
    loads: ['load.occupants Kids 120 lb'],
    ...{ payload: 1480, tongue: 620 },
  },
  {
    text: 'Me + wife 350, two kids 120, payload sticker 1500, tongue 600. Am I over',
    people: ['2 adult 175 lb', '2 child 60 lb'],
    ...{ payload: 1500, tongue: 600 },
  },
  {
    text: 'my husband and I weigh 380, payload is 1390, trailer tongue is 540. are we over payload?',
    people: ['2 adult 190 lb'],
    ...{ payload: 1390, tongue: 540 },
  },
  {
    text: 'Sticker 1350, tongue 510, I am 210, wife 150, two kids at 60 lb each, cooler 40. over?',
    people: ['2 child 60 lb'],
    loads: [
      'load.occupants Driver 210 lb',
      'load.occupants Wife 150 lb',
      'load.cargo Cooler 40 lb',
    ],
    ...{ payload: 1350, tongue: 510 },
  },
  {
    text: 'me, the wife + 2 kids + dog 610, 150 lb of gear, sticker 1480, tongue 720, too much?',
    loads: ['load.occupants Everybody together 610 lb', 'load.cargo Gear 150 lb'],
    ...{ payload: 1480, tongue: 720 },
  },
];

test.each(sums)('$text', ({ text, people = [], loads = [], payload, tongue }) => {
  const part = partOf(text);
  expect([part?.topic, part?.asking]).toEqual(['tow-fit', 'load']);
  expect(part?.facts).toEqual({ 'vehicle.placardPayload': `${payload} lb` });
  expect(part?.open?.map(({ value }) => value)).toEqual([`${tongue} lb`]);
  expect(
    (part?.people ?? []).map(({ who, count, weight = '' }) => `${count} ${who} ${weight}`),
  ).toEqual(people);
  expect(
    (part?.loads ?? []).map(({ list, label, weight }) => `${list} ${label} ${weight}`),
  ).toEqual(loads);
  for (const { words } of part?.loads ?? []) expect(text).toContain(words);
});

/** What is said of somebody and is no weight of the people named right before it. */
test.each([
  ['two kids and wife and I 610, payload 1480, tongue 620', '195 lb'],
  ['wife and I, 2 kids 8 and 12, payload 1480, tongue 620', '8 lb'],
  ['wife and I 65 years old, payload 1480, tongue 620', '32.5 lb'],
  ['me and the wife 600 miles from home, payload 1480, tongue 620', '300 lb'],
  ['my wife and I 2019 half ton, payload 1480, tongue 620', '1009.5 lb'],
])('nobody weighs so: %s', (text) => {
  const part = partOf(text);
  expect(part?.people?.some(({ weight }) => weight !== undefined)).toBe(false);
  expect(part?.loads ?? []).toEqual([]);
});

test('a trailer’s sticker in a sum is not the door label', () => {
  const part = partOf('Wife and I 390, trailer sticker 1480, tongue 620, are we over?');
  expect(part?.facts).not.toHaveProperty(['vehicle.placardPayload']);
});

test('what is packed in the trailer does not ride in the vehicle', () => {
  const part = partOf('Wife and I 390, payload 1480, tongue 620, stuff 150 in the trailer, over?');
  expect(part?.loads?.map(({ list }) => list) ?? []).not.toContain('load.cargo');
});
