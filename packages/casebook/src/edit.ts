import { presentId, refuseUnless } from '@tarebook/rules/engine';
import { refuseNoDocument } from './doors';
import { withoutMark } from './plain';
import type { CaseDocument, Span } from './shapes';

/** Text as it may stand in a cell: on one line, its bars escaped. */
function cell(text: string): string {
  refuseUnless(typeof text === 'string', 'value', text, 'a text, such as “5,000 lb”');
  return text
    .replace(/\s*[\r\n]+\s*/g, ' ')
    .replace(/(?<!\\)\|/g, '\\|')
    .trim();
}

function splice(doc: CaseDocument, start: number, end: number, text: string): string {
  const mark = doc.text.length - withoutMark(doc.text).length;
  return doc.text.slice(0, start + mark) + text + doc.text.slice(end + mark);
}

/** Puts a value into a cell; an empty one gets a space on either side. */
export function fill(doc: CaseDocument, span: Span, value: string): string {
  const { offset: start } = span.start;
  const { offset: end } = span.end;
  return splice(doc, start, end, start === end ? ` ${cell(value)} ` : cell(value));
}

const lineEnd = (doc: CaseDocument): string => (doc.text.includes('\r\n') ? '\r\n' : '\n');

/** The whole line that a place stands in, its line end included. */
function lineAt(doc: CaseDocument, offset: number): { start: number; end: number } {
  const source = withoutMark(doc.text);
  const start = source.lastIndexOf('\n', offset - 1) + 1;
  const next = source.indexOf('\n', offset);
  return { start, end: next < 0 ? source.length : next + 1 };
}

const rowText = (cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

/** A new line after the last line of a table, or a new table at the end of the document. */
function append(
  doc: CaseDocument,
  end: number | undefined,
  row: string,
  head: readonly string[],
): string {
  const eol = lineEnd(doc);
  if (end !== undefined) return splice(doc, end, end, `${eol}${row}`);
  const before = doc.text.endsWith('\n') ? eol : `${eol}${eol}`;
  const rule = rowText(head.map(() => '---'));
  return `${doc.text}${before}${rowText(head)}${eol}${rule}${eol}${row}${eol}`;
}

/** Whether a row is about a fact, by its present id or by one it had. */
const isFact = ({ topic }: CaseDocument, row: string, id: string): boolean =>
  row === id || (topic !== undefined && presentId(topic, row) === id);

/** Sets one fact; every other byte of the document stays. A fact not there yet gets a row. */
export function setFact(doc: CaseDocument, id: string, value: string): string {
  refuseNoDocument(doc);
  for (const block of doc.blocks) {
    const row =
      block.kind === 'facts' ? block.rows.find((each) => isFact(doc, each.id, id)) : undefined;
    if (row) return fill(doc, row.valueSpan, value);
  }
  const label = doc.topic?.facts[id]?.label ?? '';
  const end = doc.blocks.find((block) => block.kind === 'facts')?.end.offset;
  const row = rowText([`\`${id}\` ${label}`, value, '']);
  return append(doc, end, row, ['Fact', 'Value', 'Read from']);
}

/** Takes the row of a fact out. A document that does not mention it stays as it is. */
export function removeFact(doc: CaseDocument, id: string): string {
  refuseNoDocument(doc);
  for (const block of doc.blocks) {
    const row =
      block.kind === 'facts' ? block.rows.find((each) => isFact(doc, each.id, id)) : undefined;
    if (row) return removeLine(doc, row.idPlace.offset);
  }
  return doc.text;
}

function removeLine(doc: CaseDocument, offset: number): string {
  const { start, end } = lineAt(doc, offset);
  return splice(doc, start, end, '');
}

const listOf = (doc: CaseDocument, list: string) =>
  doc.blocks.flatMap((block) => (block.kind === 'list' && block.fact === list ? [block] : []))[0];

/** Sets one cell of a list; `row` counts from 0. A cell or column that is not there is left. */
export function setCell(
  doc: CaseDocument,
  list: string,
  row: number,
  column: string,
  value: string,
): string {
  refuseNoDocument(doc);
  const found = listOf(doc, list)?.rows[row]?.cells[column];
  return found ? fill(doc, found.span, value) : doc.text;
}

/** Adds a row to a list, and the list's table where there is none yet. */
export function addRow(
  doc: CaseDocument,
  list: string,
  label: string,
  cells: Readonly<Record<string, string>>,
): string {
  refuseNoDocument(doc);
  const block = listOf(doc, list);
  const declared = doc.topic?.facts[list];
  const all = declared?.kind === 'rows' ? declared.columns : {};
  const columns = block?.columns ?? Object.keys(all).filter((id) => all[id]?.required || cells[id]);
  const head = [`\`${list}\``, ...columns.map((id) => all[id]?.label ?? id)];
  const row = rowText([label, ...columns.map((id) => cells[id] ?? '')]);
  return append(doc, block?.end.offset, row, head);
}

/** Takes a row out of a list; `row` counts from 0. */
export function removeRow(doc: CaseDocument, list: string, row: number): string {
  refuseNoDocument(doc);
  const found = Object.values(listOf(doc, list)?.rows[row]?.cells ?? {})[0];
  return found ? removeLine(doc, found.span.start.offset) : doc.text;
}

/** A new value for a fact, or for one cell of a list; `row` counts from 0. */
export type ValueChange = {
  readonly fact: string;
  readonly row?: number;
  readonly column?: string;
  readonly value: string;
};

function spanOf(doc: CaseDocument, { fact, row, column }: ValueChange): Span | undefined {
  if (row !== undefined) return listOf(doc, fact)?.rows[row]?.cells[column ?? '']?.span;
  return doc.blocks
    .flatMap((block) => (block.kind === 'facts' ? block.rows : []))
    .find((each) => isFact(doc, each.id, fact))?.valueSpan;
}

/** Sets many values at once, read but once; what the document does not mention is left. */
export function setValues(doc: CaseDocument, changes: readonly ValueChange[]): string {
  refuseNoDocument(doc);
  const places = changes.flatMap((change) => {
    const span = spanOf(doc, change);
    return span ? [{ span, value: change.value }] : [];
  });
  // From the last up, so that those before them stay where they are.
  return places
    .toSorted((a, b) => b.span.start.offset - a.span.start.offset)
    .reduce((text, { span, value }) => fill({ ...doc, text }, span, value), doc.text);
}
