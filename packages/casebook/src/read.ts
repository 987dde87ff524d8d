import {
  type FactsGiven,
  nearest,
  type Problem,
  type RowGiven,
  readFacts,
  sayProblem,
  type Topic,
} from '@tarebook/rules/engine';
import { readQuantity, wasMisread } from '@tarebook/rules/quantity';
import type { Nodes, RootContent } from 'mdast';
import { dayTroubles } from './day';
import { checkExpectations } from './expect';
import { type FrontReader, isPlainFront, type Note, readFront } from './front';
import { sayFault, trouble } from './messages';
import { treeOf } from './parse';
import {
  type Block,
  type CaseDocument,
  type Expectation,
  type FactRow,
  type Front,
  type ListRow,
  liveValueIn,
  type Place,
  type Trouble,
} from './shapes';
import { gridOf, kindOf, readExpectTable, readFactTable, readListTable } from './tables';

/** A worked case is a page or two; more than this is a mistake or an attack. */
export const mostCharacters = 200_000;

type ListTable = {
  readonly fact: string;
  readonly columns: readonly string[];
  readonly rows: readonly ListRow[];
  readonly place: Place;
};

/** What is gathered while the document is read from top to bottom. */
type Gathered = {
  readonly facts: FactRow[];
  readonly lists: ListTable[];
  readonly expectations: Expectation[];
  readonly blocks: Block[];
};

const begin: Place = { line: 1, column: 1, offset: 0 };

function refused(text: string, troubles: readonly Trouble[]): CaseDocument {
  const front: Front = { title: 'Untitled case', topic: '' };
  return { text, front, blocks: [], facts: {}, readFrom: {}, expectations: [], troubles };
}

export const withoutMark = (text: string): string =>
  text.startsWith('\ufeff') ? text.slice(1) : text;

function placeOfOffset(text: string, offset: number): Place {
  const before = text.slice(0, offset);
  const line = before.split('\n').length;
  return { line, column: offset - before.lastIndexOf('\n'), offset };
}

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

function readBody(
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
function collect(into: Gathered, note: Note): FactsGiven {
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

function placeOfProblem(
  { fact, row, column }: Problem,
  into: Gathered,
  topic: Topic,
  code: string,
): Place {
  const simple = into.facts.find((each) => each.id === fact);
  if (simple) return code === 'no-such-fact' ? simple.idPlace : simple.valueSpan.start;
  const list = into.lists.find((each) => each.fact === fact);
  const declared = Object.hasOwn(topic.facts, fact) ? topic.facts[fact] : undefined;
  if (!list || row === undefined || declared?.kind !== 'rows') return list?.place ?? begin;
  const id = Object.entries(declared.columns).find(([, each]) => each.label === column)?.[0] ?? '';
  return list.rows[row - 1]?.cells[id]?.span.start ?? list.place;
}

/** Fifty quotations or lists within one another, by the markers that a line begins with. */
const deep = /^(?:[ \t]*(?:>|(?:[*+-]|\d{1,9}[.)])[ \t])){50}/m;

/** The Markdown library goes down into nested blocks by recursion, and can run out of stack there. */
function treeUnlessTooDeep(source: string): readonly RootContent[] | undefined {
  if (deep.test(source)) return undefined;
  try {
    return treeOf(source);
  } catch (problem) {
    if (problem instanceof RangeError) return undefined;
    throw problem;
  }
}

/** The rule sets a case may name; of those that are known by id only, none can be run. */
export type TopicShelf = {
  readonly ids: readonly string[];
  readonly topics: Readonly<Record<string, Topic>>;
  /** Reads a front matter that `isPlain` does not hold of; such a case is refused without it. */
  readonly yaml?: FrontReader;
};

const unread: FrontReader = () => ({ at: { line: 1, column: 1 }, fault: { code: 'front-unread' } });

/** Whether a case can be read without a reader of YAML. */
export function isPlain(text: string): boolean {
  const source = withoutMark(text);
  const front = /^---[ \t]*\r?\n(.*?)\r?\n---[ \t]*(?:\r?\n|$)/s.exec(source)?.[1];
  return front === undefined ? !source.startsWith('---') : isPlainFront(front);
}

/**
 * Reads a worked case. Never throws: whatever is wrong stands in `troubles`, all of it at once, and
 * a document with troubles is not to be run.
 *
 * @param asOf the day it is to be judged as of, in place of the front matter's
 */
export function readCaseFrom(shelf: TopicShelf, text: string, asOf?: string): CaseDocument {
  if (text.length > mostCharacters) {
    return refused(text, [trouble(begin, sayFault({ code: 'too-long', most: mostCharacters }))]);
  }
  const nul = text.indexOf('\0');
  if (nul >= 0)
    return refused(text, [trouble(placeOfOffset(text, nul), sayFault({ code: 'nul' }))]);
  const troubles: Trouble[] = [];
  const note: Note = (at, fault) => troubles.push(trouble(at, sayFault(fault)));
  // A byte order mark is no part of the text that positions count; edits put it back.
  const source = withoutMark(text);
  const children = treeUnlessTooDeep(source);
  if (!children) return refused(text, [trouble(begin, sayFault({ code: 'too-deep' }))]);
  const head = children[0];
  if (head?.type !== 'yaml') {
    return refused(text, [trouble(begin, sayFault({ code: 'no-front' }))]);
  }
  const line = (head.position?.start.line ?? 1) + 1;
  const front = readFront(head.value, shelf.ids, line, note, shelf.yaml ?? unread);
  const topic = Object.hasOwn(shelf.topics, front.topic) ? shelf.topics[front.topic] : undefined;
  if (!topic) return { ...refused(text, troubles), front };
  const day = asOf ?? front.asOf;
  const own = asOf === undefined ? head.value : '';
  if (day) troubles.push(...dayTroubles(topic, day, own, line));
  const into = readBody(children, source, topic, note);
  const facts = collect(into, note);
  const told = new Set(into.facts.filter((row) => row.value === '').map((row) => row.id));
  for (const problem of readFacts(topic, facts).problems) {
    if (told.has(problem.fact)) continue;
    troubles.push(trouble(placeOfProblem(problem, into, topic, problem.code), sayProblem(problem)));
  }
  checkExpectations(topic, into.expectations, note);
  const readFrom = into.facts.flatMap(({ id, readFrom: from }) =>
    from ? [[id, from] as const] : [],
  );
  return {
    text,
    front,
    topic,
    blocks: into.blocks,
    facts,
    readFrom: Object.fromEntries(readFrom),
    expectations: into.expectations,
    troubles: troubles.toSorted((a, b) => a.line - b.line || a.column - b.column),
  };
}
