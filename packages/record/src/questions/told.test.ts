import { topics } from '@tarebook/rules';
import { describe, expect, test } from 'vitest';
import { factsIn } from './facts';
import { repeatsOver } from './repeats';

function told(id: string, text: string) {
  const topic = topics[id];
  if (!topic) throw new Error(id);
  return factsIn(topic, text).facts;
}

describe('a scale’s passes are told apart', () => {
  const tight = { 'tight.front': '3180 lb', 'tight.rear': '3560 lb', 'tight.trailer': '5940 lb' };
  const alone = { 'alone.front': '3260 lb', 'alone.rear': '2780 lb' };
  test.each([
    ['truck alone: front 3,260, rear 2,780. Bars on: front 3,180, rear 3,560, trailer axles 5,940'],
    ['bars on steer 3180 drive 3560 trailer 5940. Dropped the trailer: steer 3260, drive 2780'],
    ['tight 3,180 / 3,560 / 5,940, solo 3,260 / 2,780'],
  ])('%s', (text) => {
    expect(told('weigh-in', text)).toMatchObject({ ...tight, ...alone });
  });
  test('a pass that is told twice is none', () => {
    expect(told('weigh-in', 'solo 3,260 / 2,780 and solo 3,300 / 2,700')).toEqual({});
  });
});

test('a tire’s code tells its week and year, and a number that is none does not', () => {
  const made = { 'tire.codeWeek': '8', 'tire.codeYear': '21' };
  expect(told('tires', 'tires are dated 0821, ok?')).toMatchObject(made);
  const old = { 'tire.codeWeek': '32', 'tire.codeYear': '18' };
  expect(told('tires', 'How old may trailer tires get? Mine say 3218')).toMatchObject(old);
  expect(told('tires', 'the date code on my tires is 6321')).not.toHaveProperty('tire.codeWeek');
});

test('tanks in a row, a receiver that is loaded, and what belongs to the next number', () => {
  expect(told('off-grid-stay', 'we got 40 gal fresh 32 gray 28 black')).toMatchObject({
    'water.freshTank': '40 gal',
    'water.grayTank': '32 gal',
    'water.blackTank': '28 gal',
  });
  expect(told('hitch-setup', 'receiver 19.25 loaded')).toEqual({
    'hitch.receiverHeightLoaded': '19.25 in',
  });
  expect(told('tow-fit', 'tow rating is 7k and sticker on the door says 1390')).toMatchObject({
    'vehicle.maxTrailerWeight': '7000 lb',
    'vehicle.placardPayload': '1390 lb',
  });
});

test('the same is asked in other words, and other figures ask for another answer', () => {
  const asked = (id: string, text: string, facts: readonly string[] = []) => ({
    ...{ id, text, facts, about: 'shore-power', danger: undefined },
  });
  const same = repeatsOver();
  expect(same(asked('a', 'can I run the ac on a house outlet'))).toBeNull();
  expect(same(asked('b', 'will the air conditioner run on a household outlet'))).toBe('a');
  const other = repeatsOver();
  expect(other(asked('c', 'is a 50 ft cord fine for 12 A', ['cord.length 50 ft']))).toBeNull();
  expect(other(asked('d', 'is a 90 ft cord fine for 12 A', ['cord.length 90 ft']))).toBeNull();
});

test('a lone figure is read where only one thing can be meant', () => {
  const rest = (text: string) => told('house-battery', text)['battery.voltage'];
  expect(rest('12.1 volts, is that empty?')).toBe('12.1 V');
  expect(rest('meter by the door, 12.1 V, empty?')).toBe('12.1 V');
  expect(rest('do I need a 12 volt battery?')).toBeUndefined();
  // By the empty height the rules tell the drop at the most, and to measure it loaded.
  const height = 'coupler sits at 19 inches and the receiver on my truck is 23';
  expect(told('hitch-setup', height)).toMatchObject({ 'hitch.receiverHeightEmpty': '23 in' });
  expect(told('hitch-setup', 'receiver height of 23 inches')).toMatchObject({
    'hitch.receiverHeightEmpty': '23 in',
  });
});
