import { readFileSync } from 'node:fs';
import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { batteryFigures } from './house-battery';

const drawnOf = (name: string) => {
  const file = new URL(`../../../cases/house-battery/${name}.md`, import.meta.url);
  const doc = readCase(readFileSync(file, 'utf8'));
  return { doc, answer: judgeCaseNow(doc) };
};

test('the curve runs from empty to full, with the stop line and this battery on it', () => {
  const drawn = drawnOf('how-full-is-it');
  const [curve] = batteryFigures(drawn);
  if (curve?.kind !== 'curve') throw new Error('There is no curve.');
  const points = curve.lines[0]?.points ?? [];
  // The worked case says it: full at 12.65 V, empty at 11.89 V, the stop line at 12.24 V.
  expect(points[0]?.x).toBeCloseTo(0, 6);
  expect(points[0]?.y.lo).toBeCloseTo(11.89, 2);
  expect(points.at(-1)?.x).toBeCloseTo(100, 6);
  expect(points.at(-1)?.y.hi).toBeCloseTo(12.65, 2);
  expect(curve.stops?.[0]?.at).toBeCloseTo(12.24, 2);
  const stands = drawn.answer.values['battery.stateOfCharge'];
  expect(curve.here?.x.hi).toBeCloseTo((stands?.hi ?? Number.NaN) * 100, 6);
  // Read at rest at 12.35 V, so it stands on the curve there.
  expect(curve.here?.y).toBeCloseTo(12.35, 2);
  expect(curve.here?.x.lo).toBeGreaterThan(50);
  expect(curve.here?.x.hi).toBeLessThan(75);
});
