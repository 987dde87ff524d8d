import { unitOf } from '../../quantity';
import { type FactsGiven, isRows } from '../check/given';
import type { Change } from '../define/changes';
import type { Inputs, NumberInput } from '../value/values';
import type { Told } from './shapes';
import type { Bench, Judged } from './trial';

/** The values a change can be moved along, in its own unit. */
export type Line = {
  readonly start: number;
  /** As far as it goes; two where it goes both ways. */
  readonly ends: readonly number[];
  /** Whether the start is a change already: the fact is a range there, or not told. */
  readonly startCounts: boolean;
  readonly step: number;
};

/** One change as it stands in one case: of this fact or row, from here to there. */
export type Way = {
  readonly change: Change;
  /** From 0. */
  readonly row?: number;
  readonly rowName: string;
  readonly unit: string;
  readonly line?: Line;
  readonly from: Told;
  readonly to: (x: number) => Told;
  readonly edit: (inputs: Inputs, x: number) => Inputs;
  /** How much changes, in base units. */
  readonly size: (x: number) => number;
};

/** The case in which ways are looked for. */
export type Place = {
  readonly bench: Bench;
  readonly inputs: Inputs;
  readonly judged: Judged;
  readonly given: FactsGiven;
};

export const factorOf = (unit: string): number => (unit === '' ? 1 : unitOf(unit).factor);
export const exactly = (at: number, unit: string): Told => ({ lo: at, hi: at, unit });
export const tidy = (value: number): number => Math.round(value * 1e9) / 1e9;
export const inUnit = (value: number, unit: string): number => tidy(value / factorOf(unit));
export const toldOf = (input: NumberInput, unit: string): Told => {
  if (input.status === 'silent' && input.open) return null;
  if (input.open) return 'unknown';
  return { lo: inUnit(input.lo, unit), hi: inUnit(input.hi, unit), unit };
};

export const isPointInput = (input: NumberInput | undefined): input is NumberInput =>
  input !== undefined && !input.open && input.lo === input.hi;

export function rowNameIn({ given }: Place, fact: string, row: number): string {
  const rows = given[fact];
  const name = isRows(rows) ? rows[row]?.label : undefined;
  return typeof name === 'string' ? name : '';
}

export function rowsOf({ bench, inputs }: Place, fact: string, column: string) {
  const input = inputs.get(fact);
  const declared = bench.topic.facts[fact];
  const want = declared?.kind === 'rows' ? declared.columns[column] : undefined;
  if (input?.kind !== 'rows' || !want) return [];
  return input.rows.flatMap((row, index) => {
    const cell = row[column];
    return cell ? [{ cell, index, want }] : [];
  });
}
