import { type MessagesRead, messageColumns, messagesOf, splitBunch } from '@tarebook/record';
import { CsvError, parse } from 'csv-parse/sync';
import { BadInput } from './files';

/** More than this nobody reads in a day, nor in a year. */
const mostMessages = 50_000;

/** What begins a file that holds no messages as they are pasted, and what it is. */
const others: readonly (readonly [RegExp, string])[] = [
  [/^\s*(?:\{\s*"|\[\s*[{["])/, 'JSON'],
  [/^\s*\{\\rtf/, 'rich text'],
  [/^\s*<(?:!doctype|html|\?xml)/i, 'HTML or XML'],
  [/^%PDF/, 'PDF'],
];

const cellsOf = (line: string, mark: string): readonly string[] =>
  line
    .replace(/^\uFEFF/, '')
    .split(mark)
    .map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));

/** What parts the cells of a table’s head; undefined where a text’s first line is no head of one. */
function partedBy(file: string, text: string): string | undefined {
  const head = text.slice(0, 20_000).split(/\r\n|\r|\n/, 1)[0] ?? '';
  const marks = [',', ';', '\t'];
  const most = marks.toSorted((a, b) => head.split(b).length - head.split(a).length)[0] ?? ',';
  if (/\.(?:csv|tsv)$/i.test(file)) return most;
  if (/\.(?:md|markdown)$/i.test(file)) return undefined;
  const cells = cellsOf(head, most);
  const isHead = cells.every((cell) => /^[\p{L}\p{N}_ #-]{1,24}$/u.test(cell));
  if (!isHead) return undefined;
  const known = messageColumns(cells);
  // “Question” alone above what was pasted heads no table; one column with its name is a file of its own.
  if (known.text !== undefined && cells.length > 1) return most;
  // “Wren, Friday” heads no table; “id,price” does, and lacks the words.
  const isTable =
    Object.keys(known).length > 0 &&
    cells.length > 1 &&
    cellsOf(text.split(/\r\n|\r|\n/, 2)[1] ?? '', most).length === cells.length;
  return isTable ? most : undefined;
}

function refuseMany(name: string, many: number): void {
  if (many <= mostMessages) return;
  const [all, most] = [many, mostMessages].map((each) => each.toLocaleString('en-US'));
  throw new BadInput(
    `${name}: ${all} messages are more than ${most}; part the file, and read each part.`,
  );
}

/** The messages of a table, and in one sentence each the rows that were refused. */
function rowsOf(name: string, text: string, delimiter: string): MessagesRead {
  let records: string[][];
  try {
    records = parse(text, { bom: true, delimiter, relax_column_count: true });
  } catch (problem) {
    if (!(problem instanceof CsvError)) throw problem;
    const line = 'lines' in problem ? Number(problem.lines) : 1;
    throw new BadInput(
      `${name}:${line}: this is no CSV: a quotation mark is not closed or stands inside a cell; double it there.`,
    );
  }
  const [columns = []] = records;
  const uneven = records.findIndex(
    (cells) =>
      cells.length > columns.length &&
      cells.slice(columns.length).some((cell) => cell.trim() !== ''),
  );
  if (uneven >= 0) {
    throw new BadInput(
      `${name}: row ${uneven} has ${records[uneven]?.length ?? 0} cells under ${columns.length} columns; set a cell with a comma in quotation marks.`,
    );
  }
  refuseMany(name, records.length - 1);
  const read = messagesOf(records);
  if ('says' in read) throw new BadInput(`${name}:1: ${read.says}`);
  const [first] = read.refused;
  if (read.messages.length === 0 && first) throw new BadInput(`${name}: ${first.says}`);
  return read;
}

/** The messages of a text as it was pasted; each is numbered in its order. */
function pastedOf(name: string, text: string): MessagesRead {
  const [, other] = others.find(([begins]) => begins.test(text)) ?? [];
  if (other !== undefined) {
    throw new BadInput(
      `${name}: this is ${other}; give the messages as CSV, as text or as Markdown.`,
    );
  }
  const pasted = splitBunch(text);
  if (pasted.length === 0) {
    throw new BadInput(
      `${name}: there is no message in it; give a CSV table with a column “text”, or the messages as they were pasted, an empty line between two of them.`,
    );
  }
  const head = ['id', 'channel', 'asked on', 'asker', 'text'];
  refuseMany(name, pasted.length);
  const rows = pasted.map(({ channel, askedOn, asker, text: words }, at) => [
    ...[`message-${at + 1}`, channel, askedOn, asker],
    words,
  ]);
  const read = messagesOf([head, ...rows]);
  if ('says' in read) throw new BadInput(`${name}: ${read.says}`);
  return read;
}

/**
 * The messages of a CSV table, or of a text or a page of Markdown as it was pasted: which of them it
 * is the name of the file says, and else its first line.
 *
 * @throws BadInput where no message is in it
 */
export function messagesFrom(file: string, name: string, text: string): MessagesRead {
  const delimiter = partedBy(file, text);
  return delimiter === undefined ? pastedOf(name, text) : rowsOf(name, text, delimiter);
}
