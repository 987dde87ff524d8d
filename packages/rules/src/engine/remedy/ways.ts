import { endsOf } from '../answer/named';
import type { Change, Leave, Scale, SetTo } from '../define/changes';
import type { Input, Inputs, NumberInput } from '../value/values';
import { type Text, text } from '../words/value';
import { edited, exactInput, withCell, withoutRow } from './edits';
import { lessOf, shifting } from './lines';
import type { Told } from './shapes';
import {
  exactly,
  factorOf,
  isPointInput,
  type Line,
  type Place,
  rowNameIn,
  rowsOf,
  tidy,
  toldOf,
  type Way,
} from './way';

/** Whether a row is one that nobody is told to do without. */
function isKept(name: string, { keeps }: Leave): boolean {
  if (!keeps) return false;
  const words = ` ${name.toLowerCase().replaceAll(/[^a-z]+/g, ' ')}`;
  const rest = keeps.butNot.reduce((all, each) => all.replaceAll(` ${each}`, ' '), words);
  return keeps.named.some((each) => rest.includes(` ${each}`));
}

function leaving(place: Place, change: Leave): readonly Way[] {
  const { fact, column, keepFirst = 0 } = change;
  return rowsOf(place, fact, column)
    .slice(keepFirst)
    .filter(({ index }) => !isKept(rowNameIn(place, fact, index), change))
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
export const barred = (inputs: Inputs, { unlessKnown }: Change): Text | undefined =>
  unlessKnown && isKnown(inputs, unlessKnown.fact) ? text(unlessKnown.says) : undefined;

/** What a change makes stale in this case, in words. */
export const reminder = (inputs: Inputs, { remind }: Change): Text | undefined =>
  remind && isKnown(inputs, remind.known) ? text(remind.says) : undefined;

/** Everything that could be changed in a case, in the order of the topic and of the rows. */
export function allWays(place: Place): readonly Way[] {
  const { changes = [] } = place.bench.topic;
  return changes.flatMap((each) => waysOf(place, each));
}
