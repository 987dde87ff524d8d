import type { Message } from './shapes';

/** What messages carry in a table, by how other programs head it. */
const headings: Readonly<Record<keyof Message, readonly string[]>> = {
  text: [
    'text',
    'message',
    'comment',
    'question',
    'body',
    'content',
    'msg',
    'words',
    'description',
  ],
  id: ['id', 'message id', 'comment id', 'ticket', 'number', 'no', '#'],
  channel: ['channel', 'source', 'via', 'by way of', 'came by', 'inbox'],
  askedOn: [
    'asked on',
    'date',
    'day',
    'time',
    'sent',
    'created',
    'created at',
    'received',
    'when',
    'timestamp',
    'posted',
  ],
  asker: [
    'asker',
    'name',
    'from',
    'author',
    'sender',
    'user',
    'username',
    'customer',
    'who',
    'display name',
  ],
};

/** A row that was not taken in, by its number below the heading, and why. */
type RefusedRow = { readonly row: number; readonly says: string };

export type MessagesRead = {
  readonly messages: readonly Message[];
  readonly refused: readonly RefusedRow[];
};

/** A longer cell is a file by mistake, and no message. */
const mostCharacters = 100_000;

const plain = (name: string): string =>
  name
    .replace(/^\uFEFF/, '')
    .trim()
    .toLowerCase()
    .replace(/[_-]+/g, ' ');

/** Where each column stands, from 0; none where there is none. */
export type MessageColumns = Readonly<Partial<Record<keyof Message, number>>>;

/** The columns of a table by their names, as far as they are known. */
export function messageColumns(head: readonly string[]): MessageColumns {
  const names = head.map(plain);
  const found = Object.entries(headings).flatMap(([key, words]) => {
    const at = words.map((word) => names.indexOf(word)).find((place) => place >= 0);
    return at === undefined ? [] : [[key, at] as const];
  });
  return Object.fromEntries(found);
}

/** A cell as it is kept: without what no screen shows; line breaks stay. */
const kept = (cell: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out.
  cell.replace(/[\u0000-\u0008\u000B-\u001F\u007F\u202A-\u202E\u2066-\u2069]/g, ' ').trim();

/**
 * The messages of a table as other programs export it, its first row the heading. A column of words is
 * all it needs; rows without an id where there is no such column are numbered. What cannot be taken is
 * refused row by row, and the others are read.
 *
 * @param columns where somebody told which is which
 * @returns a sentence where there is no column of words
 */
export function messagesOf(
  table: readonly (readonly string[])[],
  columns?: MessageColumns,
): MessagesRead | { readonly says: string } {
  const [head = [], ...rows] = table;
  const at = columns ?? messageColumns(head);
  if (at.text === undefined) {
    const found = head
      .map(kept)
      .filter((name) => name !== '')
      .slice(0, 8)
      .join(', ')
      .slice(0, 200);
    return {
      says: `there is no column with the words that were asked among “${found}”; head it text, message, comment or question.`,
    };
  }
  const messages: Message[] = [];
  const refused: RefusedRow[] = [];
  const seen = new Map<string, number>();
  for (const [place, cells] of rows.entries()) {
    const row = place + 1;
    const refuse = (says: string): void => {
      refused.push({ row, says: `message ${row} ${says}` });
    };
    const cell = (key: keyof Message): string => kept(cells[at[key] ?? -1] ?? '');
    if (cells.every((each) => kept(each) === '')) continue;
    if ((cells[at.text] ?? '').length > mostCharacters) {
      refuse(
        `has more than ${mostCharacters.toLocaleString('en-US')} letters; cut it down to what was asked.`,
      );
      continue;
    }
    const text = cell('text');
    const id = at.id === undefined ? `row-${row}` : cell('id');
    const before = seen.get(id);
    if (id === '') refuse('has no id; give each its own.');
    else if (before !== undefined) {
      refuse(`has the same id “${id.slice(0, 40)}” as message ${before}; give each its own.`);
    } else if (!/[\p{L}\p{N}]/u.test(text))
      refuse('has no words; write what was asked, or take the row out.');
    else
      messages.push({
        id,
        channel: cell('channel'),
        askedOn: cell('askedOn'),
        asker: cell('asker'),
        text,
      });
    if (id !== '' && before === undefined) seen.set(id, row);
  }
  return { messages, refused };
}
