import { describe, expect, test } from 'vitest';
import { answerTraced } from '../answer/traced';
import { defineTopic } from '../check/define';
import type { Formula } from '../define/shapes';
import { formula, shelf } from '../define/small-topic.fixture';

const nouns: Readonly<Record<string, string>> = {
  'shelf.rating': 'the rating',
  'shelf.span': 'the span',
  'shelf.share': 'the share',
  'box.weight': 'the box',
  'box.lid': 'the lid',
  boxes: 'the boxes',
};

const facts = Object.fromEntries(
  Object.entries(shelf.facts).map(([id, fact]) => [id, { ...fact, noun: nouns[id] ?? id }]),
);

const given = {
  'shelf.rating': '100 lb',
  'shelf.span': '10 in',
  'shelf.share': '50 %',
  'box.weight': '40 lb',
  'box.lid': '4 lb',
  boxes: [{ weight: '6 lb', place: '-5 in' }],
};

/** One formula over the shelf, as its step is worked and told. */
function step(is: string, unit = 'lb', more: Readonly<Record<string, Formula>> = {}) {
  const formulas = { ...shelf.formulas, ...more, 'it.is': formula(is, unit) };
  const topic = defineTopic({ ...shelf, facts, formulas, headline: ['it.is'] });
  const found = answerTraced(topic, { facts: given, asOf: '2026-11-01' }).trace.steps['it.is'];
  if (!found) throw new Error('The formula left no step.');
  return found;
}

describe('every factor of a product is told by its name', () => {
  test('with what it is divided by at the end', () => {
    const is = 'shelf.share * box.weight * shelf.span / (shelf.span + shelf.span)';
    expect(step(is).told).toBe(
      'the share (50 %) times the box (40 lb) times the span (10 in), divided by the sum of the span (10 in) and the span (10 in)',
    );
  });

  test('a list by its sum, and a table by its label and where it was read', () => {
    expect(step('sum(boxes.weight) / shelf.span', 'lb/in').told).toBe(
      'the boxes (6 lb) divided by the span (10 in)',
    );
    expect(step('box.weight * shelf.share * lookup(sag, shelf.span)', 'lb·lb').told).toBe(
      'the box (40 lb) times the share (50 %) times what a span carries (100 lb at 10 in)',
    );
    expect(step('lookup(sag, shelf.span)').told).toBe('what a span carries (100 lb at 10 in)');
  });
});

describe('a part of a sum is told as the part of what it comes from', () => {
  test('of both, where both are multiplied', () => {
    expect(step('box.weight + (box.lid + shelf.rating) * shelf.share * shelf.share').told).toBe(
      'the box (40 lb) and the part of the lid and the rating ((4 lb + 100 lb) × 50 % × 50 % = 26 lb)',
    );
  });

  test('and never of a length that is canceled by another', () => {
    const is = 'shelf.span + box.weight / shelf.rating * shelf.span * shelf.span / shelf.span';
    expect(step(is, 'in').told).toBe(
      'the span (10 in) and the part of the box (40 lb ÷ 100 lb × 10 in × 10 in ÷ 10 in = 4 in)',
    );
  });
});

describe('a working is written as a person writes it', () => {
  const below = {
    'box.below': formula('box.lid - box.weight'),
    'box.off': formula('between(0 - box.lid, box.lid)'),
  };

  test.each([
    ['box.weight + box.below', '40 lb − 36 lb'],
    ['box.weight - box.below', '40 lb + 36 lb'],
    ['box.weight - box.below * (1 + shelf.share)', '40 lb + 36 lb × (1 + 50 %)'],
    ['box.weight + box.off', '40 lb ± 4 lb'],
    ['min(box.weight, unlimited)', '40 lb'],
  ])('%s is %s', (is, wanted) => {
    expect(step(is, 'lb', below).working).toBe(wanted);
  });

  test.each([
    ['max(0, -whole(-shelf.share))', 'the most of 0, (0.5, rounded up)'],
    ['whole(shelf.share)', '(0.5, rounded down)'],
  ])('%s is %s', (is, wanted) => {
    expect(step(is, '').working).toBe(wanted);
  });

  test('two tables that agree give one value, and it is told whose it is', () => {
    expect(step('between(box.weight, box.weight)').told).toBe('the box (40 lb)');
  });
});
