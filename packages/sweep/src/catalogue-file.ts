import type { Entry } from './catalogue';

const quoted = (cell: string): string =>
  /[",;\r\n\t#]/.test(cell) || cell !== cell.trim() ? `"${cell.replaceAll('"', '""')}"` : cell;

/** Entries as a CSV file in our own columns, which is read back as it was. */
export function catalogueFile(entries: readonly Entry[]): string {
  const columns = [
    'name',
    ...new Set(
      entries.flatMap(({ cells }) => Object.keys(cells).filter((each) => each !== 'name')),
    ),
  ];
  const lines = entries.map(({ cells }) =>
    columns.map((column) => quoted(cells[column] ?? '')).join(','),
  );
  return `${[columns.map(quoted).join(','), ...lines].join('\n')}\n`;
}
