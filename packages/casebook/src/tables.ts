import type { Fact, Topic } from '@tarebook/rules/engine';
import { nearest, presentId } from '@tarebook/rules/engine';
import type { PhrasingContent, Table, TableCell } from 'mdast';
import type { Note } from './front';
import type { Expectation, FactRow, ListRow, Place, Span } from './shapes';

/** A cell of a table with its text, and the stretch of the document that an edit replaces. */
type Cell = {
  readonly text: string;
  readonly span: Span;
  readonly code?: string;
  readonly words: string;
};

const start: Place = { line: 1, column: 1, offset: 0 };

type Point = { line: number; column: number; offset?: number | undefined } | undefined;
const placeOf = (point: Point): Place =>
  point ? { line: point.line, column: point.column, offset: point.offset ?? 0 } : start;

function flat(nodes: readonly PhrasingContent[], source: string): string {
  return nodes
    .map((node) => {
      if (node.type === 'text' || node.type === 'inlineCode') return node.value;
      if (node.type === 'textDirective') return slice(node.position, source);
      return 'children' in node ? flat(node.children, source) : slice(node.position, source);
    })
    .join('');
}

/** A character reference can put a line's end into a cell; it is a space there. */
const lineOf = (nodes: readonly PhrasingContent[], source: string): string =>
  flat(nodes, source)
    .replace(/[\r\n\u2028\u2029]+/g, ' ')
    .trim();

type Position = { start: { offset?: number | undefined }; end: { offset?: number | undefined } };
const slice = (position: Position | undefined, source: string): string =>
  position ? source.slice(position.start.offset, position.end.offset) : '';

/** The inside of a cell: its content, or in an empty one the point after the bar. */
function spanOf(cell: TableCell, source: string): Span {
  const [first, last] = [cell.children[0], cell.children.at(-1)];
  if (first?.position && last?.position) {
    return { start: placeOf(first.position.start), end: placeOf(last.position.end) };
  }
  const at = placeOf(cell.position?.start);
  const bar = source[at.offset] === '|' ? 1 : 0;
  const inside = { line: at.line, column: at.column + bar, offset: at.offset + bar };
  return { start: inside, end: inside };
}

function cellOf(cell: TableCell | undefined, source: string, after: Place): Cell {
  if (!cell) return { text: '', span: { start: after, end: after }, words: '' };
  const [first, ...rest] = cell.children;
  const code = first?.type === 'inlineCode' ? first.value : undefined;
  return {
    text: lineOf(cell.children, source),
    span: spanOf(cell, source),
    words: lineOf(rest, source),
    ...(code !== undefined && { code }),
  };
}

export type Grid = {
  readonly head: readonly Cell[];
  readonly rows: readonly (readonly Cell[])[];
  readonly end: Place;
};

export function gridOf(table: Table, source: string): Grid {
  const [head, ...rows] = table.children;
  const width = head?.children.length ?? 0;
  const read = (row: typeof head): readonly Cell[] =>
    Array.from({ length: width }, (_, i) =>
      cellOf(row?.children[i], source, placeOf(row?.position?.end)),
    );
  return { head: read(head), rows: rows.map(read), end: placeOf(table.position?.end) };
}

export type TableKind = 'facts' | 'list' | 'expect' | 'prose';

export function kindOf({ head }: Grid): TableKind {
  const first = head[0];
  if (first?.code !== undefined && !first.code.startsWith('=')) return 'list';
  const word = first?.text.toLowerCase();
  return word === 'fact' ? 'facts' : word === 'expect' ? 'expect' : 'prose';
}

const columnNamed = (grid: Grid, name: string): number =>
  grid.head.findIndex((cell) => cell.text.toLowerCase() === name);

/** Of two columns that say the same, one would be lost in silence. */
function noteTwice(
  grid: Grid,
  meanings: readonly (string | undefined)[],
  table: string,
  note: Note,
): void {
  meanings.forEach((meaning, i) => {
    const first = meanings.indexOf(meaning);
    const [one, other] = [grid.head[first], grid.head[i]];
    if (!meaning || first === i || !one || !other) return;
    note(other.span.start, {
      code: 'column-twice',
      found: other.text,
      table,
      column: one.span.start.column,
      first: one.text,
    });
  });
}

/** The headings as they are looked for; those a table does not read may stand as often as one likes. */
const headings = (grid: Grid, read: readonly string[]): readonly (string | undefined)[] =>
  grid.head.map(({ text }) => read.find((each) => each === text.toLowerCase()));

/** A table of facts: id and words, value, where it was read. */
export function readFactTable(grid: Grid, note: Note): readonly FactRow[] {
  const value = columnNamed(grid, 'value');
  const from = columnNamed(grid, 'read from');
  if (value < 0) {
    note(grid.head[0]?.span.start ?? start, { code: 'no-column', column: 'Value', table: 'facts' });
    return [];
  }
  noteTwice(grid, headings(grid, ['fact', 'value', 'read from']), 'the table of facts', note);
  return grid.rows.flatMap((row) => {
    const [first, cell] = [row[0], row[value]];
    if (!first || !cell) return [];
    if (first.code === undefined) {
      if (first.text === '' && cell.text === '') return [];
      note(first.span.start, { code: 'no-id', found: first.text, wanted: 'the id of a fact' });
      return [];
    }
    const id = first.code;
    if (cell.text === '') note(cell.span.start, { code: 'empty', name: id });
    const readFrom = row[from]?.text ?? '';
    return [
      {
        id,
        words: first.words,
        value: cell.text,
        valueSpan: cell.span,
        readFrom,
        idPlace: first.span.start,
      },
    ];
  });
}

const asides = ['read from', 'note', 'notes'];

/** The rows of a list fact; its column headings are the labels of the list's columns. */
export function readListTable(
  grid: Grid,
  topic: Topic,
  note: Note,
):
  | {
      readonly fact: string;
      readonly columns: readonly string[];
      readonly rows: readonly ListRow[];
    }
  | undefined {
  const fact = grid.head[0]?.code ?? '';
  const present = presentId(topic, fact);
  const declared: Fact | undefined = Object.hasOwn(topic.facts, present)
    ? topic.facts[present]
    : undefined;
  if (declared?.kind !== 'rows') {
    const lists = Object.entries(topic.facts).flatMap(([id, f]) => (f.kind === 'rows' ? [id] : []));
    const near = nearest(fact, lists);
    note(grid.head[0]?.span.start ?? start, {
      code: 'not-a-list',
      found: fact,
      ...(near && { near }),
    });
    return undefined;
  }
  const byLabel = Object.entries(declared.columns);
  const columns = grid.head.slice(1).map((cell) => {
    const wanted = cell.text.toLowerCase();
    const found = byLabel.find(
      ([id, column]) => column.label.toLowerCase() === wanted || id.toLowerCase() === wanted,
    );
    if (found) return found[0];
    if (!asides.includes(wanted)) {
      const labels = byLabel.map(([, column]) => column.label);
      const near = nearest(cell.text, labels);
      const wants = labels.join(', ');
      note(cell.span.start, {
        code: 'strange-column',
        found: cell.text,
        list: fact,
        wanted: wants,
        ...(near && { near }),
      });
    }
    return '';
  });
  noteTwice(grid, ['', ...columns], `\`${fact}\``, note);
  for (const [id, column] of byLabel) {
    if (column.required && !columns.includes(id)) {
      note(grid.head[0]?.span.start ?? start, {
        code: 'no-column',
        column: column.label,
        table: `\`${fact}\``,
      });
      return undefined;
    }
  }
  const rows = grid.rows.map((row) => ({
    label: row[0]?.text ?? '',
    cells: Object.fromEntries(
      columns.flatMap((id, i) => {
        const cell = row[i + 1];
        return id === '' || !cell ? [] : [[id, { text: cell.text, span: cell.span }] as const];
      }),
    ),
  }));
  return { fact, columns, rows };
}

export function readExpectTable(grid: Grid, note: Note): readonly Expectation[] {
  const value = columnNamed(grid, 'value');
  if (value < 0) {
    note(grid.head[0]?.span.start ?? start, {
      code: 'no-column',
      column: 'Value',
      table: 'what to expect',
    });
    return [];
  }
  noteTwice(grid, headings(grid, ['expect', 'value']), 'the table of what to expect', note);
  return grid.rows.flatMap((row) => {
    const [first, cell] = [row[0], row[value]];
    if (!first || !cell) return [];
    if (first.code === undefined) {
      note(first.span.start, { code: 'no-id', found: first.text, wanted: 'the name of a result' });
      return [];
    }
    return [{ name: first.code, text: cell.text, place: first.span.start, valueSpan: cell.span }];
  });
}
