import { type FactsGiven, nearest, type RowGiven, type Topic } from '@tarebook/rules/engine';
import { readQuantity, wasMisread } from '@tarebook/rules/quantity';
import type { Nodes, RootContent } from 'mdast';
import type { Note } from './front';
import {
  type Block,
  type Expectation,
  type FactRow,
  type ListRow,
  liveValueIn,
  type Place,
} from './shapes';
import { noteNoTable, noteStray } from './strays';
import { gridOf, kindOf, readExpectTable, readFactTable, readListTable } from './tables';

/** Where a document begins, for what has no better place. */
export const begin: Place = { line: 1, column: 1, offset: 0 };

type ListTable = {
  readonly fact: string;
  readonly columns: readonly string[];
  readonly rows: readonly ListRow[];
  readonly place: Place;
};

/** What is gathered while the document is read from top to bottom. */
export type Gathered = {
  readonly facts: FactRow[];
  readonly lists: ListTable[];
  readonly expectations: Expectation[];
  readonly blocks: Block[];
};

/** What can come out of a topic and be shown in prose or guessed. */
const resultsOf = (topic: Topic): readonly string[] => [
  'verdict',
  'limit.binding',
  ...Object.keys(topic.formulas),
  ...Object.keys(topic.decisions ?? {}),
  ...Object.entries(topic.selections ?? {}).flatMap(([id, { amounts }]) =>
    Object.keys(amounts).map((amount) => `${id}.${amount}`),
  ),
];

function predictBlock(
  node: RootContent & { type: 'containerDirective' },
  source: string,
  topic: Topic,
  note: Note,
): Block {
  const at = node.position?.start ?? begin;
  const raw = source.slice(node.position?.start.offset, node.position?.end.offset);
  if (!/\n[ \t>]*:{3,}[ \t]*$/.test(raw)) note(at, { code: 'predict-open' });
  const { result = '', within = '' } = node.attributes ?? {};
  const known = resultsOf(topic);
  if (!result) note(at, { code: 'predict-result' });
  else if (!known.includes(result)) {
    const near = nearest(result, known);
    note(at, {
      code: 'unknown-name',
      name: result,
      what: 'a result',
      topic: topic.id,
      ...(near && { near }),
    });
  }
  if (within && wasMisread(readQuantity(within)))
    note(at, { code: 'predict-within', found: within });
  return { kind: 'predict', result: result ?? '', within: within ?? '', children: node.children };
}

function readTable(
  node: RootContent & { type: 'table' },
  source: string,
  topic: Topic,
  note: Note,
  into: Gathered,
): Block {
  const grid = gridOf(node, source);
  const place = grid.head[0]?.span.start ?? begin;
  switch (kindOf(grid)) {
    case 'facts': {
      const rows = readFactTable(grid, note);
      into.facts.push(...rows);
      return { kind: 'facts', rows, end: grid.end };
    }
    case 'list': {
      const list = readListTable(grid, topic, note);
      if (!list) return { kind: 'prose', node };
      into.lists.push({ ...list, place });
      return { kind: 'list', ...list, end: grid.end };
    }
    case 'expect': {
      const rows = readExpectTable(grid, note);
      into.expectations.push(...rows);
      return { kind: 'expect', rows };
    }
    case 'prose':
      noteStray(grid, topic, note);
      return { kind: 'prose', node };
  }
}

/** Live values in prose, and tables that stand inside other blocks. */
function walkInside(node: Nodes, source: string, topic: Topic, note: Note, into: Gathered): void {
  if (node.type === 'inlineCode') {
    const name = liveValueIn(node);
    const known = [...resultsOf(topic), ...Object.keys(topic.facts)];
    if (name !== undefined && !known.includes(name)) {
      const near = nearest(name, known);
      const at = node.position?.start ?? begin;
      note(at, {
        code: 'unknown-name',
        name,
        what: 'a result',
        topic: topic.id,
        ...(near && { near }),
      });
    }
    return;
  }
  noteNoTable(node, source, note);
  if (node.type === 'containerDirective' && node.name !== 'predict') {
    const near = nearest(node.name, ['predict']);
    if (near) note(node.position?.start ?? begin, { code: 'directive', found: node.name, near });
  }
  if (!('children' in node)) return;
  for (const child of node.children) {
    if (child.type === 'table') readTable(child, source, topic, note, into);
    else walkInside(child, source, topic, note, into);
  }
}

/** Reads what follows the front matter, block by block. */
export function readBody(
  children: readonly RootContent[],
  source: string,
  topic: Topic,
  note: Note,
): Gathered {
  const into: Gathered = { facts: [], lists: [], expectations: [], blocks: [] };
  for (const node of children) {
    if (node.type === 'yaml') continue;
    if (node.type === 'table') {
      const block = readTable(node, source, topic, note, into);
      if (block.kind === 'prose') walkInside(node, source, topic, note, into);
      into.blocks.push(block);
      continue;
    }
    walkInside(node, source, topic, note, into);
    const predicts = node.type === 'containerDirective' && node.name === 'predict';
    into.blocks.push(predicts ? predictBlock(node, source, topic, note) : { kind: 'prose', node });
  }
  return into;
}

/** Facts by id, lists included; what is given twice is noted. A name may be anything at all. */
export function collect(into: Gathered, note: Note): FactsGiven {
  const given = new Map<string, string | readonly RowGiven[]>();
  const first = new Map<string, number>();
  const add = (id: string, place: Place, value: string | readonly RowGiven[]): void => {
    const before = first.get(id);
    if (before !== undefined) {
      note(place, { code: 'twice', name: id, line: before });
      return;
    }
    first.set(id, place.line);
    given.set(id, value);
  };
  for (const row of into.facts) add(row.id, row.idPlace, row.value === '' ? 'unknown' : row.value);
  for (const list of into.lists) {
    const rows = list.rows.map(({ label, cells }): RowGiven => {
      const texts = Object.entries(cells).map(([id, cell]) => [id, cell.text] as const);
      return { label, ...Object.fromEntries(texts) };
    });
    add(list.fact, list.place, rows);
  }
  const facts: Record<string, string | readonly RowGiven[]> = Object.create(null);
  for (const [id, value] of given) facts[id] = value;
  return facts;
}
