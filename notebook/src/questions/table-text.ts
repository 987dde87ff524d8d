import type { MessageColumns } from '@tarebook/record';
import { spreadsheetText } from '../state/spreadsheet';

/** More than this no counter collects, and no device reads at once. */
const mostRead = {
  bytes: 60_000_000,
  says: 'is over 60 MB; split it',
  after: 'Nothing was taken in.',
};

/** The text of a table of messages; see `spreadsheetText`. */
export const tableText = (file: File): Promise<string> => spreadsheetText(file, mostRead);

const place = 'tarebook.question-columns';
const most = 20;
const keys = ['text', 'channel', 'askedOn', 'asker'] as const;

type Told = { readonly heads: string; readonly columns: MessageColumns };

function columnsIn(value: unknown): MessageColumns {
  const of = (key: string): unknown =>
    typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;
  return Object.fromEntries(
    keys.flatMap((key) => {
      const at = of(key);
      return typeof at === 'number' && Number.isInteger(at) && at >= 0 ? [[key, at]] : [];
    }),
  );
}

/** What was told before, the latest last; a device that keeps nothing asks again. */
function all(): readonly Told[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? '[]');
    return Array.isArray(kept)
      ? kept.flatMap(({ heads, columns }) =>
          typeof heads === 'string' ? [{ heads, columns: columnsIn(columns) }] : [],
        )
      : [];
  } catch {
    return [];
  }
}

/** Which column is which in a table with these, if it was told before. */
export function columnsTold(heads: readonly string[]): MessageColumns | undefined {
  const found = all().findLast((each) => each.heads === JSON.stringify(heads))?.columns;
  return found?.text === undefined || found.text >= heads.length ? undefined : found;
}

export function tellColumns(heads: readonly string[], columns: MessageColumns): void {
  const own = JSON.stringify(heads);
  const others = all().filter((each) => each.heads !== own);
  try {
    const now = [...others, { heads: own, columns }].slice(-most);
    localStorage.setItem(place, JSON.stringify(now));
  } catch {
    // It is asked again the next time.
  }
}
