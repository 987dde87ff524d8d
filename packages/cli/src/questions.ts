import { readFile, stat } from 'node:fs/promises';
import { isNote, readCase, readNote } from '@tarebook/casebook';
import {
  askedIn,
  type Findable,
  type Message,
  type ReadMessage,
  readMessages,
  searchOver,
} from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { CsvError, parse } from 'csv-parse/sync';
import { wrapped } from './columns';
import { BadInput, caseFiles, named, readText } from './files';

const columns = ['id', 'channel', 'asked_on', 'asker', 'text'] as const;
type Row = Readonly<Record<(typeof columns)[number], string>>;

/** More than this nobody reads in a day, nor in a year. */
const mostRows = 50_000;

function rowsOf(name: string, text: string): readonly Row[] {
  let records: readonly (readonly string[])[];
  try {
    records = parse(text, {
      bom: true,
      skip_empty_lines: true,
      relax_column_count: true,
      to: mostRows,
    });
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    const line = 'lines' in problem ? Number(problem.lines) : 1;
    throw new BadInput(
      `${name}:${line}: this is no CSV: a quotation mark is not closed or stands inside a cell; double it there.`,
    );
  }
  const [head = [], ...rows] = records;
  const names = head.map((cell) => cell.trim().toLowerCase());
  const missing = columns.filter((column) => !names.includes(column));
  if (missing.length > 0) {
    throw new BadInput(
      `${name}:1: there is no column ${missing.join(', ')}; the first line is ${columns.join(',')}.`,
    );
  }
  const seen = new Map<string, number>();
  return rows.map((cells, at) => {
    const cell = (column: (typeof columns)[number]) => (cells[names.indexOf(column)] ?? '').trim();
    const id = cell('id');
    if (id === '') throw new BadInput(`${name}: message ${at + 1} has no id; give each its own.`);
    const before = seen.get(id);
    if (before !== undefined) {
      throw new BadInput(
        `${name}: messages ${before} and ${at + 1} have the same id “${id.slice(0, 40)}”; give each its own.`,
      );
    }
    seen.set(id, at + 1);
    return {
      id,
      channel: cell('channel'),
      asked_on: cell('asked_on'),
      asker: cell('asker'),
      text: cell('text'),
    };
  });
}

/** The cases and notes of the folder one stands in, if it has any. */
async function filedHere(): Promise<readonly Findable[]> {
  if (!(await stat('cases').catch(() => undefined))?.isDirectory()) return [];
  const { files } = await caseFiles(['cases']);
  const read = files.map(async (path): Promise<Findable> => {
    const text = await readFile(path, 'utf8');
    if (isNote(text)) return { path, topic: 'note', title: readNote(text).front.title, text };
    const { front, facts } = readCase(text);
    return { path, topic: front.topic, title: front.title, text, facts: Object.keys(facts) };
  });
  return Promise.all(read);
}

/** Reads the messages of a CSV file: what each asks, what it tells, what is urgent. */
export async function questionsOf(file: string): Promise<readonly ReadMessage[]> {
  const rows = rowsOf(named(file), await readText(file));
  const messages = rows.map(({ asked_on: askedOn, ...row }): Message => ({ ...row, askedOn }));
  const filed = await filedHere();
  return readMessages(messages, {
    topics,
    ...(filed.length > 0 && {
      search: searchOver(filed, topics),
      before: filed.map((each) => ({ topic: each.topic, text: askedIn(each) })),
    }),
  });
}

const factLines = (part: ReadMessage['parts'][number]): readonly string[] =>
  Object.entries(part.facts).map(
    ([fact, value]) => `${fact}: ${value} (“${part.words[fact] ?? ''}”)`,
  );

export function questionsAsText(read: readonly ReadMessage[]): string {
  const told = read.map(({ id, parts, urgent, firstReply, sameAs, personal }) => {
    const head = [id, urgent ? `URGENT: ${urgent}` : '', sameAs ? `the same as ${sameAs}` : ''];
    const lines = parts.flatMap((part) => [
      `  – ${wrapped(part.text, '    ')}`,
      `    ${part.topic ?? 'no topic'}${part.because.length > 0 ? `, for ${part.because.join(', ')}` : ''}`,
      ...factLines(part).map((line) => `    ${line}`),
      ...(part.ask.length > 0 ? [`    Ask: ${wrapped(part.ask.join(' '), '      ')}`] : []),
      ...(part.answeredBy ? [`    Near: ${part.answeredBy}`] : []),
    ]);
    const hidden = personal.length > 0 ? [`  Personal, kept apart: ${personal.length}`] : [];
    const reply = firstReply ? [`  Reply at once: ${wrapped(firstReply, '    ')}`] : [];
    return [head.filter((each) => each !== '').join('  '), ...reply, ...lines, ...hidden].join(
      '\n',
    );
  });
  const urgent = read.filter((each) => each.urgent).length;
  return `${told.join('\n\n')}\n\n${read.length} messages, ${urgent} urgent\n`;
}
