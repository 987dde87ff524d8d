import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { readQuantity, wasMisread } from '../../quantity';
import type { CellGiven, FactGiven, FactsGiven, RowGiven } from '../check/given';
import type { Topic } from '../define/shapes';
import { inUnit } from '../formula/words';
import { cellKey, type Inputs, type NumberInput } from '../value/values';
import type { Drawn, DrawShape } from './shapes';

/** An input that is a range, by its key, and what draws it in base units. */
export type Draw = { readonly key: string; readonly told: Drawn; readonly at: Sampler };

/** From two even numbers in [0, 1) to a value. */
type Sampler = (first: number, second: number) => number;

/** `a ± b` and `about a` were written with a peak at a; all else with ends is drawn evenly. */
function shapeOf(given: CellGiven | undefined): DrawShape {
  if (typeof given !== 'string') return 'even';
  const read = readQuantity(given);
  if (wasMisread(read)) return 'even';
  return read.within !== undefined && read.from === read.to ? 'triangle' : 'even';
}

/**
 * Only + − × and rounding to whole numbers stand here, so that every machine draws the same bits.
 * The mean of two even numbers is a triangle with its peak in the middle. A count is drawn among
 * whole numbers.
 */
function sampler(shape: DrawShape, { lo, hi }: NumberInput, counts: boolean): Sampler {
  const width = hi - lo;
  if (shape === 'triangle') {
    const at: Sampler = (first, second) => lo + width * ((first + second) / 2);
    return counts ? (first, second) => Math.round(at(first, second)) : at;
  }
  return counts ? (first) => lo + Math.floor(first * (width + 1)) : (first) => lo + width * first;
}

/** “At least 800 lb” tells no chances: nothing is drawn of it. */
const isRange = ({ lo, hi, status, open, bound }: NumberInput): boolean =>
  status === 'known' && !open && bound === undefined && lo !== hi;

const isRows = (given: FactGiven | undefined): given is readonly RowGiven[] => Array.isArray(given);

/** Every input that is a range, in the order of the topic's facts and of the rows as given. */
export function drawsOf(topic: Topic, inputs: Inputs, facts: FactsGiven): readonly Draw[] {
  const draws: Draw[] = [];
  const add = (
    key: string,
    input: NumberInput,
    unit: string,
    given: CellGiven | undefined,
    place: Pick<Drawn, 'fact' | 'row' | 'column'>,
  ): void => {
    if (!isRange(input)) return;
    const shape = shapeOf(given);
    const counts = unit === '' && Number.isInteger(input.lo) && Number.isInteger(input.hi);
    const shown = unit === '%' ? '1' : unit;
    const told = { ...place, shape, ...inUnit({ lo: input.lo, hi: input.hi }, shown), unit: shown };
    draws.push({ key, told, at: sampler(shape, input, counts) });
  };
  for (const [fact, declared] of Object.entries(topic.facts)) {
    const input = inputs.get(fact);
    const given = facts[fact];
    if (declared.kind === 'quantity' && input?.kind === 'number' && !isRows(given)) {
      add(fact, input, declared.unit, given, { fact });
    }
    if (declared.kind !== 'rows' || input?.kind !== 'rows') continue;
    input.rows.forEach((cells, row) => {
      for (const [column, { unit }] of Object.entries(declared.columns)) {
        const cell = cells[column];
        const written = isRows(given) ? given[row]?.[column] : undefined;
        const place = { fact, row: row + 1, column };
        if (cell) add(cellKey(`${fact}.${column}`, row), cell, unit, written, place);
      }
    });
  }
  return draws;
}

/** Fills the lanes of every draw, lane by lane: what is drawn does not hang on the block's length. */
export type Filler = (lanes: readonly Float64Array[], count: number) => void;

/** 53 even bits of two whole numbers of 32. */
const evenly = (a: number, b: number): number =>
  ((a >>> 5) * 67_108_864 + (b >>> 6)) / 9_007_199_254_740_992;

export function filler(draws: readonly Draw[], seed: number): Filler {
  const random = xoroshiro128plus(seed);
  const next = (): number => {
    const high = random.next();
    return evenly(high, random.next());
  };
  return (lanes, count) => {
    for (let lane = 0; lane < count; lane += 1) {
      draws.forEach(({ told, at }, i) => {
        const first = next();
        const second = told.shape === 'triangle' ? next() : 0;
        const into = lanes[i];
        if (into) into[lane] = at(first, second);
      });
    }
  };
}
