import type { Nodes, RootContent } from 'mdast';
import { begin } from '../body';
import {
  dayOf,
  type FrontFound,
  type FrontReader,
  frontFound,
  frontKeys,
  type Note,
  noteTopic,
  whoAsked,
  wordAmong,
} from '../front';
import { type Fault, sayFault, trouble } from '../messages';
import { withoutMark } from '../plain';
import { begunWith, type TreeReader, unread } from '../read-with';
import type { Expectation, Trouble } from '../shapes';
import { noteNoTable, noteStray } from '../strays';
import { gridOf, kindOf, readExpectTable } from '../tables';
import { abouts, type NoteDocument, type NoteLink, sayings } from './shapes';

const ownKeys = ['about', 'good-until', 'say', 'owner', 'links', 'leans-on'];
const mostLinks = 20;

/** Whether a document is a note, as its front matter has it. */
export const isNote = (text: string): boolean =>
  /^---[ \t]*\r?\n(?:(?!---[ \t]*\r?\n).*\r?\n)*?topic[ \t]*:[ \t]*(["']?)note\1[ \t]*(?:#.*)?\r?\n/.test(
    withoutMark(text).slice(0, 20_000),
  );

function addressOf(text: string): string | undefined {
  if (!URL.canParse(text)) return undefined;
  const url = new URL(text);
  return url.protocol === 'https:' && url.username === '' ? url.href : undefined;
}

function readLinks({ lists }: FrontFound, note: Note): readonly NoteLink[] {
  const list = lists.get('links');
  if (!list) return [];
  if (!list.rows || list.rows.length > mostLinks) {
    const wanted = `at most ${mostLinks} links, each a label and an address`;
    note(list.place, { code: 'front-value', key: 'links', found: 'something else', wanted });
    return [];
  }
  return list.rows.flatMap(({ at, cells: { label, address } }) => {
    if (!label || !address) {
      note(at, { code: 'link-part', key: label ? 'address' : 'label' });
      return [];
    }
    const href = addressOf(address.text);
    if (href === undefined) {
      note(at, { code: 'link-address', found: address.text });
      return [];
    }
    return [{ label: label.text, address: href }];
  });
}

/** A path of a worked case: within what lies around the note, never from the root of a disk. */
function pathOf({ words }: FrontFound, note: Note): string | undefined {
  const value = words.get('leans-on');
  if (!value) return undefined;
  if (/^(?![\\/~]|[a-z]+:)[^\0]*\.md$/i.test(value.text)) return value.text;
  note(value.place, { code: 'leans-on', found: value.text });
  return undefined;
}

function readBlocks(
  children: readonly RootContent[],
  source: string,
  note: Note,
): Pick<NoteDocument, 'blocks' | 'expectations'> {
  const expectations: Expectation[] = [];
  const blocks: RootContent[] = [];
  /** Whether a block is for the reader; a table that is read is none, wherever it stands. */
  const isSaid = (node: Nodes): boolean => {
    if (node.type !== 'table') {
      noteNoTable(node, source, note);
      if ('children' in node) for (const child of node.children) isSaid(child);
      return true;
    }
    const grid = gridOf(node, source);
    const kind = kindOf(grid);
    if (kind === 'expect') expectations.push(...readExpectTable(grid, note));
    else if (kind === 'prose') noteStray(grid, undefined, note);
    else note(grid.head[0]?.span.start ?? begin, { code: 'no-rows' });
    return kind === 'prose';
  };
  for (const node of children) if (node.type !== 'yaml' && isSaid(node)) blocks.push(node);
  for (const { name, text, place, valueSpan } of expectations) {
    if (name !== 'verdict') {
      note(place, {
        code: 'unknown-name',
        name,
        what: 'a result',
        topic: 'a note',
        near: 'verdict',
      });
    } else if (!['holds', 'expired'].includes(text.trim().toLowerCase())) {
      const wanted = 'holds, expired';
      note(valueSpan.start, { code: 'expect-word', name, found: text, wanted });
    }
  }
  return { blocks, expectations };
}

/**
 * Reads a note, whose blocks `treeOf` tells. Never throws: whatever is wrong stands in `troubles`,
 * all of it at once, and a note with troubles is not to be told.
 */
export function readNoteWith(
  treeOf: TreeReader,
  text: string,
  yaml: FrontReader = unread,
): NoteDocument {
  const troubles: Trouble[] = [];
  const note = (at: { line: number; column: number }, fault: Fault): void => {
    troubles.push(trouble(at, sayFault(fault)));
  };
  const none: NoteDocument = {
    text,
    front: { title: 'Untitled note', topic: noteTopic },
    about: 'house',
    goodUntil: '',
    say: 'ask-first',
    links: [],
    blocks: [],
    expectations: [],
    troubles,
  };
  const begun = begunWith(treeOf, text);
  if ('wrong' in begun) return { ...none, troubles: [begun.wrong] };
  const { source, children, head } = begun;
  const line = (head.position?.start.line ?? 1) + 1;
  const found = frontFound(head.value, line, note, yaml, [...frontKeys, ...ownKeys], ['links']);
  if (!found) return none;
  const missing = (key: string, wanted: string): void => {
    const at = { line: Math.max(1, line - 1), column: 1 };
    if (!found.words.has(key)) note(at, { code: 'front-missing', key, wanted });
  };
  const topic = found.words.get('topic');
  if (topic?.text !== noteTopic) note(topic?.place ?? begin, { code: 'no-note' });
  missing('about', `one of ${abouts.join(', ')}`);
  missing('good-until', 'the last day on which it may be said, such as 2027-03-31,');
  const owner = found.words.get('owner')?.text.replace(/^the /i, '');
  const leansOn = pathOf(found, note);
  const body = readBlocks(children, source, note);
  if (body.blocks.length === 0) note({ line, column: 1 }, { code: 'note-empty' });
  return {
    text,
    front: { ...none.front, ...whoAsked(found.words, note) },
    about: wordAmong(found.words, 'about', abouts, note) ?? none.about,
    goodUntil: dayOf(found.words, 'good-until', note) ?? none.goodUntil,
    // What nobody said may be told to everybody is asked about first.
    say: wordAmong(found.words, 'say', sayings, note) ?? none.say,
    ...(owner && { owner }),
    links: readLinks(found, note),
    ...(leansOn && { leansOn }),
    ...body,
    troubles: troubles.toSorted((a, b) => a.line - b.line || a.column - b.column),
  };
}
