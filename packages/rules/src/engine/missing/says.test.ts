import { describe, expect, test } from 'vitest';
import { shelf } from '../define/small-topic.fixture';
import { say } from '../words/say';
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
const says = (deciding: Partial<Deciding>, topic = notYet) =>
  say(missingSays(topic, 'box.weight', [{ ...boxes, ...deciding }]));

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

  test('what is counted tips at a whole number', () => {
    const { facts } = notYet;
    const weight = facts['box.weight'];
    if (weight?.kind !== 'quantity') throw new Error('A box has no weight.');
    const count = { ...weight, unit: '', counted: true };
    const topic = { ...notYet, facts: { ...facts, 'box.weight': count } };
    const tip = { lo: 1.317, hi: 1.317, unit: '' };
    const below = says({ edges: { tip: { ...tip, side: 'below' } } }, topic);
    expect(below).toBe('Decides “boxes”: with 1 the answer is “not yet”.');
    const above = says({ edges: { tip: { ...tip, side: 'above' } } }, topic);
    expect(above).toBe('Decides “boxes”: with 2 or more the answer is “not yet”.');
    const sure = says({ edges: { sure: { at: 4, unit: '', side: 'below' } } }, topic);
    expect(sure).toBe(
      'Decides “boxes”: with 3 or fewer the answer is “not yet”, whatever else is found.',
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
      'Decides “boxes” only together with a fact and a fact.',
    );
  });
});
