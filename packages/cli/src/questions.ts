import { readFile, stat } from 'node:fs/promises';
import { isNote, readCase, readNote } from '@tarebook/casebook';
import {
  askedIn,
  type Findable,
  type MessagesRead,
  messagesOf,
  type ReadMessage,
  readMessages,
  searchOver,
} from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { CsvError, parse } from 'csv-parse/sync';
import { wrapped } from './columns';
import { BadInput, caseFiles, named, readText } from './files';

/** More than this nobody reads in a day, nor in a year. */
const mostRows = 50_000;

/** The messages of a CSV file, and in one sentence each the rows that were refused. */
function rowsOf(name: string, text: string): MessagesRead {
  let records: string[][];
  try {
    records = parse(text, { bom: true, relax_column_count: true, to: mostRows });
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    const line = 'lines' in problem ? Number(problem.lines) : 1;
    throw new BadInput(
      `${name}:${line}: this is no CSV: a quotation mark is not closed or stands inside a cell; double it there.`,
    );
  }
  const read = messagesOf(records);
  if ('says' in read) throw new BadInput(`${name}:1: ${read.says}`);
  const [first] = read.refused;
  if (read.messages.length === 0 && first) throw new BadInput(`${name}: ${first.says}`);
  return read;
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

export type QuestionsRead = {
  readonly read: readonly ReadMessage[];
  /** One sentence for each row that was refused. */
  readonly refused: readonly string[];
};

/** Reads the messages of a CSV file: what each asks, what it tells, what is urgent. */
export async function questionsOf(file: string): Promise<QuestionsRead> {
  const { messages, refused } = rowsOf(named(file), await readText(file));
  const filed = await filedHere();
  const read = readMessages(messages, {
    topics,
    ...(filed.length > 0 && {
      search: searchOver(filed, topics),
      before: filed.map((each) => ({ topic: each.topic, text: askedIn(each) })),
    }),
  });
  return { read, refused: refused.map(({ says }) => `${named(file)}: ${says}`) };
}

const factLines = (part: ReadMessage['parts'][number]): readonly string[] =>
  Object.entries(part.facts).map(
    ([fact, value]) => `${fact}: ${value} (“${part.words[fact] ?? ''}”)`,
  );

const ofMany: Readonly<Record<'adult' | 'child' | 'dog', string>> = {
  adult: 'adults',
  child: 'children',
  dog: 'dogs',
};

const peopleLines = ({ people = [] }: ReadMessage['parts'][number]): readonly string[] => {
  const told = people.map(({ who, count }) => `${count} ${count === 1 ? who : ofMany[who]}`);
  return told.length === 0 ? [] : [`Riding along: ${told.join(', ')}`];
};

export function questionsAsText(read: readonly ReadMessage[]): string {
  const told = read.map(({ id, parts, urgent, firstReply, sameAs, personal }) => {
    const head = [id, urgent ? `URGENT: ${urgent}` : '', sameAs ? `the same as ${sameAs}` : ''];
    const lines = parts.flatMap((part) => [
      `  – ${wrapped(part.text, '    ')}`,
      `    ${part.topic ?? 'no topic'}${part.because.length > 0 ? `, for ${part.because.join(', ')}` : ''}`,
      ...[...factLines(part), ...peopleLines(part)].map((line) => `    ${line}`),
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
