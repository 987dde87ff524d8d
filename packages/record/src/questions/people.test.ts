import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { peopleOf, ridersIn } from './people';

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

/** Who rides along and what each of them weighs, where somebody said so. */
const weighed: readonly (readonly [string, readonly string[]])[] = [
  [
    'Payload 1,480. Me and the wife are 390 together, dog 60. Am I over?',
    ['2 adult 195 lb', '1 dog 60 lb'],
  ],
  ['my wife and I weigh 180 kg together, plus a 40 lb dog', ['2 adult 90 kg', '1 dog 40 lb']],
  // A sum of more than the adults tells nothing of one; what is no weight of anybody is none.
  ['me and my wife and two kids, 520 together', ['2 adult', '2 child']],
  ['me and the wife, 3,000 together with the trailer', ['2 adult']],
  ['four of us, dog 12 years old', ['4 adult', '1 dog']],
  // A sum, and who is in it; one weight for each.
  [
    'We are six people, two adults 180 & 150 and four kids about 70 each. payload 1500',
    ['2 adult 165 lb', '4 child 70 lb'],
  ],
  ['two adults 180 & 150 & 90, payload 1500', ['2 adult']],
  ['two adults 340 and 120 of gear, payload 1500', ['2 adult 170 lb']],
];

test.each(weighed)('%s', (text, people) => {
  const topic = topics['tow-fit'];
  if (!topic) throw new Error('no tow-fit');
  const told = peopleOf(topic, text);
  expect(told.map(({ who, count, weight = '' }) => `${count} ${who} ${weight}`.trim())).toEqual(
    people,
  );
  for (const { words = '' } of told) expect(text).toContain(words);
});
