import { asWritten, type FactsGiven, isRows } from '@tarebook/rules/engine';
import { titleLine } from '../state/front-line';

const cell = (text: string): string => text.replace(/\s+/g, ' ').replaceAll('|', '\\|').trim();

/** One pair of the yard as a case of its own, to be opened, changed and kept. */
export function pairAsCase(title: string, facts: FactsGiven, from: string): string {
  const scalars: string[] = [];
  const lists: string[] = [];
  for (const [id, given] of Object.entries(facts)) {
    if (!isRows(given)) {
      scalars.push(`| \`${id}\` | ${cell(asWritten(given))} | ${cell(from)} |`);
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
