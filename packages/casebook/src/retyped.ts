import type { Nodes, RootContent, Table, TableCell, TableRow, Text } from 'mdast';

/** A text and its blocks. */
export type Tree = { readonly source: string; readonly children: readonly RootContent[] };

/** `source.slice(from, to)` became `text`. */
type Edit = { readonly from: number; readonly to: number; readonly text: string };

/** A cell between two bars of one line, which stand at `open` and `close`. */
type Place = { readonly cell: TableCell; readonly open: number; readonly close: number };

/** What stands for nothing but itself in a cell, whatever it stands beside. */
const plain = /^[\p{L}\p{N} .,+\-–−±×%/'’"″′“”()½…]*$/u;
/** Such an address becomes a link though its characters are plain. */
const address = /www\./i;

const isPlain = (text: string): boolean =>
  plain.test(text) && !address.test(text) && text.trim() !== '';

function editBetween(before: string, after: string): Edit {
  const most = Math.min(before.length, after.length);
  let from = 0;
  while (from < most && before[from] === after[from]) from += 1;
  let same = 0;
  while (same < most - from && before.at(-1 - same) === after.at(-1 - same)) same += 1;
  return { from, to: before.length - same, text: after.slice(from, after.length - same) };
}

type Point = { line: number; column: number; offset?: number | undefined };

/** Without a position a node is nowhere: no comparison with it holds. */
const startOf = (node: Nodes): number => node.position?.start.offset ?? Number.NaN;
const endOf = (node: Nodes): number => node.position?.end.offset ?? Number.NaN;

const around = <T extends Nodes>(nodes: readonly T[], { from, to }: Edit): T | undefined =>
  nodes.find((node) => startOf(node) <= from && to <= endOf(node));

/**
 * The cell that an edit stays inside of. Only a row that begins with a bar will do, in a table that
 * stands in nothing else: such a line is a row whatever its cells say.
 *
 *     | `vehicle.gvwr` Rating | 5,500 lb | label |
 *                             open       close
 */
function cellAround({ source, children }: Tree, edit: Edit): Place | undefined {
  const tables = children.filter((node): node is Table => node.type === 'table');
  const rows: readonly TableRow[] = around(tables, edit)?.children.slice(1) ?? [];
  const row = around(rows, edit);
  if (!row || source[startOf(row)] !== '|') return undefined;
  for (const cell of row.children) {
    const open = startOf(cell);
    const close = source.indexOf('|', open + 1);
    if (source[open] !== '|' || close < 0 || close >= endOf(row)) continue;
    if (open < edit.from && edit.to <= close) return { cell, open, close };
  }
  return undefined;
}

/**
 * The blocks of `source`, had from those of a text that differs from it in the plain characters of
 * one cell alone; undefined where the two differ in anything else. The old blocks stay as they are.
 */
export function retyped(before: Tree, source: string): readonly RootContent[] | undefined {
  if (before.source === source) return before.children;
  const edit = editBetween(before.source, source);
  const place = cellAround(before, edit);
  if (!place) return undefined;
  const { cell, open, close } = place;
  const by = source.length - before.source.length;
  const said = source.slice(open + 1, close + by);
  if (!isPlain(before.source.slice(open + 1, close)) || !isPlain(said)) return undefined;
  const begin = cell.position?.start;
  if (!begin) return undefined;

  const inLine = (offset: number): Point => ({
    line: begin.line,
    column: begin.column + offset - open,
    offset,
  });
  const first = open + 1 + said.length - said.trimStart().length;
  const value = said.trim();
  const text: Text = {
    type: 'text',
    value,
    position: { start: inLine(first), end: inLine(first + value.length) },
  };
  const point = (at: Point): Point => {
    const { line, column, offset = 0 } = at;
    if (offset < close) return at;
    return { line, column: line === begin.line ? column + by : column, offset: offset + by };
  };
  // What ends before the closing bar stays as it is; all else moves along with the bar.
  const moved = <T extends Nodes>(node: T): T => {
    if (!node.position || endOf(node) < close) return node;
    const position = { start: point(node.position.start), end: point(node.position.end) };
    if (!('children' in node)) return { ...node, position };
    const children: readonly Nodes[] = node.children;
    return { ...node, position, children: node === cell ? [text] : children.map(moved) };
  };
  return before.children.map(moved);
}
