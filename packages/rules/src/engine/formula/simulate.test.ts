import fc from 'fast-check';
import { expect, test } from 'vitest';
import { answerTraced } from '../answer/traced';
import { defineTopic } from '../check/define';
import type { Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const value = (is: string, unit = 'lb') => ({ label: is, unit, is, source });

/** A shelf loaded box by box, and one that loses a share of its load each hour. */
const loading: Topic = defineTopic<Topic>({
  ...shelf,
  simulations: {
    loading: {
      label: 'Box by box',
      steps: 'boxes',
      states: {
        'loading.load': {
          label: 'Load',
          unit: 'lb',
          start: 'box.weight',
          next: 'loading.load + boxes.weight',
          source,
        },
      },
      values: {
        'loading.left': value('shelf.rating - loading.load'),
        'loading.moment': value('boxes.weight * boxes.place', 'lb·in'),
        'loading.placed': value('choose(given(boxes.place), boxes.weight, 0)'),
        'loading.sure': value('choose(known(boxes.place), boxes.weight, 0)'),
      },
      source,
    },
    drying: {
      label: 'Hour by hour',
      steps: 10,
      states: {
        'drying.load': {
          label: 'Load',
          unit: 'lb',
          start: 'box.weight',
          // Written so that the load stands once: its slope then keeps its sign from step to step.
          next: 'drying.load * (1 - shelf.share)',
          source,
        },
      },
      values: { 'drying.lost': value('drying.load * shelf.share') },
      source,
    },
  },
  formulas: {
    ...shelf.formulas,
    'end.load': formula('lastOf(loading, loading.load)'),
    'least.left': formula('leastOver(loading, loading.left)'),
    'all.moments': formula('totalOver(loading, loading.moment)', 'lb·in'),
    'all.placed': formula('totalOver(loading, loading.placed)'),
    'all.sure': formula('totalOver(loading, loading.sure)'),
    'dry.load': formula('lastOf(drying, drying.load)'),
    'dry.most': formula('mostOver(drying, drying.load)'),
    'dry.share': formula('totalOver(drying, drying.lost) * shelf.share'),
    'dry.lost': formula('totalOver(drying, drying.lost)'),
    'dry.steps': formula('mostOver(drying, drying.step)', ''),
  },
});

const facts = {
  'shelf.rating': '300 lb',
  'box.weight': '10 lb',
  'shelf.share': '10 %',
  boxes: [
    { weight: '20 lb', place: '5 in' },
    { weight: '30 lb', place: '-10 in' },
  ],
};

test('what is handed on, what is reckoned in a step, and what is gathered over the steps', () => {
  const { values, series } = answerTraced(loading, { facts });
  expect(values['end.load']?.lo).toBe(60);
  expect(values['least.left']?.lo).toBe(300 - 30);
  expect(values['all.moments']?.lo).toBe(100 - 300);
  expect(values['dry.load']?.lo).toBeCloseTo(10 * 0.9 ** 10, 6);
  expect(values['dry.most']?.lo).toBe(10);
  expect(values['dry.steps']?.lo).toBe(9);
  expect(series.loading?.lines['loading.load']?.ends.map(({ lo }) => lo)).toEqual([10, 30, 60]);
  expect(series.loading?.lines['loading.left']?.ends.map(({ lo }) => lo)).toEqual([290, 270]);
});

test('in a step over a list, given and known mean the cell of that row', () => {
  const boxes = [
    { weight: '20 lb', place: '5 in' },
    { weight: '30 lb', place: 'unknown' },
    { weight: '40 lb' },
  ];
  const { values } = answerTraced(loading, { facts: { ...facts, boxes } });
  expect(values['all.placed']?.lo).toBe(20 + 30);
  expect(values['all.sure']?.lo).toBe(20);
});

test('a product with a simulation in it is told like any other', () => {
  const shown = defineTopic<Topic>({ ...loading, headline: ['dry.share'] });
  expect(answerTraced(shown, { facts }).trace.steps['dry.share']?.working).toContain('× 10 %');
});

test('what is lost and what is left come to what was there', () => {
  const { values } = answerTraced(loading, { facts });
  expect((values['dry.lost']?.lo ?? 0) + (values['dry.load']?.lo ?? 0)).toBeCloseTo(10, 5);
});

test('over ranges every point lies inside, and the ends are met where it moves one way', () => {
  const wide = { ...facts, 'box.weight': '10–14 lb', 'shelf.share': '5–20 %' };
  const { lo, hi } = answerTraced(loading, { facts: wide }).values['dry.load'] ?? { lo: 0, hi: 0 };
  expect(lo).toBeCloseTo(10 * 0.8 ** 10, 5);
  expect(hi).toBeCloseTo(14 * 0.95 ** 10, 5);
  fc.assert(
    fc.property(fc.integer({ min: 10, max: 14 }), fc.integer({ min: 5, max: 20 }), (w, s) => {
      const point = { ...facts, 'box.weight': `${w} lb`, 'shelf.share': `${s} %` };
      const at = answerTraced(loading, { facts: point }).values['dry.load']?.lo ?? 0;
      expect(at).toBeGreaterThanOrEqual(lo - 1e-5);
      expect(at).toBeLessThanOrEqual(hi + 1e-5);
    }),
    { numRuns: 40, seed },
  );
});

test('an unknown start leaves the end open, not zero', () => {
  const { values } = answerTraced(loading, { facts: { ...facts, 'box.weight': 'unknown' } });
  expect(values['end.load']?.hi).toBe(Infinity);
});

test('a list without rows has no steps', () => {
  const { values } = answerTraced(loading, { facts: { ...facts, boxes: [] } });
  expect(values['end.load']?.lo).toBe(10);
  expect(values['all.moments']?.lo).toBe(0);
  expect(values['least.left']).toMatchObject({ lo: -Infinity, hi: Infinity });
});
