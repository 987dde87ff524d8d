import type { Under } from '@tarebook/casebook';
import { type Topic, topics } from '@tarebook/rules';
import {
  type HouseLayer,
  InputError,
  mostDraws,
  mostSeed,
  nearest,
  readHouse,
  type SpreadOptions,
  withHouse,
} from '@tarebook/rules/engine';
import { BadInput, named, readText } from './files';

type Flags = Readonly<Record<string, unknown>>;

const text = (flag: unknown): string | undefined => (typeof flag === 'string' ? flag : undefined);

/** Each problem of the input on a line of its own, behind the name of the file. */
export function asBadInput(file: string, problem: unknown): BadInput {
  if (!(problem instanceof InputError)) throw problem;
  return new BadInput(
    problem.message
      .split('\n')
      .map((line) => `${named(file)}: ${line}`)
      .join('\n'),
  );
}

type Shelf = Readonly<Record<string, Topic>>;

function checkLayer(layer: HouseLayer, among: Shelf): void {
  const topic = Object.hasOwn(among, layer.topic) ? among[layer.topic] : undefined;
  if (topic) {
    withHouse(topic, layer);
    return;
  }
  const near = nearest(layer.topic, Object.keys(among));
  const hint = near === undefined ? '' : ` Did you mean ${near}?`;
  const there = Object.keys(among).join(', ');
  throw new BadInput(`there is no topic “${layer.topic}”; there are ${there}.${hint}`);
}

/**
 * The layers of a house file, each held against its topic.
 *
 * @throws BadInput when the file cannot be read, or a layer moves what is not the house's to move
 */
async function houseFrom(file: string, among: Shelf): Promise<readonly HouseLayer[]> {
  const source = await readText(file);
  try {
    const layers = readHouse(source);
    for (const layer of layers) checkLayer(layer, among);
    return layers;
  } catch (problem) {
    if (problem instanceof BadInput) throw new BadInput(`${named(file)}: ${problem.message}`);
    throw asBadInput(file, problem);
  }
}

function dayFrom(flag: string | undefined): string | undefined {
  if (flag === undefined) return undefined;
  const date = new Date(`${flag}T00:00:00Z`);
  const isDay =
    /^\d{4}-\d{2}-\d{2}$/.test(flag) &&
    !Number.isNaN(date.getTime()) &&
    date.toISOString().startsWith(flag);
  if (isDay) return flag;
  throw new BadInput(`--as-of: “${flag.slice(0, 40)}” is not a day; write it as 2026-11-01.`);
}

/**
 * `--house FILE` and `--as-of DAY`.
 *
 * @param among the rule sets a layer may be of, those of `--topics` too
 */
export async function underFrom(flags: Flags, among: Shelf = topics): Promise<Under> {
  const file = text(flags.house);
  const asOf = dayFrom(text(flags['as-of']));
  return {
    ...(asOf !== undefined && { asOf }),
    ...(file !== undefined && { house: await houseFrom(file, among) }),
  };
}

function whole(flag: string, given: string, least: number, most: number): number {
  const value = /^\d{1,12}$/.test(given) ? Number(given) : Number.NaN;
  if (value >= least && value <= most) return value;
  const ends = `${least.toLocaleString('en-US')} to ${most.toLocaleString('en-US')}`;
  throw new BadInput(`${flag}: “${given.slice(0, 40)}” is not a whole number from ${ends}.`);
}

/** `--spread N --seed S`; the seed is 1 where none is given. */
export function spreadFrom(flags: Flags): SpreadOptions | undefined {
  const [draws, seed] = [text(flags.spread), text(flags.seed)];
  if (draws === undefined) {
    if (seed === undefined) return undefined;
    throw new BadInput('--seed: it belongs to --spread; give the number of draws too.');
  }
  return {
    draws: whole('--spread', draws, 1, mostDraws),
    seed: seed === undefined ? 1 : whole('--seed', seed, 0, mostSeed),
  };
}
