import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { reader } from './read';

const read = reader({ topics });
const partOf = (text: string) =>
  read({ id: '1', channel: 'forum', askedOn: '2026-12-01', asker: '', text }).parts[0];

const sums: readonly (readonly [string, readonly string[]])[] = [
  [
    'door sticker 1480, people 610, 150 of cargo, tongue 720, am I over?',
    ['load.occupants 610 lb', 'load.cargo 150 lb'],
  ],
  [
    'My door sticker says 1480 lbs payload. Us two + 2 kids + dog is about 610, cooler and stuff in the bed 150, hitch says tounge 720. how much payload do i have left??',
    ['load.occupants 610 lb', 'load.cargo 150 lb'],
  ],
];

test.each(sums)('all that a sum of payload tells is read: %s', (text, loads) => {
  const part = partOf(text);
  expect(part?.topic).toBe('tow-fit');
  // By the papers or by a scale is not said: it is answered for each, and asked.
  expect(part?.open?.map(({ value }) => value)).toEqual(['720 lb']);
  expect(part?.facts).toEqual({
    'vehicle.placardPayload': '1480 lb',
  });
  expect(part?.loads?.map(({ list, weight }) => `${list} ${weight}`)).toEqual(loads);
  for (const { words } of part?.loads ?? []) expect(text).toContain(words);
  expect(part?.people).toBeUndefined();
});

test('where the people are not summed up, the tongue stays open, and cargo without a place is none', () => {
  expect(partOf('door sticker 1480, tongue 720, 4 people, am I over?')?.open).toHaveLength(1);
  const part = partOf('door sticker 1480, people 610, cargo capacity 900, tongue 720, am I over?');
  expect(part?.loads?.map(({ list }) => list)).toEqual(['load.occupants']);
});

test('the code of a tire is read beside the year that was told', () => {
  const part = partOf('tires on mine say 2018 on the side (code 3118) but tread looks brand new');
  expect(part?.facts).toMatchObject({ 'tire.codeWeek': '31', 'tire.codeYear': '18' });
});
