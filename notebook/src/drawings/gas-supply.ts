import type { Ends } from '@tarebook/rules/engine';
import { convert, type Interval, show, showNumber, unitOf } from '@tarebook/rules/quantity';
import type { CurveFigure, Drawn, FiguresOf, Line, Point, Stop } from './figure';
import { heightAt, middle, reaches, resultOf, stepsOf, toldIn, usedUp } from './series';

const [hour, day] = [unitOf('h'), unitOf('d')];
const inDays = ({ lo, hi }: Interval): Interval => ({
  lo: convert(lo, hour, day),
  hi: convert(hi, hour, day),
});
const inHours = ({ lo, hi }: Interval): Interval => ({
  lo: convert(lo, day, hour),
  hi: convert(hi, day, hour),
});

/** What is kept back of the gas on board: what the limit leaves where care begins. */
function keptBack({ answer }: Drawn): readonly Stop[] {
  const gas = answer.limits.find(({ id, state }) => id === 'gas' && state !== 'not-asked');
  const at = gas?.careAt ? middle(gas.limit) - middle(gas.careAt) : Number.NaN;
  return Number.isFinite(at) ? [{ label: 'kept back', along: 'y', at }] : [];
}

/** The nights it must last, and what is left after them. */
function nights(drawn: Drawn, left: readonly Point[]): CurveFigure['here'] {
  const told = toldIn(drawn, 'trip.nights', '');
  if (!told) return undefined;
  const label = told.hi === 1 ? '1 night' : `${showNumber(told.hi, 1)} nights`;
  const exact = told.lo === told.hi && left.every(({ y }) => y.lo === y.hi);
  const end = left.at(-1)?.x ?? 0;
  const y = told.hi > end ? 0 : heightAt(left, told.hi);
  return { label, x: told, ...(exact && y !== undefined && { y }) };
}

/** An amount that is not parted from its unit at the end of a line. */
const whole = (ends: Interval, unit: string): string => show(ends, unit).replaceAll(' ', '\u00a0');

const lasting = (asTold: Ends, atOnce: Ends | undefined): string =>
  `Burned as told it lasts ${asTold.hi < 1 ? whole(inHours(asTold), 'h') : whole(asTold, 'd')}${atOnce ? `, with everything at once ${whole(atOnce, 'h')}` : ''}.`;

/** By when the gas on board is used up, burned as told and with everything burning at once. */
function gasLeft(drawn: Drawn): readonly CurveFigure[] {
  const aboard = resultOf(drawn, 'gas.aboard');
  const asTold = resultOf(drawn, 'gas.days');
  if (!aboard || !asTold || aboard.hi <= 0) return [];
  const start = { lo: aboard.lo, hi: aboard.hi };
  const hours = resultOf(drawn, 'gas.hours');
  const atOnce = hours && inDays(hours);
  const left = usedUp(start, asTold);
  const here = nights(drawn, left);
  const lines: readonly Line[] = [
    { label: 'Day and night as told', points: left },
    ...(atOnce && atOnce.hi < asTold.hi
      ? [{ label: 'Everything at once, without a break', points: usedUp(start, atOnce) }]
      : []),
  ];
  return [
    {
      kind: 'curve',
      title: 'By when the gas on board is used up',
      x: { label: 'Days and nights', unit: 'd' },
      y: { label: 'Propane', unit: 'lb', fromZero: true },
      lines,
      stops: keptBack(drawn),
      note: lasting(asTold, hours),
      ...(here && { here }),
    },
  ];
}

/**
 * From where the cylinder boils off enough, for what burns for long and, by the rule in the middle of
 * its range, for everything at once; and below where it starves what burns for long.
 */
function edges(points: readonly Point[], atOnce: number, lasting: Interval): readonly Stop[] {
  const forLong = reaches(points, lasting.hi, ({ lo }) => lo);
  const forAll = reaches(points, atOnce, ({ lo, hi }) => Math.sqrt(lo * hi));
  const enough =
    forLong === undefined || forAll === undefined ? undefined : Math.max(forLong, forAll);
  const starves = reaches(points, lasting.lo, ({ hi }) => hi);
  return [
    ...(starves === undefined
      ? []
      : [{ label: 'starves below', along: 'x' as const, at: starves }]),
    ...(enough === undefined
      ? []
      : [{ label: 'may starve below', along: 'x' as const, at: enough }]),
  ];
}

/** How cold it may get before the cylinder boils off less than what burns. */
function boilsOff(drawn: Drawn): readonly CurveFigure[] {
  const at = stepsOf(drawn, 'boil', 'boil.temperature');
  const least = stepsOf(drawn, 'boil', 'boil.least');
  const most = stepsOf(drawn, 'boil', 'boil.most');
  const atOnce = resultOf(drawn, 'demand.atOnce');
  const average = resultOf(drawn, 'demand.lasting');
  // Of a cylinder of which nothing is told the usual sizes say nothing.
  if (!resultOf(drawn, 'gas.aboard')) return [];
  if (!at || !least || !most || !atOnce || !average || average.lo <= 0) return [];
  const points = at.flatMap((each, i): readonly Point[] => {
    const [low, high] = [least[i], most[i]];
    return low && high ? [{ x: middle(each), y: { lo: low.lo, hi: high.hi } }] : [];
  });
  const [coldest, mildest] = [points[0], points.at(-1)];
  if (!coldest || !mildest || mildest.y.hi <= 0) return [];
  const level = (label: string, { lo, hi }: { lo: number; hi: number }): Line => ({
    label,
    points: [coldest, mildest].map(({ x }) => ({ x, y: { lo, hi } })),
  });
  const outside = toldIn(drawn, 'outside.temperature', '°F');
  const top = 3 * atOnce.hi;
  return [
    {
      kind: 'curve',
      title:
        'How cold it may get before the cylinder, as full as now, boils off less than what burns',
      x: { label: 'Outside', unit: '°F' },
      y: { label: 'Gas', unit: 'Btu/h', fromZero: true, ...(mildest.y.hi > top && { most: top }) },
      lines: [
        { label: 'Boils off, by a rough rule', points },
        level('What burns, all at once', atOnce),
        ...(average.hi < atOnce.hi ? [level('What burns, on average', average)] : []),
      ],
      stops: edges(points, atOnce.hi, average),
      ...(outside && { here: { label: 'forecast', x: outside } }),
      ...(mildest.y.hi < average.lo && { note: 'Not even mild weather boils off enough.' }),
    },
  ];
}

export const gasFigures: FiguresOf = (drawn) => [...gasLeft(drawn), ...boilsOff(drawn)];
