import { expect, test } from 'vitest';
import { ridersIn } from './people';

/** What somebody writes of who rides along, and how many of each kind. */
const told: readonly (readonly [string, Readonly<Record<string, number>>])[] = [
  ['tow rating 5,000, trailer 4,400 gross, two kids and a dog', { child: 2, dog: 1 }],
  ['my wife, 3 kids and a beagle', { adult: 2, child: 3, dog: 1 }],
  ['the wife and two small boys ride along', { adult: 2, child: 2 }],
  ['my husband n a toddler', { adult: 2, child: 1 }],
  ['four of us with two collies', { adult: 4, dog: 2 }],
  ['I have a hybrid rated 3,500, we are four: which of yours can I pull?', { adult: 4 }],
  ['we’re five and a dog', { adult: 5, dog: 1 }],
  ['we are 20 miles from town', {}],
  ['my wife drives it, 3 grandkids', { child: 3 }],
];

test.each(told)('%s', (text, people) => {
  expect(Object.fromEntries(ridersIn(text).map(({ who, count }) => [who, count]))).toEqual(people);
});
