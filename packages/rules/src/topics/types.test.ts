import { expect, test } from 'vitest';
import { answerNow, type Topic } from '../engine';
import type * as all from '../index';
import { towFit } from '../index';

type All = typeof all;
type TopicName = { [K in keyof All]: All[K] extends Topic ? K : never }[keyof All];
/** The topics whose facts the compiler does not know one by one. */
type Loose = {
  [K in TopicName]: All[K] extends Topic
    ? string extends keyof All[K]['facts']
      ? K
      : never
    : never;
}[TopicName];

test('a misspelled fact is an error in the editor, in every topic', () => {
  // Where one is loose, its name is what this wants to be.
  const none: [Loose] extends [never] ? true : Loose = true;
  // @ts-expect-error of all topics this is none
  const name: TopicName = 'tow-fitt';
  expect([none, name]).toEqual([true, 'tow-fitt']);
  const ask = () =>
    answerNow(towFit, {
      facts: {
        // @ts-expect-error there is no such fact
        'trailer.gvw': '6,000 lb',
      },
    });
  expect(ask).toThrow(/trailer\.gvwr/);
});
