import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { findInRules, sectionId } from './search';

test('a word finds the fact, the limit and the formula that it is in the name of', () => {
  const hits = findInRules('payload').map(({ href }) => href);
  expect(hits).toContain('#/rules/tow-fit/vehicle.placardPayload');
  expect(hits).toContain('#/rules/tow-fit/payload.used');
  expect(hits).toContain('#/rules/tow-fit/the-limits');
});

test('a word that people use and no rule does leads to the topic all the same', () => {
  const titles = findInRules('griddle').map(({ href }) => href);
  expect(titles.some((href) => href.startsWith('#/rules/gas-supply'))).toBe(true);
  expect(findInRules('zeppelin')).toEqual([]);
});

test('every place leads to a topic that there is', () => {
  for (const { href } of findInRules('weight')) {
    expect(Object.keys(topics)).toContain(href.split('/')[2]);
  }
});

test('a heading has an address', () => {
  expect(sectionId(' What it says beside the limits ')).toBe('what-it-says-beside-the-limits');
});
