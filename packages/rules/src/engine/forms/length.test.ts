import { expect, test } from 'vitest';
import { sayer } from '../words/say';
import { text } from '../words/value';
import { fitted, must, unlessSaid } from './length';

/** Whether what must be said comes after lines that said most of its words. */
const isSaidAfter = (lines: readonly string[], words: string): boolean =>
  fitted(sayer({}), [...lines.map((each) => must(text(each))), unlessSaid(must(text(words)))], {
    most: 80,
  }).includes(words);

test('what must be said is no echo of a line without its “not” or its “never”', () => {
  const may = 'You may tow it, and do look whether the brakes work before the trip.';
  expect(isSaidAfter([may], 'Do not tow it before the brakes work.')).toBe(true);
  const run = 'Run the furnace with the window open.';
  expect(isSaidAfter([run], 'Never run the furnace with the window open.')).toBe(true);
  expect(
    isSaidAfter(['Never sleep there.', run], 'Never run the furnace with the window open.'),
  ).toBe(true);
});

test('nor of one without its word of order', () => {
  const tow = 'Tow it home, and then the brakes are to be looked at.';
  expect(isSaidAfter([tow], 'The brakes are looked at before it is to tow.')).toBe(true);
  const full = 'Open the valve of the cylinder, and the line is tight.';
  expect(isSaidAfter([full], 'Open the cylinder valve until the line is tight.')).toBe(true);
});

test('nor of two lines that each say a half of it', () => {
  const halves = ['The hitch is rated for 3,500 pounds.', 'The loaded trailer weighs too much.'];
  expect(isSaidAfter(halves, 'The loaded trailer weighs 3,500 pounds.')).toBe(true);
});

test('what one line has said, its “not” and all, is not said again', () => {
  const whole = 'Do not tow it home before the brakes work on both axles.';
  expect(isSaidAfter([whole], 'Do not tow it before the brakes work.')).toBe(false);
  expect(
    isSaidAfter(
      ['The hitch of it is rated for 500 pounds at most.'],
      'The hitch is rated for 500 pounds.',
    ),
  ).toBe(false);
});

test('a line that it says over again, and turns, is left out for it', () => {
  const bare = 'Take a jack to a point that the trailer’s maker names.';
  const turned = 'Use no ramp: take a jack to the point that the trailer’s maker names.';
  const parts = [must(text(bare)), unlessSaid(must(text(turned)))];
  expect(fitted(sayer({}), parts, { most: 80 })).toEqual([turned]);
});
