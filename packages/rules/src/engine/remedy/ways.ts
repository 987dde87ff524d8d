import { unitOf } from '../../quantity';
import { endsOf } from '../answer/named';
import type { FactsGiven } from '../check/facts';
import type { Change, Leave, Less, Scale, SetTo, Shift } from '../define/changes';
import type { Column, QuantityFact } from '../define/shapes';
import type { Input, Inputs, NumberInput } from '../formula/values';
import { edited, exactInput, withCell, withoutRow } from './edits';
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

const factorOf = (unit: string): number => (unit === '' ? 1 : unitOf(unit).factor);
const exactly = (at: number, unit: string): Told => ({ lo: at, hi: at, unit });
const tidy = (value: number): number => Math.round(value * 1e9) / 1e9;
const inUnit = (value: number, unit: string): number => tidy(value / factorOf(unit));
const toldOf = (input: NumberInput, unit: string): Told => {
  if (input.status === 'silent' && input.open) return null;
  if (input.open) return 'unknown';
  return { lo: inUnit(input.lo, unit), hi: inUnit(input.hi, unit), unit };
};

const isPointInput = (input: NumberInput | undefined): input is NumberInput =>
  input !== undefined && !input.open && input.lo === input.hi;

export type Place = {
  readonly bench: Bench;
  readonly inputs: Inputs;
  readonly judged: Judged;
  readonly given: FactsGiven;
};

function rowNameIn({ given }: Place, fact: string, row: number): string {
  const rows = given[fact];
  const name = typeof rows === 'object' && !('lo' in rows) ? rows[row]?.label : undefined;
  return typeof name === 'string' && name !== '' ? name : `row ${row + 1}`;
}

function rowsOf({ bench, inputs }: Place, fact: string, column: string) {
  const input = inputs.get(fact);
  const declared = bench.topic.facts[fact];
  const want = declared?.kind === 'rows' ? declared.columns[column] : undefined;
  if (input?.kind !== 'rows' || !want) return [];
  return input.rows.flatMap((row, index) => {
    const cell = row[column];
    return cell ? [{ cell, index, want }] : [];
  });
}

function leaving(place: Place, change: Leave): readonly Way[] {
  const { fact, column, keepFirst = 0 } = change;
  return rowsOf(place, fact, column)
    .slice(keepFirst)
    .map(({ cell, index, want }) => ({
      change,
      row: index,
      rowName: rowNameIn(place, fact, index),
      unit: want.unit,
      from: toldOf(cell, want.unit),
      to: () => 'none',
      edit: (inputs) => withoutRow(inputs, fact, index),
      size: () => cell.hi,
    }));
}

/** Along a line of one number: a fact of its own, or the cell of a row. */
function along(
  change: Less | Shift,
  input: NumberInput,
  unit: string,
  line: Line,
  at: { readonly row?: number; readonly rowName: string },
): Way {
  const factor = factorOf(unit);
  const { fact, column } = change;
  const { row } = at;
  return {
    change,
    ...at,
    unit,
    line,
    from: toldOf(input, unit),
    to: (x) => exactly(x, unit),
    edit: (inputs, x) => {
      const made = exactInput(x * factor);
      return row === undefined || column === undefined
        ? edited(inputs, fact, made)
        : withCell(inputs, fact, row, column, made);
    },
    size: (x) => (input.open ? x * factor : Math.abs(input.hi - x * factor)),
  };
}

function lessOf(place: Place, change: Less): readonly Way[] {
  const { fact, column, step } = change;
  if (column !== undefined) {
    return rowsOf(place, fact, column).flatMap(({ cell, index, want }) => {
      const start = inUnit(cell.lo, want.unit);
      // The whole row is another change: it is left out, and no row of nothing stays behind.
      if (!isPointInput(cell) || start <= step) return [];
      const line: Line = { start, ends: [step], startCounts: false, step };
      const rowName = rowNameIn(place, fact, index);
      return [along(change, cell, want.unit, line, { row: index, rowName })];
    });
  }
  const input = place.inputs.get(fact);
  const declared = place.bench.topic.facts[fact];
  if (input?.kind !== 'number' || declared?.kind !== 'quantity' || input.open) return [];
  const start = inUnit(input.lo, declared.unit);
  const startCounts = input.lo < input.hi;
  if (start <= declared.least && !startCounts) return [];
  const line: Line = { start, ends: [declared.least], startCounts, step };
  return [along(change, input, declared.unit, line, { rowName: '' })];
}

/** How far a place or setting may go, in its unit; undefined where that cannot be told. */
function reach(
  { inputs }: Place,
  { within }: Shift,
  want: Column | QuantityFact,
): readonly [least: number, most: number] | undefined {
  if (!within) return [want.least, want.most];
  const of = inputs.get(within.of);
  if (of?.kind !== 'number' || !isPointInput(of)) return undefined;
  const length = of.lo / factorOf(want.unit);
  return [tidy(within.least * length), tidy(within.most * length)];
}

function lineBetween(start: number, [least, most]: readonly [number, number], step: number): Line {
  const ends = start < least ? [most] : start > most ? [least] : [most, least];
  return { start, ends: ends.filter((end) => end !== start), startCounts: false, step };
}

function shifting(place: Place, change: Shift): readonly Way[] {
  const { fact, column, step } = change;
  if (column !== undefined) {
    return rowsOf(place, fact, column).flatMap(({ cell, index, want }) => {
      const between = reach(place, change, want);
      if (!isPointInput(cell) || !between) return [];
      const line = lineBetween(inUnit(cell.lo, want.unit), between, step);
      const rowName = rowNameIn(place, fact, index);
      return [along(change, cell, want.unit, line, { row: index, rowName })];
    });
  }
  const input = place.inputs.get(fact);
  const declared = place.bench.topic.facts[fact];
  if (input?.kind !== 'number' || declared?.kind !== 'quantity') return [];
  const between = reach(place, change, declared);
  if (!between) return [];
  const [least, most] = between;
  const line = isPointInput(input)
    ? lineBetween(inUnit(input.lo, declared.unit), between, step)
    : { start: least, ends: [most], startCounts: true, step };
  return [along(change, input, declared.unit, line, { rowName: '' })];
}

function scaling(place: Place, change: Scale): readonly Way[] {
  const { bench, inputs, judged } = place;
  const { fact, scaled, shown, step, least, rowsAtLeast = 0 } = change;
  const told = inputs.get(fact);
  if (told?.kind === 'rows' && told.rows.length < rowsAtLeast) return [];
  const now = endsOf(bench.compiled, judged.run, shown);
  if (!(now.lo > 0) || !Number.isFinite(now.hi)) return [];
  const start = now.hi;
  const factor = factorOf(now.unit);
  const line: Line = { start, ends: [tidy(least * start)], startCounts: false, step };
  const shrunk = (input: NumberInput, by: number): NumberInput =>
    input.open || input.hi === 0 ? input : { ...input, lo: input.lo * by, hi: input.hi * by };
  const edit = (before: Inputs, x: number): Inputs => {
    const by = x / start;
    return scaled.reduce<Inputs>((all, name) => {
      const input = all.get(name);
      if (input?.kind === 'number') return edited(all, name, shrunk(input, by));
      const dot = name.lastIndexOf('.');
      const list = name.slice(0, dot);
      const rows = all.get(list);
      const column = name.slice(dot + 1);
      if (rows?.kind !== 'rows') return all;
      return rows.rows.reduce<Inputs>((kept, row, index) => {
        const cell = row[column];
        return cell ? withCell(kept, list, index, column, shrunk(cell, by)) : kept;
      }, all);
    }, before);
  };
  return [
    {
      change,
      rowName: '',
      unit: now.unit,
      line,
      from: now,
      to: (x) => exactly(x, now.unit),
      edit,
      size: (x) => Math.abs(start - x) * factor,
    },
  ];
}

function setting({ bench, inputs }: Place, change: SetTo): readonly Way[] {
  const { fact, to } = change;
  const before = inputs.get(fact);
  const declared = bench.topic.facts[fact];
  const unit = declared?.kind === 'quantity' ? declared.unit : '';
  const way = (made: Input, from: Told, after: Told): Way => ({
    change,
    rowName: '',
    unit,
    from,
    to: () => after,
    edit: (all) => edited(all, fact, made),
    size: () => 0,
  });
  if ('option' in to) {
    if (before?.kind !== 'among') return [];
    const { options, status } = before;
    const [only, more] = options;
    if (only === to.option && more === undefined) return [];
    const from = status === 'silent' ? null : status === 'unknown' ? 'unknown' : (only ?? null);
    return [way({ kind: 'among', options: [to.option], status: 'known' }, from, to.option)];
  }
  const same = inputs.get(to.sameAs);
  if (before?.kind !== 'number' || same?.kind !== 'number' || !isPointInput(same)) return [];
  if (before.lo === same.lo && before.hi === same.hi) return [];
  return [way(exactInput(same.lo), toldOf(before, unit), toldOf(same, unit))];
}

function waysOf(place: Place, change: Change): readonly Way[] {
  switch (change.kind) {
    case 'leave':
      return leaving(place, change);
    case 'less':
      return lessOf(place, change);
    case 'shift':
      return shifting(place, change);
    case 'scale':
      return scaling(place, change);
    case 'set':
      return setting(place, change);
  }
}

const isKnown = (inputs: Inputs, fact: string): boolean => inputs.get(fact)?.status === 'known';

/** Whether a change by itself is to be thought of in this case. */
export function applies(inputs: Inputs, { onlyIf }: Change): boolean {
  if (!onlyIf) return true;
  const input = inputs.get(onlyIf.fact);
  return input?.kind === 'among' && input.options.every((option) => option === onlyIf.is);
}

/** Why the effect of a change cannot be reckoned in this case; undefined where it can. */
export const barred = (inputs: Inputs, { unlessKnown }: Change): string | undefined =>
  unlessKnown && isKnown(inputs, unlessKnown.fact) ? unlessKnown.says : undefined;

/** What a change makes stale in this case, in words. */
export const reminder = (inputs: Inputs, { remind }: Change): string | undefined =>
  remind && isKnown(inputs, remind.known) ? remind.says : undefined;

/** Everything that could be changed in a case, in the order of the topic and of the rows. */
export function allWays(place: Place): readonly Way[] {
  const { changes = [] } = place.bench.topic;
  return changes.flatMap((each) => waysOf(place, each));
}
