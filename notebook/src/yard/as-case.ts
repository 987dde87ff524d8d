import { asWritten, type FactsGiven, isRows } from '@tarebook/rules/engine';
import { titleLine } from '../state/front-line';

const cell = (text: string): string => text.replace(/\s+/g, ' ').replaceAll('|', '\\|').trim();

type Of = { readonly name: string; readonly cells: Readonly<Record<string, string>> };

/**
 * Where each fact of a pair was read: `catalogue, Heron 14` where it stands so in an entry, by which
 * a changed catalogue finds the cases that rest on it.
 */
export const readInYard =
  (entries: { readonly vehicle?: Of | undefined; readonly trailer?: Of | undefined }) =>
  (id: string, given: string): string => {
    const [side = '', column = ''] = id.split('.');
    const entry = side === 'vehicle' || side === 'trailer' ? entries[side] : undefined;
    const cell = entry?.cells[column] ?? '';
    return entry && cell !== '' && given.startsWith(cell) ? `catalogue, ${entry.name}` : 'the yard';
  };

/**
 * One pair of the yard as a case of its own, to be opened, changed and kept.
 *
 * @param from where a fact that says this was read
 */
export function pairAsCase(
  title: string,
  facts: FactsGiven,
  from: (id: string, given: string) => string,
): string {
  const scalars: string[] = [];
  const lists: string[] = [];
  for (const [id, given] of Object.entries(facts)) {
    if (!isRows(given)) {
      const text = cell(asWritten(given));
      scalars.push(`| \`${id}\` | ${text} | ${cell(from(id, text))} |`);
      continue;
    }
    const columns = [...new Set(given.flatMap((row) => Object.keys(row)))].filter(
      (column) => column !== 'label',
    );
    const head = columns.map((column) => `${column.charAt(0).toUpperCase()}${column.slice(1)}`);
    const rows = given.map(
      (row) =>
        `| ${[row.label ?? '', ...columns.map((column) => row[column] ?? '')].map((each) => cell(asWritten(each))).join(' | ')} |`,
    );
    lists.push(
      [
        `| \`${id}\` | ${head.join(' | ')} |`,
        `| --- |${columns.map(() => ' --- |').join('')}`,
        ...rows,
      ].join('\n'),
    );
  }
  return [
    `---\n${titleLine(title)}\ntopic: tow-fit\n---`,
    ['| Fact | Value | Read from |', '| --- | --- | --- |', ...scalars].join('\n'),
    ...lists,
    '',
  ].join('\n\n');
}
