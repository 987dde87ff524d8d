import { hull, type Interval, point, unitOf } from '../../../quantity';
import { drawByDraw } from '../../value/lanes';
import { made, one } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { blend, type NumberValue, noSlopes } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, clash, number } from '../grammar/sorts';

type Rows = readonly (readonly [key: number, value: number])[];

function valueAt(rows: Rows, key: number): number {
  const above = rows.findIndex(([k]) => k >= key);
  const [first, last] = [rows[0], rows.at(-1)];
  if (!first || !last) throw new Error('A table without rows was looked up.');
  if (above === 0) return first[1];
  const [hiRow, loRow] = [rows[above], rows[above - 1]];
  if (!hiRow || !loRow) return last[1];
  return loRow[1] + ((key - loRow[0]) / (hiRow[0] - loRow[0])) * (hiRow[1] - loRow[1]);
}

/** The least and the steepest rise of the lines that a range of keys lies on. */
function slopeOver(rows: Rows, at: Interval): Interval {
  let slope: Interval | undefined;
  rows.forEach(([key, value], i) => {
    const next = rows[i + 1];
    if (!next || next[0] < at.lo || key > at.hi) return;
    const piece = point((next[1] - value) / (next[0] - key));
    slope = slope ? hull(slope, piece) : piece;
  });
  const [start, end] = [rows[0]?.[0] ?? 0, rows.at(-1)?.[0] ?? 0];
  const isBeyond = at.lo < start || at.hi > end;
  return slope ? (isBeyond ? hull(slope, point(0)) : slope) : point(0);
}

function lookedUp(rows: Rows, at: NumberValue): NumberValue {
  const inside = rows.filter(([key]) => key > at.lo && key < at.hi).map(([, value]) => value);
  const seen = [valueAt(rows, at.lo), ...inside, valueAt(rows, at.hi)];
  const range = { lo: Math.min(...seen), hi: Math.max(...seen) };
  if (at.slopes.size === 0) return made(range, noSlopes);
  return made(range, blend(at.slopes, slopeOver(rows, at), noSlopes, one));
}

/** lookup(table, key): straight lines between the rows of a table. */
export const lookup: Kind<'lookup'> = {
  form: {
    by: 'call',
    names: ['lookup'],
    read: (call) => {
      call.wants(call.count === 2, 'lookup(table, key)');
      return { kind: 'lookup', table: call.nameAt(0), at: call.node(1) };
    },
  },
  reckon: ({ table, at }, scope, reckon) =>
    lookedUp(scope.table(table), asNumber(reckon(at, scope))),
  parts: ({ at }) => [at],
  mentions: none,
  asks: ({ table }) => [table],
  uses: (node, at) => {
    at.from(node.table);
    at.part(node.at);
  },
};

/** The rule of its units. */
export const sortLookup: SortOf<'lookup'> = (node, { topic, of }) => {
  const table =
    topic.tables[node.table] ??
    clash(`there is no table “${node.table}”`, 'not-a-table', {
      ...{ found: node.table, options: Object.keys(topic.tables) },
    });
  alike(of(node.at), number(unitOf(table.keyUnit || '1').dimension), 'lookup');
  return number(unitOf(table.valueUnit || '1').dimension);
};

export const drawLookup: Draw<'lookup'> = drawByDraw;
