import type { CurveFigure, Drawn, FiguresOf, Line } from './figure';
import { dayCurve } from './house-battery';
import { isKnown, resultOf, toldIn, usedUp } from './series';

const stores: readonly (readonly [label: string, lasts: string])[] = [
  ['Fresh water', 'fresh.days'],
  ['Room in the gray tank', 'gray.days'],
  ['Room in the black tank', 'black.lasts'],
  ['Battery above its stop line', 'battery.lasts'],
  ['Gas', 'gas.lasts'],
];

const full = { lo: 100, hi: 100 };

/** What is left of each store day by day, those that run out first, and the stay. */
function daysLeft(drawn: Drawn): readonly CurveFigure[] {
  const lasting = stores.flatMap(([label, name]) => {
    const lasts = resultOf(drawn, name);
    return lasts && lasts.hi > 0 ? [{ label, lasts }] : [];
  });
  const longest = resultOf(drawn, 'stay.longest');
  if (!longest || lasting.length === 0) return [];
  const told = toldIn(drawn, 'stay.days', 'd');
  const stay = told && isKnown(told) ? told : undefined;
  // Twice what comes first shows it beside the next; what lasts much longer is cut off there.
  const farthest = Math.max(...lasting.map(({ lasts }) => lasts.hi));
  const wanted = Math.max(2 * longest.hi, 1.25 * (stay?.hi ?? 0));
  const most = Math.min(farthest, wanted);
  const lines: readonly Line[] = lasting
    .toSorted((a, b) => a.lasts.lo - b.lasts.lo)
    .map(({ label, lasts }) => ({ label, points: usedUp(full, lasts) }));
  return [
    {
      kind: 'curve',
      title: 'What is left of each store, day by day',
      x: { label: 'Days', unit: 'd', ...(most < farthest && { most }) },
      y: { label: 'Left', unit: '%' },
      lines,
      ...(stay && { here: { label: 'the stay', x: stay } }),
    },
  ];
}

export const stayFigures: FiguresOf = (drawn) => [...daysLeft(drawn), ...dayCurve(drawn)];
