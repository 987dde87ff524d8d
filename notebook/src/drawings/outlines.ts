import { curveCatmullRom, line } from 'd3-shape';
import type { TrailerBody, VehicleBody } from './figure';
import { type RigPlan, trailerHeight, vehicleHeight } from './rig-plan';

/** Inches: to the right and up from where the front wheels stand. */
type Point = readonly [x: number, y: number];

export type Outline = { readonly body: readonly Point[]; readonly glass: readonly Point[] };

/** Outlines head left; w is the wheelbase, t where the body ends. */
const vehicles: Readonly<Record<VehicleBody, (w: number, t: number, h: number) => Outline>> = {
  sedan: (w, t, h) => ({
    body: [
      [-36, 11],
      [-37, 24],
      [-30, 31],
      [w * 0.12, 37],
      [w * 0.38, h],
      [w * 0.78, h],
      [w + 8, 40],
      [t - 3, 38],
      [t, 30],
      [t, 12],
    ],
    glass: [
      [w * 0.2, 38],
      [w * 0.4, h - 5],
      [w * 0.76, h - 5],
      [w * 0.95, 39],
    ],
  }),
  crossover: (w, t, h) => ({
    body: [
      [-36, 14],
      [-37, 31],
      [-30, 39],
      [w * 0.1, 43],
      [w * 0.33, h],
      [t - 14, h],
      [t - 2, 44],
      [t, 15],
    ],
    glass: [
      [w * 0.18, 44],
      [w * 0.36, h - 6],
      [t - 19, h - 6],
      [t - 10, 44],
    ],
  }),
  van: (w, t, h) => ({
    body: [
      [-34, 12],
      [-36, 28],
      [-26, 37],
      [w * 0.03, 44],
      [w * 0.26, h],
      [t - 6, h],
      [t, 44],
      [t, 13],
    ],
    glass: [
      [w * 0.08, 44],
      [w * 0.28, h - 7],
      [t - 11, h - 7],
      [t - 8, 44],
    ],
  }),
  pickup: (w, t, h) => ({
    body: [
      [-38, 18],
      [-39, 40],
      [-33, 45],
      [w * 0.1, 48],
      [w * 0.25, h],
      [w * 0.6, h],
      [w * 0.65, 51],
      [t, 51],
      [t, 19],
    ],
    glass: [
      [w * 0.15, 49],
      [w * 0.27, h - 6],
      [w * 0.58, h - 6],
      [w * 0.61, 49],
    ],
  }),
};

export function vehicleOutline(body: VehicleBody, { rear, tail }: RigPlan): Outline {
  return vehicles[body](rear, tail, vehicleHeight[body]);
}

/** The trailer's body; a teardrop's is to be drawn as a curve. */
export function trailerOutline(body: TrailerBody, plan: RigPlan): readonly Point[] {
  const { nose, end, ball } = plan;
  const h = trailerHeight[body];
  const long = end - nose;
  switch (body) {
    case 'box':
      return [
        [nose, 22],
        [nose, h * 0.6],
        [nose + 14, h],
        [end, h],
        [end, 22],
      ];
    case 'teardrop':
      return [
        [nose, 18],
        [nose + long * 0.02, h * 0.6],
        [nose + long * 0.2, h],
        [nose + long * 0.5, h * 0.96],
        [nose + long * 0.85, h * 0.6],
        [end, 18],
      ];
    case 'fifth-wheel':
      return [
        [nose, 66],
        [nose, h - 14],
        [nose + 20, h],
        [end, h],
        [end, 26],
        [ball + 60, 26],
        [ball + 60, 66],
      ];
  }
}

/** A window or door of a trailer: along its body as shares of its length, and up in inches. */
type Opening = readonly [from: number, to: number, low: number, high: number];

const openings: Readonly<Record<TrailerBody, readonly Opening[]>> = {
  box: [
    [0.16, 0.4, 62, 88],
    [0.5, 0.6, 27, 96],
    [0.72, 0.9, 62, 88],
  ],
  teardrop: [[0.3, 0.5, 34, 52]],
  'fifth-wheel': [
    [0.06, 0.18, 96, 120],
    [0.42, 0.5, 32, 112],
    [0.6, 0.84, 72, 104],
  ],
};

export function trailerOpenings(
  body: TrailerBody,
  { nose, end }: RigPlan,
): readonly (readonly Point[])[] {
  const long = end - nose;
  return openings[body].map(([from, to, low, high]) => {
    const [a, b] = [nose + from * long, nose + to * long];
    return [
      [a, low],
      [a, high],
      [b, high],
      [b, low],
    ];
  });
}

export type Place = (point: Point) => readonly [number, number];

const curve = line<readonly [number, number]>().curve(curveCatmullRom.alpha(0.5));

/** A smooth line through the points, closed by a straight one. */
export const curvedPath = (points: readonly Point[], place: Place): string =>
  `${curve(points.map((each) => place(each))) ?? ''}Z`;

/** A closed line with its corners rounded by so many pixels at the most. */
export function roundedPath(points: readonly Point[], place: Place, radius: number): string {
  const at = points.map((each) => place(each));
  const steps = at.flatMap((corner, i) => {
    const before = at[(i + at.length - 1) % at.length];
    const after = at[(i + 1) % at.length];
    if (!before || !after) return [];
    const [a, b] = [toward(corner, before, radius), toward(corner, after, radius)];
    return [`${i === 0 ? 'M' : 'L'}${a.join(' ')}Q${corner.join(' ')} ${b.join(' ')}`];
  });
  return `${steps.join('')}Z`;
}

/** From one point toward another by so much, but no further than half way. */
function toward(
  [x, y]: readonly [number, number],
  [u, v]: readonly [number, number],
  by: number,
): readonly [number, number] {
  const far = Math.hypot(u - x, v - y);
  const share = far === 0 ? 0 : Math.min(by / far, 0.5);
  return [x + (u - x) * share, y + (v - y) * share];
}
