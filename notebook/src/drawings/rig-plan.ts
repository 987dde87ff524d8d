import type { Load, RigFigure, TrailerBody, VehicleBody } from './figure';

/** Where everything stands, in inches from the front axle, to the right being backwards. */
export type RigPlan = {
  readonly rear: number;
  readonly ball: number;
  readonly axles: number;
  /** Ends of the two bodies. */
  readonly tail: number;
  readonly nose: number;
  readonly end: number;
  /** Inches from the leftmost to the rightmost point, and of the highest. */
  readonly from: number;
  readonly to: number;
  readonly height: number;
  /** Distances that were not known, and in whose stead something usual is drawn. */
  readonly unknown: readonly string[];
};

/** What is drawn where nobody measured; it is said to be not to scale then. No rule reads these. */
const usual: Readonly<Record<VehicleBody, { wheelbase: number; overhang: number }>> = {
  sedan: { wheelbase: 110, overhang: 43 },
  crossover: { wheelbase: 112, overhang: 42 },
  van: { wheelbase: 119, overhang: 48 },
  pickup: { wheelbase: 145, overhang: 50 },
};
const usualBallToAxle: Readonly<Record<TrailerBody, number>> = {
  box: 180,
  teardrop: 110,
  'fifth-wheel': 240,
};

export const vehicleHeight: Readonly<Record<VehicleBody, number>> = {
  sedan: 57,
  crossover: 67,
  van: 73,
  pickup: 75,
};
export const trailerHeight: Readonly<Record<TrailerBody, number>> = {
  box: 116,
  teardrop: 68,
  'fifth-wheel': 142,
};

/** From the ball to the front of the trailer's body; a fifth-wheel's reaches ahead of its pin. */
const nose: Readonly<Record<TrailerBody, number>> = { box: 38, teardrop: 30, 'fifth-wheel': -30 };
/** How far the body reaches behind the axles, as a share of what it has before them. */
const behind = 0.62;

export function planOf(rig: RigFigure): RigPlan {
  const unknown = [
    ...(rig.wheelbase === undefined ? ['the wheelbase'] : []),
    ...(rig.overhang === undefined ? ['rear axle to ball'] : []),
    ...(rig.ballToAxle === undefined ? ['ball to trailer axles'] : []),
  ];
  const rear = rig.wheelbase ?? usual[rig.vehicle].wheelbase;
  const fifth = rig.trailer === 'fifth-wheel';
  const ball = rear + (rig.overhang ?? (fifth ? 0 : usual[rig.vehicle].overhang));
  const axles = ball + (rig.ballToAxle ?? usualBallToAxle[rig.trailer]);
  const tail = fifth ? rear + usual[rig.vehicle].overhang : Math.max(rear + 18, ball - 8);
  const front = ball + nose[rig.trailer];
  const end = axles + behind * (axles - Math.max(front, ball));
  const height = Math.max(vehicleHeight[rig.vehicle], trailerHeight[rig.trailer]);
  return { rear, ball, axles, tail, nose: front, end, from: -44, to: end + 6, height, unknown };
}

const loadsOf = ({ front, rear, ball, axles }: RigFigure): readonly Load[] => [
  front,
  rear,
  ball,
  axles,
];

/** Pixels by load: one scale for every arrow of the drawing, zero at zero. */
export function arrowScale(rig: RigFigure, longest: number): (value: number) => number {
  const ends = loadsOf(rig).flatMap(({ used, limit }) => [used?.hi ?? 0, limit?.hi ?? 0]);
  const most = Math.max(1, ...ends);
  return (value) => (Math.max(0, value) / most) * longest;
}

/** So that two labels side by side are not read as one. */
const apart = 16;

/** Puts labels that would run into the one before them on the next line down. */
export function levels(
  labels: readonly { readonly x: number; readonly width: number }[],
): readonly number[] {
  const ends: number[] = [];
  return labels.map(({ x, width }) => {
    const from = x - width / 2;
    const free = ends.findIndex((end) => end <= from);
    const level = free < 0 ? ends.length : free;
    ends[level] = x + width / 2 + apart;
    return level;
  });
}
