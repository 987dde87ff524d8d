import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { answerNow } from '../answer/answer';
import { readFacts } from '../check/facts';
import type { FactsGiven } from '../check/given';
import { formula, shelf } from '../define/small-topic.fixture';
import { asNumber } from '../value/truth';
import { compile } from './compile';
import { run } from './run';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** The range that one formula comes to, in base units (lb, in, fractions). */
function rangeOf(is: string, facts: FactsGiven, unit = 'lb') {
  const topic = { ...shelf, formulas: { ...shelf.formulas, 'it.is': formula(is, unit) } };
  const { inputs, problems } = readFacts(topic, facts);
  expect(problems).toEqual([]);
  const { lo, hi } = asNumber(run(compile(topic), inputs, new Map()).value('it.is'));
  return { lo, hi };
}

describe('a fact that enters twice does not count against itself', () => {
  test('x − x·y over ranges is exact', () => {
    const facts = { 'box.weight': '100–200 lb', 'shelf.share': '10–30 %' };
    // Plain ranges would give 100 − 60 to 200 − 10.
    const { lo, hi } = rangeOf('box.weight - box.weight * shelf.share', facts);
    expect([lo, hi]).toEqual([100 - 30, 200 - 20]);
  });

  const part = 'box.weight / (box.weight + shelf.rating)';

  test('t / (t + rest) over ranges as people give them is exact', () => {
    const facts = { 'box.weight': '500–560 lb', 'shelf.rating': '900–1,000 lb' };
    // Plain ranges would give 500/1560 to 560/1400.
    const { lo, hi } = rangeOf(part, facts, '1');
    expect(lo).toBeCloseTo(500 / 1500, 12);
    expect(hi).toBeCloseTo(560 / 1460, 12);
  });

  test('t / (t + rest) over wide ranges, whose slope cannot be told, stays sound', () => {
    const facts = { 'box.weight': '100–300 lb', 'shelf.rating': '100–300 lb' };
    const { lo, hi } = rangeOf(part, facts, '1');
    expect(lo).toBeLessThanOrEqual(0.25);
    expect(hi).toBeGreaterThanOrEqual(0.75);
  });

  test('x − x is nothing at all, however wide x is', () => {
    expect(rangeOf('box.weight - box.weight', { 'box.weight': '0–900 lb' })).toEqual({
      lo: 0,
      hi: 0,
    });
  });

  test('also through a formula in between, and through the rows of a list', () => {
    const facts = { boxes: [{ weight: '10–20 lb' }, { weight: '30–50 lb' }] };
    expect(rangeOf('load.total - sum(boxes.weight)', { ...facts, 'box.weight': '5 lb' })).toEqual({
      lo: 5,
      hi: 5,
    });
  });

  test('where a slope changes its sign, the range is wider but still sound', () => {
    const { lo, hi } = rangeOf('box.weight * (shelf.rating - box.weight) / shelf.rating', {
      'box.weight': '0–100 lb',
      'shelf.rating': '100 lb',
    });
    expect(lo).toBeLessThanOrEqual(0);
    expect(hi).toBeGreaterThanOrEqual(25);
  });
});

describe('a range holds every point of its formula', () => {
  const formulas: readonly (readonly [string, string, (x: number, y: number) => number])[] = [
    ['box.weight - box.weight * shelf.share', 'lb', (x, y) => x - x * y],
    ['max(box.weight, 50 * shelf.share * box.weight)', 'lb', (x, y) => Math.max(x, 50 * y * x)],
    ['min(box.weight, box.weight * 2 * shelf.share)', 'lb', (x, y) => Math.min(x, 2 * x * y)],
    ['box.weight / (1 + shelf.share) - box.weight', 'lb', (x, y) => x / (1 + y) - x],
    ['choose(shelf.share > 0.5, box.weight, -box.weight)', 'lb', (x, y) => (y > 0.5 ? x : -x)],
    ['box.weight * shelf.share * (1 - shelf.share)', 'lb', (x, y) => x * y * (1 - y)],
  ];
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  test.each(formulas)('%s', (is, unit, plain) => {
    const ends = (a: number, b: number, scale: number) => ({
      lo: Math.min(a, b) * scale,
      hi: Math.max(a, b) * scale,
    });
    fc.assert(
      fc.property(share, share, share, share, share, share, (a, b, c, d, i, j) => {
        const x = ends(a, b, 900);
        const y = ends(c, d, 1);
        const facts = { 'box.weight': { ...x, unit: 'lb' }, 'shelf.share': { ...y, unit: '1' } };
        const { lo, hi } = rangeOf(is, facts, unit);
        const point = plain(x.lo + i * (x.hi - x.lo), y.lo + j * (y.hi - y.lo));
        expect(point).toBeGreaterThanOrEqual(lo - 1e-9);
        expect(point).toBeLessThanOrEqual(hi + 1e-9);
      }),
      { numRuns: 200, seed },
    );
  });
});

describe('what is not known', () => {
  test('an unknown weight is anything from zero up', () => {
    expect(rangeOf('box.weight', { 'box.weight': 'unknown' })).toEqual({ lo: 0, hi: Infinity });
    expect(rangeOf('box.weight', {})).toEqual({ lo: 0, hi: Infinity });
  });

  test('an unknown choice takes the range over its possibilities', () => {
    const is = "choose(shelf.kind == 'oak', shelf.rating, shelf.rating / 2)";
    const facts = { 'shelf.rating': '100 lb' };
    expect(rangeOf(is, { ...facts, 'shelf.kind': 'unknown' })).toEqual({ lo: 50, hi: 100 });
    expect(rangeOf(is, { ...facts, 'shelf.kind': 'pine' })).toEqual({ lo: 50, hi: 50 });
  });

  test('largestKnown passes over what is unknown, and is unknown when all are', () => {
    const is = 'largestKnown(box.weight, shelf.rating)';
    expect(rangeOf(is, { 'box.weight': 'unknown', 'shelf.rating': '70 lb' })).toEqual({
      lo: 70,
      hi: 70,
    });
    expect(rangeOf(is, { 'box.weight': '80 lb', 'shelf.rating': '60–90 lb' })).toEqual({
      lo: 80,
      hi: 90,
    });
    expect(rangeOf(is, {})).toEqual({ lo: 0, hi: Infinity });
  });

  test('needs is unknown until each of its names is known', () => {
    const is = 'needs(box.weight, shelf.span)';
    expect(rangeOf(is, { 'box.weight': '5 lb' })).toEqual({ lo: 0, hi: Infinity });
    expect(rangeOf(is, { 'box.weight': '5 lb', 'shelf.span': '9 in' })).toEqual({ lo: 5, hi: 5 });
  });

  test('given is a word on what was said, known on what was told', () => {
    const is = 'choose(given(shelf.span), 1, 0) + choose(known(shelf.span), 1, 0)';
    const of = (facts: FactsGiven) => rangeOf(is, facts, '1').lo;
    expect([of({}), of({ 'shelf.span': 'unknown' }), of({ 'shelf.span': '9 in' })]).toEqual([
      0, 1, 2,
    ]);
  });
});

describe('between two figures that sources disagree on', () => {
  const facts = { 'box.weight': '100 lb', 'shelf.rating': '130 lb' };

  test.each(['between(box.weight, shelf.rating)', 'between(shelf.rating, box.weight)'])(
    '%s is anything from the lower to the higher',
    (is) => {
      expect(rangeOf(is, facts)).toEqual({ lo: 100, hi: 130 });
    },
  );

  test('over ranges it is still exact where both ends move one way', () => {
    const wide = { 'box.weight': '100–120 lb', 'shelf.rating': '130–150 lb' };
    const is = 'between(box.weight, shelf.rating + box.weight) - box.weight';
    const { lo, hi } = rangeOf(is, wide);
    expect(lo).toBeLessThanOrEqual(0);
    expect(hi).toBeGreaterThanOrEqual(150);
  });

  test('it holds every point between its ends, for every point of its inputs', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, share, share, (a, b, at, between) => {
        const x = { lo: Math.min(a, b) * 900, hi: Math.max(a, b) * 900 };
        const { lo, hi } = rangeOf('between(box.weight, 2 * box.weight) - box.weight', {
          'box.weight': { ...x, unit: 'lb' },
        });
        const weight = x.lo + at * (x.hi - x.lo);
        const point = weight + between * weight - weight;
        expect(point).toBeGreaterThanOrEqual(lo - 1e-9);
        expect(point).toBeLessThanOrEqual(hi + 1e-9);
      }),
      { numRuns: 200, seed },
    );
  });
});

describe('inside a sum, given and known ask about the row at hand', () => {
  const counted = (word: 'given' | 'known') => `sum(choose(${word}(boxes.place), 1, 0))`;
  const rows = [
    { weight: '1 lb', place: '2 in' },
    { weight: '1 lb', place: 'unknown' },
    { weight: '1 lb' },
  ];

  test('one place was told, one mentioned and not known, one not mentioned', () => {
    expect(rangeOf(counted('known'), { boxes: rows }, '1')).toEqual({ lo: 1, hi: 1 });
    expect(rangeOf(counted('given'), { boxes: rows }, '1')).toEqual({ lo: 2, hi: 2 });
  });

  test('outside of one, known is still a word on all rows', () => {
    const is = 'choose(known(boxes.place), 1, 0)';
    expect(rangeOf(is, { boxes: rows }, '1')).toEqual({ lo: 0, hi: 0 });
    expect(rangeOf(is, { boxes: rows.slice(0, 1) }, '1')).toEqual({ lo: 1, hi: 1 });
  });
});

describe('a table', () => {
  test.each([
    ['10 in', 100, 100],
    ['15 in', 80, 80],
    ['30 in', 40, 40],
    ['5 in', 100, 100],
    ['99 in', 20, 20],
    ['15–30 in', 40, 80],
    ['5–99 in', 20, 100],
  ])('at %s gives %d to %d, with straight lines between and its ends held', (span, lo, hi) => {
    expect(rangeOf('lookup(sag, shelf.span)', { 'shelf.span': span })).toEqual({ lo, hi });
  });
});

test('an answer of a topic that is no rig at all comes out of the same engine', () => {
  const judge = (facts: FactsGiven) => answerNow(shelf, { facts, asOf: '2026-01-01' });
  const oak = { 'shelf.kind': 'oak', 'shelf.rating': '100 lb' };
  expect(judge({ ...oak, 'box.weight': '90 lb' }).outcome).toBe('holds');
  expect(judge({ ...oak, 'box.weight': '90.01 lb' }).outcome).toBe('holds-just');
  expect(judge({ ...oak, 'box.weight': '100 lb' }).outcome).toBe('holds-just');
  expect(judge({ ...oak, 'box.weight': '100.01 lb' }).outcome).toBe('breaks');
  expect(judge({ ...oak, 'box.weight': '90 lb', 'shelf.braced': 'no' }).outcome).toBe('breaks');
  expect(judge({ ...oak, 'box.weight': '40 lb', 'shelf.kind': 'unknown' }).outcome).toBe('holds');
  expect(judge({ ...oak, 'box.weight': '60 lb', 'shelf.kind': 'unknown' }).outcome).toBe(
    'cannot-say',
  );
});
