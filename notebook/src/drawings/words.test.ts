import { expect, test } from 'vitest';
import { curveSays, extents } from './curve-words';
import type { CurveFigure, SpreadFigure } from './figure';
import { overShare, spreadSays } from './spread-words';

const curve: CurveFigure = {
  kind: 'curve',
  title: 'Energy along the way',
  x: { label: 'Way', unit: 'mi' },
  y: { label: 'Left', unit: 'kWh' },
  lines: [
    {
      label: 'With the trailer',
      points: [
        { x: 0, y: { lo: 80, hi: 80 } },
        { x: 120, y: { lo: 6, hi: 8 } },
      ],
    },
  ],
  stops: [{ label: 'Kept back', along: 'y', at: 10 }],
  here: { label: 'The charger', x: { lo: 95, hi: 110 } },
};

test('a curve is told in words: its ends, the stop, and where it stands', () => {
  expect(curveSays(curve, 'us')).toBe(
    'Energy along the way. With the trailer: from 80 kWh at 0 mi to 6–8 kWh at 120 mi. Kept back: 10 kWh. The charger: 95–110 mi.',
  );
});

test('the axes reach everything that is drawn, the stop too', () => {
  const { x, y } = extents({ ...curve, stops: [{ label: 'Kept back', along: 'y', at: 2 }] });
  expect(x).toEqual({ lo: 0, hi: 120 });
  expect(y).toEqual({ lo: 2, hi: 80 });
});

test('what lies beyond the most of an axis is cut off there', () => {
  const { x, y } = extents({
    ...curve,
    x: { ...curve.x, most: 100 },
    y: { ...curve.y, most: 200 },
  });
  expect(x).toEqual({ lo: 0, hi: 100 });
  expect(y).toEqual({ lo: 6, hi: 80 });
});

test('a charge on the way, and what else must be known, are told', () => {
  const [from, to] = [
    { lo: 20, hi: 30 },
    { lo: 64, hi: 64 },
  ];
  const lifts = { label: 'charged on the way', at: [{ x: 70, from, to }] };
  expect(curveSays({ ...curve, lifts, note: 'Mind the wind.' }, 'metric')).toContain(
    'Charged on the way: from 20–30 kWh to 64 kWh at 112.7 km. Kept back: 10 kWh. The charger: 152.9–177 km. Mind the wind.',
  );
});

test('one value alone still gets an axis with a length', () => {
  const { stops: _, ...without } = curve;
  const { y } = extents({
    ...without,
    lines: [{ label: 'Flat', points: [{ x: 0, y: { lo: 5, hi: 5 } }] }],
  });
  expect(y.hi).toBeGreaterThan(y.lo);
});

const spread: SpreadFigure = {
  kind: 'spread',
  title: 'Payload used',
  x: { label: 'Payload used', unit: 'lb' },
  bins: [
    { from: 1_000, to: 1_100, count: 20 },
    { from: 1_100, to: 1_200, count: 50 },
    { from: 1_200, to: 1_300, count: 30 },
  ],
  limit: { label: 'payload available', at: 1_250 },
};

test('draws in the step that the limit falls into count on neither side for certain', () => {
  expect(overShare(spread)).toEqual({ lo: 0, hi: 0.3 });
  expect(overShare({ ...spread, limit: { label: 'x', at: 1_200 } })).toEqual({ lo: 0.3, hi: 0.3 });
  expect(overShare({ ...spread, bins: [] })).toEqual({ lo: 0, hi: 0 });
});

test('a spread is told in words, and one of nothing says so', () => {
  expect(spreadSays(spread, 'us')).toBe(
    'Payload used: 100 draws, 1,000–1,300 lb. Payload available is 1,250 lb; of a hundred, 0 to 30 are above it.',
  );
  expect(spreadSays({ ...spread, bins: [] }, 'us')).toBe('Payload used: nothing was drawn.');
});
