import { nearest } from '@tarebook/rules/engine';
import { isAlias, isMap, isScalar, LineCounter, parseDocument, visit } from 'yaml';
import { type Fault, plainly } from './messages';
import type { Front, Place } from './shapes';

const keys = ['title', 'topic', 'asked', 'level', 'as-of'] as const;
const levels = ['starter', 'working', 'hard'] as const;
type Level = (typeof levels)[number];
const isLevel = (text: string): text is Level => levels.some((level) => level === text);

export type Note = (at: Pick<Place, 'line' | 'column'>, fault: Fault) => void;

/**
 * Reads the front matter.
 *
 * @param source what stands between the two lines of `---`
 * @param topics the ids of all rule sets there are
 * @param line the document's line on which it begins, from 1
 */
export function readFront(
  source: string,
  topics: readonly string[],
  line: number,
  note: Note,
): Front {
  const counter = new LineCounter();
  const yaml = parseDocument(source, { lineCounter: counter, schema: 'core', uniqueKeys: true });
  const at = (offset: number) => {
    const found = counter.linePos(offset);
    return { line: line + Math.max(1, found.line) - 1, column: Math.max(1, found.col) };
  };
  const none: Front = { title: 'Untitled case', topic: '' };
  const [problem] = yaml.errors;
  if (problem) {
    const found = problem.message.split('\n')[0]?.replace(/ at line.*$/, '') ?? 'it cannot be read';
    note(at(problem.pos[0]), { code: 'front-syntax', found: found.slice(0, 120) });
    return none;
  }
  let aliased: number | undefined;
  visit(yaml, {
    Node: (_, node) => {
      const anchored = isAlias(node) || ('anchor' in node && node.anchor !== undefined);
      if (anchored) aliased ??= node.range?.[0] ?? 0;
    },
  });
  if (aliased !== undefined) {
    note(at(aliased), { code: 'alias' });
    return none;
  }
  if (!isMap(yaml.contents)) {
    note(
      { line, column: 1 },
      { code: 'front-syntax', found: 'it is not a list of keys and values' },
    );
    return none;
  }
  const found = new Map<string, { text: string; place: { line: number; column: number } }>();
  for (const { key, value } of yaml.contents.items) {
    if (!isScalar(key)) continue;
    const name = String(key.value);
    const place = at(key.range?.[0] ?? 0);
    if (!keys.some((known) => known === name)) {
      const near = nearest(name, keys);
      if (near) note(place, { code: 'front-key', key: plainly(name).slice(0, 40), near });
      continue;
    }
    const text = isScalar(value) ? (value.source ?? String(value.value ?? '')) : '';
    if (isScalar(value) && text.trim() !== '') {
      found.set(name, { text: text.trim(), place: at(value.range?.[0] ?? 0) });
    } else if (value !== null && !isScalar(value)) {
      note(place, { code: 'front-value', key: name, found: 'a list', wanted: 'one line of text' });
    }
  }
  return { ...none, ...known(found, topics, line, note) };
}

type Found = ReadonlyMap<string, { text: string; place: { line: number; column: number } }>;

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
  return {
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
