import { type Inputs, inBase, parametersOn } from '@tarebook/rules/engine';
import { askEngine, type Found } from './found';
import type { Ref } from './graph';
import { inMemory, type Machine } from './in-memory';
import { padded, type Vector, vector } from './lanes';
import type { Marks } from './marks';
import { columnsBound } from './pair-steps';
import type { KernelAsked } from './pairs';
import { caseStore, type StoredKin, sideStore } from './side-store';
import { type Special, specialize } from './specialize';
import { block, onePlace, type ReadyStage, readyStage, staged } from './staged';

/** Rows gone through with one block of columns before the next. */
const rowsAtOnce = 64;

/** Bound tiles that are kept; others are bound again. */
const mostTiles = 256;

/** What comes into a stage of a tile, in vectors that are filled for each block. */
function stageOf(special: Special, stage: 'case' | 'rows' | 'columns', n: number) {
  const { steps, stages } = special.staged;
  const into = new Map<Ref, Vector>();
  for (const ref of stages[stage].inputs) into.set(ref, vector(steps[ref]?.sort ?? 'number', n));
  const ready = readyStage(steps, stages[stage], n, (ref) => into.get(ref));
  const sources = [...into].map(([ref, to]) => ({ from: special.inputs.get(ref) ?? -1, to }));
  return { ready, sources };
}

/** A program for some rows and columns told alike, bound to its own vectors, for one block after another. */
function tileOf(special: Special, n: number, by: Machine | undefined) {
  const { steps } = special.staged;
  const ofCase = stageOf(special, 'case', onePlace);
  const rows = stageOf(special, 'rows', rowsAtOnce);
  const columns = stageOf(special, 'columns', n);
  const kept = {
    case: ofCase.ready.kept,
    rows: rows.ready.kept,
    columns: columns.ready.kept,
  };
  const { refresh, run, put } = by
    ? inMemory(special, kept, n, by)
    : columnsBound(special, kept, 0, n);
  const fixed = (ref: Ref): number => steps[ref]?.value ?? 0;
  const single = (ref: Ref): number => ofCase.ready.kept.get(ref)?.of[0] ?? fixed(ref);
  const fill = (
    { sources, ready }: { readonly sources: typeof rows.sources; readonly ready: ReadyStage },
    values: ReadonlyMap<Ref, Vector>,
    from: number,
    size: number,
    value: (ref: Ref) => number,
  ): void => {
    for (const { from: ref, to } of sources) {
      const told = values.get(ref);
      if (told) to.of.set(told.of.subarray(from, from + padded(size)));
    }
    ready.run(value);
  };

  /** All rows with all columns; a pair stands at row × width + column, by their places among all. */
  return (
    setting: ReadonlyMap<Ref, Vector>,
    over: StoredKin,
    across: StoredKin,
    width: number,
    into: Found,
  ): void => {
    fill(ofCase, setting, 0, 1, fixed);
    for (let top = 0; top < over.members.length; top += rowsAtOnce) {
      const height = Math.min(rowsAtOnce, over.members.length - top);
      fill(rows, over.values, over.from + top, height, single);
      for (let from = 0; from < across.members.length; from += n) {
        const members = across.members.subarray(from, from + n);
        fill(columns, across.values, across.from + from, members.length, single);
        refresh();
        for (let row = 0; row < height; row += 1) {
          run(row);
          const start = (over.members[top + row] ?? 0) * width;
          put(into, start, members);
        }
      }
    }
  };
}

/** A program that judges more pairs is put into WebAssembly: from there on that has been worth its making. */
const soonWorthIt = 20_000;

/** Lanes that leave few empty: a kin is gone through in blocks of the same length. */
function lanesFor(size: number): number {
  const blocks = Math.ceil(size / block);
  // Few lengths, so that kin of nearly the same size share a tile.
  return Math.min(block, Math.ceil(size / blocks / 32) * 32);
}

type JudgeRows = (rows: readonly Inputs[]) => (into: Found) => void;

/**
 * Makes columns ready, and gives what judges some rows with all of them: every program is bound once
 * for rows and columns told alike, however many come, and in whatever case they are set one after
 * another. Nothing of a pair is kept.
 *
 *     columns ──► kin ─┐
 *     some rows ─► kin ┴► tile (rows told alike × columns told alike) ─► found
 */
export function tilesIn(
  { topic, sides, asOf, program, withRoom, moving }: KernelAsked,
  by?: Machine,
  mostPlain = soonWorthIt,
): (facts: Inputs, columns: readonly Inputs[]) => JudgeRows {
  const outputs = [...program.verdict, ...(withRoom ? program.room : [])];
  const all = staged(program.steps, outputs);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  const setting = { topic, sides, parameters, moving };
  const caseIn = caseStore(all, setting);
  const [ofColumns, ofRows] = [sideStore(all, setting, 'columns'), sideStore(all, setting, 'rows')];

  type Tile = ReturnType<typeof tileOf>;
  type KeptTile = {
    readonly by: readonly Marks[];
    readonly special: Special;
    tile: Tile;
    pairs: number;
  };
  const tiles = new Map<string, KeptTile>();
  const tileFor = (ofCase: Marks, row: StoredKin, column: StoredKin): Tile => {
    const key = `${row.likeness}\n${column.likeness}`;
    const marks = [ofCase, row.marks, column.marks];
    const n = lanesFor(column.members.length);
    let kept = tiles.get(key);
    if (!kept?.by.every((each, at) => each === marks[at])) {
      const special = specialize(all, outputs, (ref) =>
        marks.find((each) => each.has(ref))?.get(ref),
      );
      if (tiles.size >= mostTiles) tiles.clear();
      kept = { by: marks, special, tile: tileOf(special, n, undefined), pairs: 0 };
      tiles.set(key, kept);
    }
    const before = kept.pairs;
    kept.pairs += row.members.length * column.members.length;
    const isWorthIt = before <= mostPlain && kept.pairs > mostPlain;
    if (by && isWorthIt) kept.tile = tileOf(kept.special, n, by);
    return kept.tile;
  };

  return (facts, columns) => {
    const ofCase = caseIn(facts);
    for (const each of [ofColumns, ofRows]) each.under(facts);
    const across = ofColumns.read(columns).filter(({ isWithin }) => isWithin);
    return (rows) => {
      const kinds = ofRows.read(rows).filter(({ isWithin }) => isWithin);
      return (into) => {
        into.levels.fill(askEngine);
        if (!ofCase.isWithin) return;
        for (const over of kinds) {
          for (const column of across) {
            const tile = tileFor(ofCase.marks, over, column);
            tile(ofCase.values, over, column, columns.length, into);
          }
        }
      };
    };
  };
}

/** The same for columns that are made ready once, in one case. */
export const tiling = (
  asked: KernelAsked,
  facts: Inputs,
  columns: readonly Inputs[],
  by?: Machine,
  mostPlain?: number,
): JudgeRows => tilesIn(asked, by, mostPlain)(facts, columns);
