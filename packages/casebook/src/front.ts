import { nearest } from '@tarebook/rules/engine';
import {
  type Entry,
  type EntryRow,
  type EntryWords,
  type Point,
  plainEntries,
} from './front-plain';
import type { Fault } from './messages';
import type { Front } from './shapes';
import { onOneLine } from './unseen';

export const frontKeys = [
  ...['title', 'topic', 'asked', 'level', 'as-of'],
  ...['asking', 'asker', 'credit', 'asked-on', 'status'],
];
const credits = ['yes', 'no', 'first-name'] as const;
const statuses = ['open', 'waiting', 'answered'] as const;
const levels = ['starter', 'working', 'hard'] as const;
/** What a note has in the place of a topic. */
export const noteTopic = 'note';
/** What a whole rig has there. */
export const rigTopic = 'rig';

export type Note = (at: Point, fault: Fault) => void;

/** Reads what stands between the two lines of `---`, or says why it cannot be read. */
export type FrontReader = (
  source: string,
) => readonly Entry[] | { readonly at: Point; readonly fault: Fault };

/** What a front matter says in words, by key, and the lists among it by their rows. */
export type FrontFound = {
  readonly words: ReadonlyMap<string, { text: string; place: Point }>;
  readonly lists: ReadonlyMap<string, ListFound>;
};

type ListFound = {
  readonly rows: readonly EntryRow[] | undefined;
  /** Where it is a list of plain words. */
  readonly items: readonly EntryWords[] | undefined;
  readonly place: Point;
};

/**
 * Reads the keys of a front matter; undefined where it cannot be read.
 *
 * @param source what stands between the two lines of `---`
 * @param line the document's line on which it begins, from 1
 * @param yaml reads whatever is more than a plain `key: words` a line
 * @param known every key there is; of these, `listed` may be lists
 */
export function frontFound(
  source: string,
  line: number,
  note: Note,
  yaml: FrontReader,
  known: readonly string[],
  listed: readonly string[] = [],
): FrontFound | undefined {
  const within = (at: Point): Point => ({ line: line + at.line - 1, column: at.column });
  const entries = plainEntries(source) ?? yaml(source);
  if ('fault' in entries) {
    note(within(entries.at), entries.fault);
    return undefined;
  }
  const words = new Map<string, { text: string; place: Point }>();
  const lists = new Map<string, ListFound>();
  for (const { key, at, value, rows, items } of entries) {
    const place = within(at);
    if (!known.includes(key)) {
      const near = nearest(key, known);
      if (near) note(place, { code: 'front-key', key: onOneLine(key).slice(0, 40), near });
    } else if (value === 'list' && listed.includes(key)) {
      lists.set(key, {
        rows: rows?.map((row) => ({ ...row, at: within(row.at) })),
        items: items?.map(({ text, at: item }) => ({ text: onOneLine(text), at: within(item) })),
        place,
      });
    } else if (value === 'list') {
      note(place, { code: 'front-value', key, found: 'a list', wanted: 'one line of text' });
    } else if (value) {
      words.set(key, { text: onOneLine(value.text), place: within(value.at) });
    }
  }
  return { words, lists };
}

/**
 * Reads the front matter of a case.
 *
 * @param source what stands between the two lines of `---`
 * @param topics the ids of all rule sets there are
 * @param line the document's line on which it begins, from 1
 * @param yaml reads whatever is more than a plain `key: words` a line
 */
export function readFront(
  source: string,
  topics: readonly string[],
  line: number,
  note: Note,
  yaml: FrontReader,
): Front {
  const found = frontFound(source, line, note, yaml, frontKeys);
  const none: Front = { title: 'Untitled case', topic: '' };
  return found ? { ...none, ...known(found.words, topics, line, note) } : none;
}

type Found = FrontFound['words'];

function known(found: Found, all: readonly string[], line: number, note: Note): Partial<Front> {
  const topic = found.get('topic');
  if (!topic) {
    note({ line: Math.max(1, line - 1), column: 1 }, { code: 'no-topic', known: all.join(', ') });
  } else if (topic.text === noteTopic) {
    note(topic.place, { code: 'is-a-note' });
  } else if (topic.text === rigTopic) {
    note(topic.place, { code: 'is-a-rig' });
  } else if (!all.includes(topic.text)) {
    const near = nearest(topic.text, [...all, noteTopic]);
    note(topic.place, {
      code: 'unknown-topic',
      found: topic.text.slice(0, 60),
      known: all.join(', '),
      ...(near && { near }),
    });
  }
  return { ...(topic && { topic: topic.text }), ...whoAsked(found, note) };
}

/** One of some words; whatever else is written there is noted. */
export function wordAmong<W extends string>(
  found: Found,
  key: string,
  words: readonly W[],
  note: Note,
): W | undefined {
  const value = found.get(key);
  const word = words.find((each) => each === value?.text);
  if (!value || word !== undefined) return word;
  const near = nearest(value.text, words);
  const wanted = words.join(', ');
  note(value.place, {
    code: 'front-value',
    key,
    found: value.text,
    wanted,
    ...(near && { near }),
  });
  return undefined;
}

/** A day; whatever else is written there is noted. */
export function dayOf(found: Found, key: string, note: Note): string | undefined {
  const value = found.get(key);
  if (!value || isDay(value.text)) return value?.text;
  note(value.place, {
    code: 'front-value',
    key,
    found: value.text,
    wanted: 'a day such as 2026-11-01',
  });
  return undefined;
}

/** What any document may say of itself and of who asked. */
export function whoAsked(found: Found, note: Note): Partial<Omit<Front, 'topic'>> {
  const [title, asked] = [found.get('title')?.text, found.get('asked')?.text];
  const [asking, asker] = [found.get('asking')?.text, found.get('asker')?.text];
  const level = wordAmong(found, 'level', levels, note);
  const asOf = dayOf(found, 'as-of', note);
  const credit = wordAmong(found, 'credit', credits, note);
  const status = wordAmong(found, 'status', statuses, note);
  const askedOn = dayOf(found, 'asked-on', note);
  return {
    ...(title && { title }),
    ...(asked && { asked }),
    ...(level && { level }),
    ...(asOf && { asOf }),
    ...(asking && { asking }),
    ...(asker && { asker }),
    ...(credit && { credit }),
    ...(askedOn && { askedOn }),
    ...(status && { status }),
  };
}

function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}
