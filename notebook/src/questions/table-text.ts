import type { MessageColumns } from '@tarebook/record';

/** More than this no counter collects, and no device reads at once. */
const mostBytes = 60_000_000;

const begins = (bytes: Uint8Array, ...first: readonly number[]): boolean =>
  first.every((byte, i) => bytes[i] === byte);

/**
 * The text of a table in whichever way a spreadsheet wrote its letters.
 *
 * @throws Error with a sentence, when it is no text
 */
export async function tableText(file: File): Promise<string> {
  if (file.size > mostBytes) {
    throw new Error(`${file.name} is over 60 MB; split it. Nothing was taken in.`);
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (begins(bytes, 0x50, 0x4b) || begins(bytes, 0xd0, 0xcf)) {
    throw new Error(
      `${file.name} is a workbook; save its sheet as CSV and choose that. Nothing was taken in.`,
    );
  }
  if (begins(bytes, 0xff, 0xfe)) return new TextDecoder('utf-16le').decode(bytes);
  if (begins(bytes, 0xfe, 0xff)) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

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
