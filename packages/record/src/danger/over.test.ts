import { expect, test } from 'vitest';
import { urgentIn } from '../questions/urgent';

/** The words of danger, and yet nobody is in any. */
const calm: readonly string[] = [
  // Long past and mended.
  'Three summers ago a bearing ran hot and smoked, and the wheel came off. It was all made good. Which spares belong in the box?',
  'Had a blowout LAST month, tow and tire all done. Are the other three too old?',
  // Only supposed.
  'Theory question: if the coupler ever came off the ball, would the chains hold it?',
  // Where nobody is.
  'The CO alarm chirps once a minute, the trailer is in storage and nobody sleeps in it. Which one do I buy?',
  // Something else, as whoever writes has found.
  'The hot tap smells of rotten eggs. The bottles have been off the trailer since fall, so it is not that.',
];

test.each(calm)('is not urgent: %s', (text) => {
  expect(urgentIn(text)).toBeNull();
});

/** Told with the same words, and somebody is in it: then it stays urgent. */
const urgent: readonly string[] = [
  'Last year the bearing smoked and was fixed, now it smokes again and we are on the shoulder',
  'Two summers ago it was all made good, but tonight I smell gas by the stove',
  'The CO alarm has been screaming for ten minutes, is it ok to sleep here',
  'There is smoke coming out of the trailer in storage, nobody is in it',
  'The hot tap smells of eggs, the bottles are off the trailer, and there is a hiss by the stove and I feel sick',
  'Hypothetical, haha: smoke is coming out of the fuse panel right now, what would you do',
  'the hitch weighs 80 lb, gvwr 6200, tongue 700 lb and it is wagging all over the lane right now',
];

test.each(urgent)('stays urgent: %s', (text) => {
  expect(urgentIn(text)).not.toBeNull();
});
