import type { Source } from './source';

/** Things chosen from a list, each for a reason, with amounts that add up. */
export type Selection = {
  readonly label: string;
  /** What is added up: name of the amount and its unit. */
  readonly amounts: Readonly<Record<string, string>>;
  readonly items: Readonly<
    Record<
      string,
      {
        readonly label: string;
        /** What it belongs to, where a list is told by groups. */
        readonly group?: string;
        /** A yes/no fact or formula; absent: always. */
        readonly when?: string;
        /** Names of values, by amount. */
        readonly amounts: Readonly<Record<string, string>>;
        readonly because: string;
        readonly source: Source;
      }
    >
  >;
  readonly source: Source;
};

/** Results set in an order of size. */
export type Ranking = {
  readonly label: string;
  readonly first: 'least' | 'most';
  /** Names of values in one unit, with what is said of each. */
  readonly of: Readonly<Record<string, { readonly by: string; readonly says: string }>>;
  readonly source: Source;
};

type SimulatedValue = {
  readonly label: string;
  readonly unit: string;
  /** As of a formula: within what it stays where something stands in for what was not told. */
  readonly within?: readonly [least: string, most: string];
  readonly source: Source;
};

/**
 * Something reckoned step by step: the hours of a day, the legs of a route. Every name inside
 * begins with the simulation's own (`day.charge`); `day.step` counts from 0.
 */
export type Simulation = {
  readonly label: string;
  /** How many steps, or the list whose rows are the steps. */
  readonly steps: number | string;
  /** What is handed from step to step: its value at the start, and after each step. */
  readonly states: Readonly<
    Record<string, SimulatedValue & { readonly start: string; readonly next: string }>
  >;
  /** What is reckoned within a step. */
  readonly values: Readonly<Record<string, SimulatedValue & { readonly is: string }>>;
  readonly source: Source;
};
