/** How sure a chance is: `error` is its standard error, √(p (1 − p) ÷ draws). */
export type Chance = { readonly chance: number; readonly error: number };

/** Evenly between its ends, or as a triangle whose peak is in the middle. */
export type DrawShape = 'even' | 'triangle';

/** What was drawn: a fact, or one cell of a list, with the ends of its range in `unit`. */
export type Drawn = {
  readonly fact: string;
  /** Of a list: the row, from 1, and the column's id. */
  readonly row?: number;
  readonly column?: string;
  readonly shape: DrawShape;
  readonly lo: number;
  readonly hi: number;
  readonly unit: string;
};

/** How often what is used of a limit fell into each of equal steps from `lo` to `hi`. */
export type Density = {
  readonly lo: number;
  readonly hi: number;
  readonly unit: string;
  readonly counts: readonly number[];
};

/** Share of all draws that lie at or below `value`. */
export type Quantile = { readonly share: number; readonly value: number };

export type Spread = {
  readonly draws: number;
  readonly seed: number;
  readonly drawn: readonly Drawn[];
  /** Of going over each asked limit; null where it rests on something unknown. */
  readonly limits: Readonly<Record<string, Chance | null>>;
  /** Of each outcome, by its id. */
  readonly outcomes: Readonly<Record<string, Chance>>;
  /** Of each headline result, in its unit; null where it rests on something unknown. */
  readonly values: Readonly<
    Record<string, { readonly unit: string; readonly quantiles: readonly Quantile[] } | null>
  >;
  /** Of each headline result that is a choice: how often it came to which option, or is `unknown`. */
  readonly choices: Readonly<Record<string, Readonly<Record<string, Chance>>>>;
  /** For a drawing: of each asked limit that moves and rests on nothing unknown. */
  readonly densities: Readonly<Record<string, Density>>;
};

export type SpreadOptions = {
  /** A whole number from 1 to 10,000,000. */
  readonly draws: number;
  /** A whole number from 0 to 4,294,967,295. */
  readonly seed: number;
};
