import {
  nearest,
  type Problem,
  presentFacts,
  presentId,
  readFacts,
  sayProblem,
  type Topic,
} from '@tarebook/rules/engine';
import type { RootContent } from 'mdast';
import { begin, collect, type Gathered, readBody } from './body';
import { excessOf } from './budget';
import { dayTroubles, keyPlace } from './day';
import { checkExpectations } from './expect';
import { type FrontReader, type Note, readFront } from './front';
import { type Fault, sayFault, trouble } from './messages';
import { withoutMark } from './plain';
import type { CaseDocument, Front, Place, Trouble } from './shapes';

function refused(text: string, troubles: readonly Trouble[]): CaseDocument {
  const front: Front = { title: 'Untitled case', topic: '' };
  return {
    text,
    front,
    blocks: [],
    facts: {},
    renamed: [],
    readFrom: {},
    expectations: [],
    troubles,
  };
}

function placeOfOffset(text: string, offset: number): Place {
  const before = text.slice(0, offset);
  const line = before.split('\n').length;
  return { line, column: offset - before.lastIndexOf('\n'), offset };
}

export function placeOfProblem(
  { fact, row, column }: Problem,
  into: Gathered,
  topic: Topic,
  code: string,
): Place {
  const simple = into.facts.find((each) => each.id === fact || presentId(topic, each.id) === fact);
  if (simple)
    return code === 'no-such-fact' || code === 'given-twice'
      ? simple.idPlace
      : simple.valueSpan.start;
  const list = into.lists.find(
    (each) => each.fact === fact || presentId(topic, each.fact) === fact,
  );
  const declared = Object.hasOwn(topic.facts, fact) ? topic.facts[fact] : undefined;
  if (!list || row === undefined || declared?.kind !== 'rows') return list?.place ?? begin;
  const id = Object.entries(declared.columns).find(([, each]) => each.label === column)?.[0] ?? '';
  return list.rows[row - 1]?.cells[id]?.span.start ?? list.place;
}

/** The blocks of a document, with their places. */
export type TreeReader = (source: string) => readonly RootContent[];

/** The Markdown library goes down into nested blocks by recursion, and can run out of stack there. */
function treeUnlessTooDeep(treeOf: TreeReader, source: string): readonly RootContent[] | undefined {
  try {
    return treeOf(source);
  } catch (problem) {
    if (problem instanceof RangeError) return undefined;
    throw problem;
  }
}

/**
 * Why a text is not to be given to any parser: it has more of something than a case can need. Undefined
 * for what may be read. It takes one walk over the text, whatever the text is.
 */
export function overBudget(text: string): Trouble | undefined {
  const excess = excessOf(text);
  return (
    excess &&
    trouble(excess.place, sayFault({ code: 'over-budget', of: excess.of, most: excess.most }))
  );
}

const nearOf = (text: string, known: readonly string[]) => {
  const near = nearest(text, known);
  return near === undefined ? {} : { near };
};

/** The rule sets a case may name; of those that are known by id only, none can be run. */
export type TopicShelf = {
  readonly ids: readonly string[];
  readonly topics: Readonly<Record<string, Topic>>;
  /** Reads a front matter that `isPlain` does not hold of; such a case is refused without it. */
  readonly yaml?: FrontReader;
};

type Begun = {
  /** The text without its byte order mark, which is no part of what positions count; edits put it back. */
  readonly source: string;
  readonly children: readonly RootContent[];
  readonly head: RootContent & { readonly type: 'yaml' };
};

/** The blocks and the front matter of a document; or the one thing for which nothing of it is read. */
export function begunWith(treeOf: TreeReader, text: string): Begun | { readonly wrong: Trouble } {
  const source = withoutMark(text);
  const wrong = (at: Pick<Place, 'line' | 'column'>, fault: Fault) => ({
    wrong: trouble(at, sayFault(fault)),
  });
  const over = overBudget(source);
  if (over) return { wrong: over };
  const nul = source.indexOf('\0');
  if (nul >= 0) return wrong(placeOfOffset(source, nul), { code: 'nul' });
  const children = treeUnlessTooDeep(treeOf, source);
  if (!children) return wrong(begin, { code: 'too-deep' });
  const head = children[0];
  if (head?.type !== 'yaml') {
    return wrong(begin, { code: source.trim() === '' ? 'no-text' : 'no-front' });
  }
  return { source, children, head };
}

export const unread: FrontReader = () => ({
  at: { line: 1, column: 1 },
  fault: { code: 'front-unread' },
});

/**
 * Reads a worked case, whose blocks `treeOf` tells; see `readCaseFrom`. It brings no reader of
 * Markdown, so that a page whose cases were read when it was built need not load one.
 */
export function readCaseWith(
  treeOf: TreeReader,
  shelf: TopicShelf,
  text: string,
  asOf?: string,
): CaseDocument {
  const begun = begunWith(treeOf, text);
  if ('wrong' in begun) return refused(text, [begun.wrong]);
  const { source, children, head } = begun;
  const troubles: Trouble[] = [];
  const note: Note = (at, fault) => troubles.push(trouble(at, sayFault(fault)));
  const line = (head.position?.start.line ?? 1) + 1;
  const front = readFront(head.value, shelf.ids, line, note, shelf.yaml ?? unread);
  const topic = Object.hasOwn(shelf.topics, front.topic) ? shelf.topics[front.topic] : undefined;
  if (!topic) return { ...refused(text, troubles), front };
  const askings = Object.keys(topic.askings ?? {});
  if (front.asking !== undefined && !askings.includes(front.asking)) {
    const wanted =
      askings.length === 0 ? 'nothing, as this topic has one asking' : askings.join(', ');
    note(keyPlace(head.value, 'asking', line), {
      code: 'front-value',
      key: 'asking',
      found: front.asking,
      wanted,
      ...nearOf(front.asking, askings),
    });
  }
  const day = asOf ?? front.asOf;
  const own = asOf === undefined ? head.value : '';
  if (day) troubles.push(...dayTroubles(topic, day, own, line));
  const into = readBody(children, source, topic, note);
  const { facts, renamed, problems: twice } = presentFacts(topic, collect(into, note));
  const told = new Set(
    into.facts.filter((row) => row.value === '').map((row) => presentId(topic, row.id)),
  );
  for (const problem of [...twice, ...readFacts(topic, facts).problems]) {
    if (told.has(problem.fact)) continue;
    troubles.push(trouble(placeOfProblem(problem, into, topic, problem.code), sayProblem(problem)));
  }
  checkExpectations(topic, into.expectations, note);
  const readFrom = into.facts.flatMap(({ id, readFrom: from }) =>
    from ? [[presentId(topic, id), from] as const] : [],
  );
  return {
    text,
    front,
    topic,
    blocks: into.blocks,
    facts,
    renamed,
    readFrom: Object.fromEntries(readFrom),
    expectations: into.expectations,
    troubles: troubles.toSorted((a, b) => a.line - b.line || a.column - b.column),
  };
}
