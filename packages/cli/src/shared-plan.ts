import {
  type FactsGiven,
  isCell,
  isRows,
  mostDraws,
  mostSeed,
  readHouse,
  type SpreadOptions,
} from '@tarebook/rules/engine';
import type { Swept } from '@tarebook/sweep/many';
import { BadInput, named } from './files';
import type { SweepPlan } from './sweep-job';

/*
 * What machines leave for each other in a shared folder. Whoever else can write there may have left
 * something else, so that nothing is taken on trust.
 */

function parsedFrom(text: string, file: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new BadInput(`${named(file)}: this is no JSON; begin the sweep anew.`);
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const areFacts = (value: unknown): value is FactsGiven =>
  isRecord(value) && Object.values(value).every((each) => isCell(each) || isRows(each));

const isSwept = (value: unknown): value is Swept =>
  isRecord(value) && typeof value.name === 'string' && areFacts(value.facts);

const areSwept = (value: unknown): value is readonly Swept[] =>
  Array.isArray(value) && value.every(isSwept);

const isWhole = (value: unknown, least: number, most: number): boolean =>
  Number.isInteger(value) && Number(value) >= least && Number(value) <= most;

const isSpread = (value: unknown): value is SpreadOptions =>
  isRecord(value) && isWhole(value.draws, 1, mostDraws) && isWhole(value.seed, 0, mostSeed);

/** The plan of a sweep as it stands in its folder; parts are written there and nowhere else. */
export function planOf(text: string, file: string, folder: string): SweepPlan {
  const plan = parsedFrom(text, file);
  const { facts, asOf, layer, trailers, spread }: Readonly<Record<string, unknown>> = isRecord(plan)
    ? plan
    : {};
  const isDrawn = spread === undefined || isSpread(spread);
  if (!areFacts(facts) || typeof asOf !== 'string' || !areSwept(trailers) || !isDrawn) {
    throw new BadInput(`${named(file)}: this is no plan of a sweep; begin the sweep anew.`);
  }
  const [house = null] = layer === null ? [] : readHouse(JSON.stringify(layer ?? {}));
  const draws = isSpread(spread) ? { spread } : {};
  return { facts, asOf, layer: house, trailers, folder, ...draws };
}

/** The vehicles of a part. */
export function vehiclesOf(text: string, file: string): readonly Swept[] {
  const vehicles = parsedFrom(text, file);
  if (areSwept(vehicles)) return vehicles;
  throw new BadInput(`${named(file)}: these are no vehicles of a sweep; begin the sweep anew.`);
}
