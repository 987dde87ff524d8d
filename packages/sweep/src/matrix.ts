import { towFit } from '@tarebook/rules';
import { type FactsGiven, levels, quickly, type Topic } from '@tarebook/rules/engine';
import type { Catalogue, Entry } from './catalogue';
import { askEngine, roomFor } from './kernel/blocks';
import { inputsOf, type KernelAsked } from './kernel/kernel';
import { pairing, placeOf, type RowByRow } from './kernel/pairs';
import { numberIn } from './wishes';

/** Every vehicle against every trailer. */
export type Matrix = {
  /** The least rated first. */
  readonly vehicles: readonly Entry[];
  /** The lightest first, so that the edge of what fits is seen. */
  readonly trailers: readonly Entry[];
  /** Row by row, each pair as the place of its level among the engine's `levels`. */
  readonly rows: (facts: FactsGiven) => Generator<MatrixRow>;
};

const sides = { rows: 'vehicle.', columns: 'trailer.' } as const;

/** A kernel made for fewer pairs of a kind takes longer than asking the engine about each. */
const worthMaking = 12;
/** A whole catalogue of no more pairs is judged sooner without any kernel. */
const mostByEngine = 8_000;

const byColumn =
  (column: string) =>
  (a: Entry, b: Entry): number =>
    (numberIn(a.cells[column] ?? '') ?? 0) - (numberIn(b.cells[column] ?? '') ?? 0);

/** A row of the matrix, once it is judged. */
export type MatrixRow = { readonly row: number; readonly levels: Uint8Array };

/**
 * What judges all pairs of a catalogue row by row, again and again with other people and another load.
 *
 *     const all = matrixOf(catalogue, '2026-11-01');
 *     for (const { row, levels } of all.rows({ 'load.occupants': [ … ] })) …
 */
export function matrixOf(
  catalogue: Catalogue,
  asOf: string,
  topic: Topic = towFit,
  mostPlain = mostByEngine,
): Matrix {
  const vehicles = catalogue.vehicles.toSorted(byColumn('maxTrailerWeight'));
  const trailers = catalogue.trailers.toSorted(byColumn('gvwr'));
  const plainly = vehicles.length * trailers.length <= mostPlain;
  const read = (entries: readonly Entry[]) =>
    plainly ? [] : entries.map(({ facts }) => inputsOf(topic, facts));
  const [rowInputs, columnInputs] = [read(vehicles), read(trailers)];
  const judge = quickly(topic, { asOf });

  /** All that kernels can tell of a row; without any, everything is left to the engine. */
  function byKernels(facts: FactsGiven): RowByRow | undefined {
    if (plainly) return undefined;
    const inputs = inputsOf(topic, facts);
    const asked: KernelAsked = { topic, sides, asOf, inputs, withRoom: false };
    const rows = rowInputs.map((each) => placeOf(asked, 'rows', () => each));
    const columns = columnInputs.map((each) => placeOf(asked, 'columns', () => each));
    return pairing(asked, undefined, worthMaking)(rows, columns);
  }

  function* rows(facts: FactsGiven): Generator<MatrixRow> {
    const kernels = byKernels(facts);
    const found = roomFor(trailers.length);
    for (const [row, vehicle] of vehicles.entries()) {
      if (kernels) kernels(row, found);
      else found.levels.fill(askEngine);
      const own = Uint8Array.from(trailers, (trailer, column) => {
        const level = found.levels[column] ?? askEngine;
        if (level !== askEngine) return level;
        return levels.indexOf(judge({ ...vehicle.facts, ...trailer.facts, ...facts }).level);
      });
      yield { row, levels: own };
    }
  }

  return { vehicles, trailers, rows };
}
