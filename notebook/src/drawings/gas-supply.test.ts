import { readFileSync } from 'node:fs';
import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import type { CurveFigure } from './figure';
import { gasFigures } from './gas-supply';
import { heightAt } from './series';

/** The figures of a case, some of its words put differently. */
function figuresOf(path: string, put: (text: string) => string = (text) => text) {
  const text = readFileSync(new URL(`../../../cases/${path}.md`, import.meta.url), 'utf8');
  const doc = readCase(put(text));
  const answer = judgeCaseNow(doc);
  const all = gasFigures({ doc, answer }).filter(
    (each): each is CurveFigure => each.kind === 'curve',
  );
  const titled = (words: string) => all.find(({ title }) => title.startsWith(words));
  return { answer, all, left: titled('By when'), cold: titled('How cold') };
}

const ends = (curve: CurveFigure | undefined, i: number) => {
  const points = curve?.lines[i]?.points ?? [];
  return [points[0], points.at(-1)].map((each) => [each?.x, each?.y.lo, each?.y.hi]);
};

test('what is on board is used up after the days and after the hours that the answer gives', () => {
  const { left } = figuresOf('gas-supply/four-cold-nights');
  // As the worked case says it: 40 lb for 4.353 d; 861,920 Btu at 30,000 Btu/h are 28.73 h.
  const [start, end] = ends(left, 0);
  expect(start).toEqual([0, 40, 40]);
  expect(end?.[0]).toBeCloseTo(4.353, 3);
  expect(end?.slice(1)).toEqual([0, 0]);
  expect(ends(left, 1)[1]?.[0]).toBeCloseTo(28.7307 / 24, 4);
  // Four nights take 36.755 lb of the 40; a fifth of the 40 is kept back.
  expect(left?.here?.label).toBe('4 nights');
  expect(left?.here?.y).toBeCloseTo(40 - 36.755, 2);
  expect(left?.stops).toEqual([{ label: 'kept back', along: 'y', at: 8 }]);
  expect(left?.note).toBe(
    'Burned as told it lasts 4.4\u00a0d, with everything at once 28.7\u00a0h.',
  );
});

test('what lasts less than a day is told in hours', () => {
  // 6,464 Btu against 180,000 a day.
  expect(figuresOf('gas-supply/empty-by-the-scale').left?.note).toBe(
    'Burned as told it lasts 0.9\u00a0h, with everything at once 0.2\u00a0h.',
  );
});

test('gas that was not weighed is drawn from none to all that there may be', () => {
  const { left } = figuresOf('gas-supply/tare-not-read');
  const [start, end] = ends(left, 0);
  expect(start).toEqual([0, 0, 31]);
  expect(end?.[0]).toBeCloseTo(6.68, 2);
  expect(end?.slice(1)).toEqual([0, 0]);
  expect(left?.here).toEqual({ label: '3 nights', x: { lo: 3, hi: 3 } });
});

test('below the one temperature it starves, from the other on it boils off enough', () => {
  const { answer, cold } = figuresOf('gas-supply/near-what-it-boils');
  const [starves, may] = cold?.stops ?? [];
  expect([starves?.label, may?.label]).toEqual(['starves below', 'may starve below']);
  // At 0 °F the rule gives 25,000 Btu/h, with a quarter more 31,250; the furnace burns 15,000 on
  // average, 0.48 of that: −10.4 °F. The 40,000 at once are 1.6 times the 25,000: 12 °F.
  expect(starves?.at).toBeCloseTo(-10.4, 4);
  expect(may?.at).toBeCloseTo(12, 4);
  const points = cold?.lines[0]?.points ?? [];
  const outside = cold?.here?.x.lo ?? Number.NaN;
  expect(outside).toBeCloseTo(10, 6);
  expect(heightAt(points, outside, ({ lo }) => lo)).toBeCloseTo(
    answer.values['vapor.least']?.lo ?? Number.NaN,
    2,
  );
  expect(heightAt(points, outside, ({ hi }) => hi)).toBeCloseTo(
    answer.values['vapor.most']?.hi ?? Number.NaN,
    2,
  );
});

test.each([
  ['near-what-it-boils', '12', '11'],
  ['starves-in-the-frost', '39', '38'],
])('%s: the marks are where the finding changes', (name, milder, colder) => {
  const level = (degrees: string) =>
    figuresOf(`gas-supply/${name}`, (text) =>
      text.replace(/(`outside\.temperature`[^|]*\|) [^|]*\|/, `$1 ${degrees} °F |`),
    ).answer.findings.find(({ id }) => id === 'vaporization')?.level;
  expect(level(milder)).not.toBe(level(colder));
});

test('in cold weather the same is drawn with the share of the time that the cold asks for', () => {
  const { answer, cold, left } = figuresOf('cold-weather/battery-before-gas');
  expect(left).toBeDefined();
  const average = answer.values['demand.lasting'];
  expect(cold?.lines.at(-1)?.points[0]?.y.lo).toBe(average?.lo);
});

test('nothing that burns, or nothing known of the cylinder, gives no line', () => {
  expect(figuresOf('gas-supply/plate-burned-off').all).toEqual([]);
  expect(figuresOf('gas-supply/one-more-burner').all).toEqual([]);
});
