import { describe, expect, test } from 'vitest';
import { shelf } from '../define/small-topic.fixture';
import { type Deciding, missingSays } from './says';

const { stop } = shelf.outcomes;
const notYet = { ...shelf, outcomes: { ...shelf.outcomes, stop: { ...stop, words: 'not yet' } } };

const boxes: Deciding = {
  of: 'limit.all-boxes',
  edges: {},
  stopping: [],
  others: [],
  together: [],
};
const says = (deciding: Partial<Deciding>) => missingSays(notYet, [{ ...boxes, ...deciding }]);

describe('what decides is said so that the words of any outcome fit', () => {
  test('where it tips', () => {
    expect(says({ edges: { tip: { side: 'above', lo: 40, hi: 40, unit: 'lb' } } })).toBe(
      'Decides “boxes”: above 40 lb the answer is “not yet”.',
    );
  });

  test('between what holds for sure and what stops for sure', () => {
    expect(says({ edges: { tip: { side: 'below', lo: 40, hi: 60, unit: 'lb' } } })).toBe(
      'Decides “boxes”: from 60 lb it holds and below 40 lb the answer is “not yet”, whatever else is found.',
    );
  });

  test('which options, and of many the few that would not', () => {
    expect(says({ stopping: ['oak', 'pine'], others: ['elm', 'ash', 'fir'] })).toBe(
      'Decides “boxes”: with “oak” or “pine” the answer is “not yet”.',
    );
    expect(says({ stopping: ['oak', 'pine', 'fir'], others: ['elm'] })).toBe(
      'Decides “boxes”: with anything but “elm” the answer is “not yet”.',
    );
  });

  test('with what it decides only together', () => {
    expect(says({ together: ['box.weight', 'shelf.braced'] })).toBe(
      'Decides “boxes” only together with “a fact” and “a fact”.',
    );
  });
});
