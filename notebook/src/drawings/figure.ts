import type { CaseDocument } from '@tarebook/casebook';
import type { Answer, Ends, State } from '@tarebook/rules/engine';
import type { Interval } from '@tarebook/rules/quantity';

/** What rests on an axle or on the ball, and what may. */
export type Load = {
  readonly label: string;
  /** Undefined where it is not known. */
  readonly used: Ends | undefined;
  /** Undefined where no rating was given. */
  readonly limit: Ends | undefined;
  readonly state: State;
};

export type VehicleBody = 'sedan' | 'crossover' | 'van' | 'pickup';
export type TrailerBody = 'box' | 'teardrop' | 'fifth-wheel';
/** What the bars of a weight-distributing hitch do; none: there is no such hitch in use. */
export type Bars = 'none' | 'slack' | 'tight' | 'unsure';

/** A vehicle and its trailer from the side. Distances in inches; undefined: not known. */
export type RigFigure = {
  readonly kind: 'rig';
  readonly vehicle: VehicleBody;
  readonly trailer: TrailerBody;
  readonly trailerAxles: number;
  readonly wheelbase: number | undefined;
  readonly overhang: number | undefined;
  readonly ballToAxle: number | undefined;
  readonly front: Load;
  readonly rear: Load;
  readonly ball: Load;
  readonly axles: Load;
  readonly bars: Bars;
};

export type Axis = {
  readonly label: string;
  /** A unit symbol, or '' for a count. */
  readonly unit: string;
  /** What lies farther out is cut off at the edge; absent: everything is shown. */
  readonly most?: number;
  /** An amount: the axis reaches down to nothing. */
  readonly fromZero?: true;
};

/** In the units of the axes; y is a range where it is not known exactly. */
export type Point = {
  readonly x: number;
  readonly y: Interval;
  /** What is there, for the table. */
  readonly name?: string;
};

/** In order of x. */
export type Line = { readonly label: string; readonly points: readonly Point[] };

/** A level of y, or a place on x, that is not to be passed. */
export type Stop = { readonly label: string; readonly along: 'x' | 'y'; readonly at: number };

/** Lines over x, where to stop, and where this case stands. */
export type CurveFigure = {
  readonly kind: 'curve';
  readonly title: string;
  readonly x: Axis;
  readonly y: Axis;
  readonly lines: readonly Line[];
  readonly stops?: readonly Stop[];
  /** Where it stands: a point, or a band where x is a range. */
  readonly here?: { readonly label: string; readonly x: Interval; readonly y?: number };
  /** Where a line is lifted at once, as by a charge. */
  readonly lifts?: {
    readonly label: string;
    readonly at: readonly {
      readonly x: number;
      readonly from: Interval;
      readonly to: Interval;
    }[];
  };
  /** What else must be known to read it. */
  readonly note?: string;
};

/** How many of many draws fell where, and the limit among them. */
export type SpreadFigure = {
  readonly kind: 'spread';
  readonly title: string;
  readonly x: Axis;
  /** Side by side, from the lowest up. */
  readonly bins: readonly { readonly from: number; readonly to: number; readonly count: number }[];
  readonly limit?: { readonly label: string; readonly at: number };
};

export type Figure = RigFigure | CurveFigure | SpreadFigure;

/** What a topic's figures are made from. */
export type Drawn = { readonly doc: CaseDocument; readonly answer: Answer };

/** The figures of a case, from its numbers; none where there is nothing to show. */
export type FiguresOf = (drawn: Drawn) => readonly Figure[];
