import { readFileSync } from 'node:fs';
import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { routeFigures } from './electric-tow-range';
import type { CurveFigure } from './figure';
import { heightAt } from './series';

const textOf = (name: string) =>
  readFileSync(new URL(`../../../cases/electric-tow-range/${name}.md`, import.meta.url), 'utf8');

/** The figure of a case, some of its words put differently. */
function drawn(name: string, put: (text: string) => string = (text) => text) {
  const doc = readCase(put(textOf(name)));
  const answer = judgeCaseNow(doc);
  const [figure] = routeFigures({ doc, answer });
  return { answer, figure };
}

function curveOf(name: string, put?: (text: string) => string): CurveFigure {
  const { figure } = drawn(name, put);
  if (figure?.kind !== 'curve') throw new Error('There is no curve.');
  return figure;
}

const rounded = ({ lines }: CurveFigure) =>
  (lines[0]?.points ?? []).map(({ x, y, name }) => [
    Math.round(x * 10) / 10,
    Math.round(y.lo * 100) / 100,
    Math.round(y.hi * 100) / 100,
    name,
  ]);

test('down the first leg, up at the stop, and down again to the end', () => {
  const curve = curveOf('one-stop-at-a-stall');
  // As the worked case says it: 130 kWh, 80 % of that at the stop, 59.54 kWh of them charged,
  // 38.37 kWh at the end of 125 miles; 15 % are kept back.
  expect(rounded(curve)).toEqual([
    [0, 130, 130, 'start'],
    [70, 44.46, 44.46, 'To Ketter'],
    [70, 104, 104, 'charged'],
    [125, 38.37, 38.37, 'Over the ridge road'],
  ]);
  const [lift] = curve.lifts?.at ?? [];
  expect((lift?.to.lo ?? 0) - (lift?.from.lo ?? 0)).toBeCloseTo(59.54, 2);
  expect(curve.stops).toEqual([{ label: 'reserve', along: 'y', at: 19.5 }]);
  expect(curve.here).toBeUndefined();
});

test('where the reserve is touched is on the line, at the reserve', () => {
  const { answer } = drawn('fifty-miles-in-january');
  const curve = curveOf('fifty-miles-in-january');
  const { here, stops, lines } = curve;
  expect(here?.label).toBe('touches the reserve');
  expect(here?.x.lo).toBe(answer.values['reach.distance']?.lo);
  expect(here?.y).toBeCloseTo(stops?.[0]?.at ?? Number.NaN, 2);
  expect(heightAt(lines[0]?.points ?? [], here?.x.lo ?? 0)).toBeCloseTo(here?.y ?? 0, 6);
});

test('a range stays a range, and below zero is said to be short', () => {
  const curve = curveOf('between-yes-and-no');
  expect(rounded(curve)).toEqual([
    [0, 100, 100, 'start'],
    [72, -22.4, 24.59, 'Home to the fairground'],
  ]);
  expect(curve.here?.label).toBe('may touch the reserve');
  expect(curve.here?.x.lo).toBeCloseTo(50, 1);
  expect(curve.here?.x.hi).toBeCloseTo(72, 6);
  expect(curve.note).toBe('Below zero: so much is short.');
});

test('once the battery is spent the engine holds it there', () => {
  const points = curveOf('hybrid-on-the-long-grade').lines[0]?.points ?? [];
  // 14 kWh against 55.63 on the first leg, so spent after a quarter of it.
  const spent = points[1];
  expect(points[0]?.y.lo).toBeCloseTo(14, 6);
  expect((spent?.x ?? 0) / (points[2]?.x ?? 1)).toBeCloseTo(14 / 55.63, 3);
  expect(points.slice(1).every(({ y }) => Math.abs(y.lo) < 1e-9)).toBe(true);
});

test('a battery with no room left on the way down stays full', () => {
  expect(rounded(curveOf('over-the-pass')).slice(-2)).toEqual([
    [45, 125, 125, 'charged'],
    [67, 125, 125, 'Down the far side'],
  ]);
});

test('where the cold moves the reserve from leg to leg it is a line of its own', () => {
  const colder = (text: string) =>
    text
      .replace('| Charge to |', '| Charge to | Temperature |')
      .replace('| --- | --- | --- | --- | --- |', '| --- | --- | --- | --- | --- | --- |')
      .replace('| 600 ft | 80 % |', '| 600 ft | 80 % | 32 °F |')
      .replace('| 300 ft | |', '| 300 ft | | 68 °F |');
  const { stops, lines } = curveOf('one-stop-at-a-stall', colder);
  expect(stops).toEqual([]);
  // 15 % of 130 kWh, and at 32 °F another 12 % of them.
  expect(lines[1]?.points.map(({ x, y }) => [x, y.lo].map((n) => Math.round(n * 10) / 10))).toEqual(
    [
      [0, 35.1],
      [70, 35.1],
      [70, 19.5],
      [125, 19.5],
    ],
  );
});

test('a distance that is a range is drawn at its middle, and the drawing says so', () => {
  const curve = curveOf('between-yes-and-no', (text) => text.replace('72 mi |', '70–74 mi |'));
  expect(curve.lines[0]?.points.at(-1)?.x).toBeCloseTo(72, 6);
  expect(curve.note).toContain('Each distance is drawn at the middle of its range.');
});

test('where the drag is open there is no line', () => {
  expect(drawn('nobody-measured-the-front').figure).toBeUndefined();
});
