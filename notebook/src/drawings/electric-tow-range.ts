import type { Ends } from '@tarebook/rules/engine';
import type { Interval } from '@tarebook/rules/quantity';
import type { CurveFigure, Drawn, FiguresOf, Line, Point, Stop } from './figure';
import { heightAt, middle, resultOf, stepsOf } from './series';

type Edge = { readonly from: number; readonly net: number; readonly to: number };
type Leg = {
  readonly name: string;
  readonly x: Interval;
  readonly low: Edge;
  readonly high: Edge;
  readonly arrival: Interval;
  readonly charge: Interval;
  readonly after: Interval;
  readonly charged: boolean;
  readonly floor: Interval;
};

const nearly = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
const same = (a: Interval, b: Interval): boolean => nearly(a.lo, b.lo) && nearly(a.hi, b.hi);
const plain = ({ lo, hi }: Ends): Interval => ({ lo, hi });

/** The legs as they follow each other; none where a number of any of them is not known. */
function legsOf(drawn: Drawn): readonly Leg[] {
  const steps = (name: string) => stepsOf(drawn, 'legs', `legs.${name}`) ?? [];
  const [way, charges, nets] = [steps('way'), steps('charge'), steps('net')];
  const [arrivals, charged, floors] = [steps('arrival'), steps('charged'), steps('floor')];
  const rows = drawn.doc.blocks.flatMap((block) =>
    block.kind === 'list' && block.fact === 'route.legs' ? block.rows : [],
  );
  return nets.flatMap((net, i) => {
    const [from, to, charge, after] = [way[i], way[i + 1], charges[i], charges[i + 1]];
    const [arrival, gain, floor] = [arrivals[i], charged[i], floors[i]];
    if (!from || !to || !charge || !after || !arrival || !gain || !floor) return [];
    return {
      name: rows[i]?.label ?? '',
      x: { lo: middle(from), hi: middle(to) },
      low: { from: charge.lo, net: net.hi, to: arrival.lo },
      high: { from: charge.hi, net: net.lo, to: arrival.hi },
      arrival: plain(arrival),
      charge: plain(charge),
      after: plain(after),
      charged: gain.hi > 0,
      floor: plain(floor),
    };
  });
}

/** Charge at a share of a leg: by its slope, until it is full, or the engine takes over. */
const onEdge = ({ from, net, to }: Edge, share: number): number =>
  Math.min(Math.max(from, to), Math.max(Math.min(from, to), from - share * net));

/** The share of a leg at which it is full, or the engine takes over; none where it is neither. */
function turns({ from, net, to }: Edge): readonly number[] {
  const share = (from - to) / net;
  return share > 1e-6 && share < 1 - 1e-6 ? [share] : [];
}

function pointsOf(leg: Leg, i: number, legs: readonly Leg[]): readonly Point[] {
  const { x, low, high, arrival, charge, after } = leg;
  const before = legs[i - 1];
  const first = before ? before.charged : true;
  const shares = [...new Set([...turns(low), ...turns(high)])].toSorted((a, b) => a - b);
  const start: Point = { x: x.lo, y: charge, name: before ? 'charged' : 'start' };
  const between = shares.map((share) => ({
    x: x.lo + share * (x.hi - x.lo),
    y: { lo: onEdge(low, share), hi: onEdge(high, share) },
  }));
  const end: Point = { x: x.hi, y: arrival, name: leg.name };
  const last: readonly Point[] =
    i === legs.length - 1 && leg.charged ? [{ x: x.hi, y: after, name: 'charged' }] : [];
  return [...(first ? [start] : []), ...between, end, ...last];
}

/** The reserve as one level, or as a line where the cold moves it from leg to leg. */
function reserve(legs: readonly Leg[]): {
  readonly stops: readonly Stop[];
  readonly lines: readonly Line[];
} {
  const [first] = legs;
  if (!first) return { stops: [], lines: [] };
  const level =
    first.floor.lo === first.floor.hi && legs.every(({ floor }) => same(floor, first.floor));
  if (level) return { stops: [{ label: 'reserve', along: 'y', at: first.floor.lo }], lines: [] };
  const points = legs.flatMap(({ x, floor, name }) => [
    { x: x.lo, y: floor },
    { x: x.hi, y: floor, name },
  ]);
  return { stops: [], lines: [{ label: 'Reserve, and what the cold locks away', points }] };
}

/** Where the reserve is touched: a place, or a stretch that may reach past the end of the route. */
function touched(drawn: Drawn, points: readonly Point[], long: number): CurveFigure['here'] {
  const reach = resultOf(drawn, 'reach.distance');
  if (!reach || reach.lo > long - 0.05) return undefined;
  const x = { lo: reach.lo, hi: Math.min(reach.hi, long) };
  const label = reach.hi > long - 0.05 ? 'may touch the reserve' : 'touches the reserve';
  const y = nearly(x.lo, x.hi) ? heightAt(points, x.lo, ({ lo }) => lo) : undefined;
  return { label, x, ...(y !== undefined && { y }) };
}

/** What is in the battery against the way, leg by leg, down to the reserve and up at each charge. */
export const routeFigures: FiguresOf = (drawn) => {
  const legs = legsOf(drawn);
  const way = stepsOf(drawn, 'legs', 'legs.way');
  if (!way || legs.length === 0 || legs.length < way.length - 1) return [];
  const points = legs.flatMap((leg, i) => pointsOf(leg, i, legs));
  const { stops, lines } = reserve(legs);
  const here = touched(drawn, points, legs.at(-1)?.x.hi ?? 0);
  const lifts = legs
    .filter(({ charged }) => charged)
    .map(({ x, arrival, after }) => ({ x: x.hi, from: arrival, to: after }));
  const notes = [
    ...(points.some(({ y }) => y.lo < 0) ? ['Below zero: so much is short.'] : []),
    ...(way.every(({ lo, hi }) => lo === hi)
      ? []
      : ['Each distance is drawn at the middle of its range.']),
  ];
  return [
    {
      kind: 'curve',
      title: 'What is in the battery along the way, leg by leg',
      x: { label: 'Distance', unit: 'mi' },
      y: { label: 'In the battery', unit: 'kWh', fromZero: true },
      lines: [{ label: 'In the battery', points }, ...lines],
      stops,
      ...(here && { here }),
      ...(lifts.length > 0 && { lifts: { label: 'charged on the way', at: lifts } }),
      ...(notes.length > 0 && { note: notes.join(' ') }),
    },
  ];
};
