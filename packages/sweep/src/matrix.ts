import { type FactsGiven, levels, quickly, type Topic } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import type { Catalogue, Entry } from './catalogue';
import { askEngine, roomFor } from './kernel/found';
import { inputsOf } from './kernel/inputs';
import { pairing, type RowByRow } from './kernel/pairs';
import { type Program, programOf } from './kernel/program';
import { towSides } from './kernel/sides';
import { numberIn } from './wishes';

/** Every vehicle against every trailer. */
export type Matrix = {
  /** The least rated first. */
  readonly vehicles: readonly Entry[];
  /** The lightest first, so that the edge of what fits is seen. */
  readonly trailers: readonly Entry[];
  /**
   * Row by row, each pair as the place of its level among the engine's `levels`.
   *
   * @param settled what was settled for facts that reach as far as these: it is not judged again
   */
  readonly rows: (facts: FactsGiven, settled?: Settled) => Generator<MatrixRow>;
  /**
   * What comes out the same wherever the facts lie that a case tells as ranges, gone through row by
   * row: the pairs that are stopped at every weight between two, and those that fit at every one.
   *
   * @param wider what was settled for facts that reach farther
   */
  readonly settle: (within: FactsGiven, wider?: Settled) => Generator<undefined, Settled>;
};

/** Pairs whose level is settled, row after row; all others stand as not judged. */
export type Settled = { readonly levels: Uint8Array };

/** A whole catalogue of no more pairs is judged sooner than a program is made. */
const mostByEngine = 8_000;

const byColumn =
  (column: string) =>
  (a: Entry, b: Entry): number =>
    (numberIn(a.cells[column] ?? '') ?? 0) - (numberIn(b.cells[column] ?? '') ?? 0);

/** A row of the matrix, once it is judged; rows of one asking stand one after another in one buffer. */
export type MatrixRow = { readonly row: number; readonly levels: Uint8Array };

/**
 * What judges all pairs of a catalogue row by row, again and again with other people and another load.
 *
 *     const all = matrixOf(catalogue, '2026-11-01');
 *     for (const { row, levels } of all.rows({ 'load.occupants': [ … ] })) …
 *
 * @param program the topic's program, where it is at hand; else it is made first
 * @param only rows that are judged here, where others are judged elsewhere
 */
export function matrixOf(
  catalogue: Catalogue,
  asOf: string,
  topic: Topic = towFit,
  program?: Program,
  mostPlain = program ? 0 : mostByEngine,
  only: (row: number) => boolean = () => true,
): Matrix {
  const vehicles = catalogue.vehicles.toSorted(byColumn('maxTrailerWeight'));
  const trailers = catalogue.trailers.toSorted(byColumn('gvwr'));
  const judge = quickly(topic, { asOf });
  const isPlain = vehicles.length * trailers.length <= mostPlain;
  const own = [...vehicles.keys()].filter(only);
  const ownVehicles = own.flatMap((row) => vehicles[row] ?? []);
  const byKernels = isPlain ? undefined : kernelsOver(ownVehicles, trailers);
  /** Ranges are told otherwise than exact figures: what is made for the one would ask more of the other. */
  let byRanges: typeof byKernels;

  function kernelsOver(rows: readonly Entry[], columns: readonly Entry[]) {
    const asked = { topic, sides: towSides, asOf, withRoom: false };
    const { places: placed, over } = pairing({
      ...asked,
      program: program ?? programOf(topic, towSides),
    });
    const read = (entries: readonly Entry[]) => entries.map((each) => inputsOf(topic, each.facts));
    const set = over(placed('rows', read(rows)), placed('columns', read(columns)));
    return (facts: FactsGiven): RowByRow => set(inputsOf(topic, facts));
  }

  const room = roomFor(trailers.length);
  const order = [...levels];
  /** Whatever else may hold: what certainly stops does, and where nothing may be wrong all is well. */
  const settledLevels = new Set([order.indexOf('stop'), order.indexOf('ok')]);
  const notJudged = (): Uint8Array => new Uint8Array(own.length * trailers.length).fill(askEngine);
  const rowIn = (all: Uint8Array, place: number): Uint8Array =>
    all.subarray(place * trailers.length, (place + 1) * trailers.length);

  function* rows(facts: FactsGiven, settled?: Settled): Generator<MatrixRow> {
    const kernels = byKernels?.(facts);
    const all = settled?.levels.slice() ?? notJudged();
    for (const [place, row] of own.entries()) {
      const found = rowIn(all, place);
      kernels?.(place, { ...room, levels: found }, settled !== undefined);
      const vehicle = vehicles[row];
      for (let at = found.indexOf(askEngine); at >= 0; at = found.indexOf(askEngine, at + 1)) {
        const { level } = judge({ ...vehicle?.facts, ...trailers[at]?.facts, ...facts });
        found[at] = order.indexOf(level);
      }
      yield { row, levels: found };
    }
  }

  function* settle(within: FactsGiven, wider?: Settled): Generator<undefined, Settled> {
    const all = wider?.levels.slice() ?? notJudged();
    if (isPlain) return { levels: all };
    byRanges ??= kernelsOver(ownVehicles, trailers);
    const kernels = byRanges(within);
    for (const place of own.keys()) {
      const found = rowIn(all, place);
      kernels(place, { ...room, levels: found }, wider !== undefined);
      for (let at = 0; at < found.length; at += 1) {
        if (!settledLevels.has(found[at] ?? askEngine)) found[at] = askEngine;
      }
      yield undefined;
    }
    return { levels: all };
  }

  return { vehicles, trailers, rows, settle };
}
