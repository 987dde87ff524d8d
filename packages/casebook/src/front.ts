import { nearest } from '@tarebook/rules/engine';
import { type Entry, type Point, plainEntries } from './front-plain';
import type { Fault } from './messages';
import type { Front } from './shapes';
import { onOneLine } from './unseen';

const keys = [
  ...['title', 'topic', 'asked', 'level', 'as-of'],
  ...['asking', 'asker', 'credit', 'asked-on', 'status'],
];
const credits = ['yes', 'no', 'first-name'] as const;
const statuses = ['open', 'waiting', 'answered'] as const;
/** One of some words; undefined for any other. */
const among = <W extends string>(words: readonly W[], text: string | undefined): W | undefined =>
  words.find((word) => word === text);
const levels = ['starter', 'working', 'hard'] as const;
type Level = (typeof levels)[number];
const isLevel = (text: string): text is Level => levels.some((level) => level === text);

export type Note = (at: Point, fault: Fault) => void;

/** Reads what stands between the two lines of `---`, or says why it cannot be read. */
export type FrontReader = (
  source: string,
) => readonly Entry[] | { readonly at: Point; readonly fault: Fault };

/** Whether a front matter is read without a reader of YAML. */
export const isPlainFront = (source: string): boolean => plainEntries(source) !== undefined;

/**
 * Reads the front matter.
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
  const within = (at: Point): Point => ({ line: line + at.line - 1, column: at.column });
  const none: Front = { title: 'Untitled case', topic: '' };
  const entries = plainEntries(source) ?? yaml(source);
  if ('fault' in entries) {
    note(within(entries.at), entries.fault);
    return none;
  }
  const found = new Map<string, { text: string; place: Point }>();
  for (const { key, at, value } of entries) {
    const place = within(at);
    if (!keys.some((known) => known === key)) {
      const near = nearest(key, keys);
      if (near) note(place, { code: 'front-key', key: onOneLine(key).slice(0, 40), near });
    } else if (value === 'list') {
      note(place, { code: 'front-value', key, found: 'a list', wanted: 'one line of text' });
    } else if (value) {
      found.set(key, { text: onOneLine(value.text), place: within(value.at) });
    }
  }
  return { ...none, ...known(found, topics, line, note) };
}

type Found = ReadonlyMap<string, { text: string; place: Point }>;

function known(found: Found, all: readonly string[], line: number, note: Note): Partial<Front> {
  const title = found.get('title')?.text;
  const asked = found.get('asked')?.text;
  const level = found.get('level');
  const asOf = found.get('as-of');
  const topic = found.get('topic');
  if (!topic) {
    note({ line: Math.max(1, line - 1), column: 1 }, { code: 'no-topic', known: all.join(', ') });
  } else if (!all.includes(topic.text)) {
    const near = nearest(topic.text, all);
    const text = topic.text.slice(0, 60);
    note(topic.place, {
      code: 'unknown-topic',
      found: text,
      known: all.join(', '),
      ...(near && { near }),
    });
  }
  if (level && !isLevel(level.text)) {
    const near = nearest(level.text, levels);
    const wanted = levels.join(', ');
    note(level.place, {
      code: 'front-value',
      key: 'level',
      found: level.text,
      wanted,
      ...(near && { near }),
    });
  }
  const day = asOf && isDay(asOf.text) ? asOf.text : undefined;
  if (asOf && !day) {
    note(asOf.place, {
      code: 'front-value',
      key: 'as-of',
      found: asOf.text,
      wanted: 'a day such as 2026-11-01',
    });
  }
  const wrong = (key: string, wanted: string, words: readonly string[] = []) => {
    const value = found.get(key);
    if (!value) return;
    const near = nearest(value.text, words);
    note(value.place, {
      code: 'front-value',
      key,
      found: value.text,
      wanted,
      ...(near && { near }),
    });
  };
  const [asking, asker] = [found.get('asking')?.text, found.get('asker')?.text];
  const credit = among(credits, found.get('credit')?.text);
  if (!credit) wrong('credit', credits.join(', '), credits);
  const status = among(statuses, found.get('status')?.text);
  if (!status) wrong('status', statuses.join(', '), statuses);
  const askedOn = found.get('asked-on')?.text;
  const isAskedOn = askedOn !== undefined && isDay(askedOn);
  if (!isAskedOn) wrong('asked-on', 'a day such as 2026-11-01');
  return {
    ...(asking && { asking }),
    ...(asker && { asker }),
    ...(credit && { credit }),
    ...(status && { status }),
    ...(isAskedOn && { askedOn }),
    ...(title && { title }),
    ...(topic && { topic: topic.text }),
    ...(asked && { asked }),
    ...(level && isLevel(level.text) && { level: level.text }),
    ...(day && { asOf: day }),
  };
}

function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}
