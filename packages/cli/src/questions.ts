import { readFile, stat } from 'node:fs/promises';
import { isNote, readCase, readNote } from '@tarebook/casebook';
import {
  askedIn,
  type Findable,
  type ReadMessage,
  readMessages,
  searchOver,
} from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { wrapped } from './columns';
import { caseFiles, named, readText } from './files';
import { messagesFrom } from './messages-read';

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

/** Reads the messages of a CSV table or of pasted text: what each asks, what it tells, what is urgent. */
export async function questionsOf(file: string): Promise<QuestionsRead> {
  const { messages, refused } = messagesFrom(file, named(file), await readText(file));
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
  const told = people.map(({ who, count, weight }) => {
    const those = `${count} ${count === 1 ? who : ofMany[who]}`;
    return weight === undefined ? those : `${those} of ${weight}${count === 1 ? '' : ' each'}`;
  });
  return told.length === 0 ? [] : [`Riding along: ${told.join(', ')}`];
};

const loadLines = ({ loads = [] }: ReadMessage['parts'][number]): readonly string[] =>
  loads.map(({ list, label, weight, words }) => `${list}: ${label}, ${weight} (“${words}”)`);

const forWords = (because: readonly string[]): string =>
  because.length === 0 ? '' : ` (“${because.join('”, “')}”)`;

export function questionsAsText(read: readonly ReadMessage[]): string {
  const told = read.map(({ id, parts, urgent, urgentBecause, firstReply, sameAs, personal }) => {
    const head = [
      id,
      urgent ? `URGENT: ${urgent}${forWords(urgentBecause)}` : '',
      sameAs ? `the same as ${sameAs}` : '',
    ];
    const lines = parts.flatMap((part) => [
      `  – ${wrapped(part.text, '    ')}`,
      `    ${part.topic ?? 'no topic'}${part.because.length > 0 ? `, for ${part.because.join(', ')}` : ''}`,
      ...[...factLines(part), ...peopleLines(part), ...loadLines(part)].map(
        (line) => `    ${line}`,
      ),
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
  return `${told.join('\n\n')}\n\n${read.length} ${read.length === 1 ? 'message' : 'messages'}, ${urgent} urgent\n`;
}
