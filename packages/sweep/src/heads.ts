import { parse } from 'csv-parse/sync';
import { delimiterOf, headsOf, isRaw, isTitle, sheetOptions } from './sheet';

const quoted = (cell: string): string => `"${cell.replaceAll('"', '""')}"`;

/**
 * A sheet under other heads and else as it was, so that each row stays on its line.
 *
 * @param called heads of the sheet, and what each is to be called
 */
export function underHeads(text: string, called: Readonly<Record<string, string>>): string {
  if (Object.keys(called).length === 0) return text;
  const plain = text.replace(/^\ufeff/, '');
  const delimiter = delimiterOf(plain);
  let found: unknown;
  try {
    found = parse(plain, { ...sheetOptions, delimiter, to: 50 });
  } catch {
    return text;
  }
  const all = Array.isArray(found) ? found.filter(isRaw) : [];
  const at = all.findIndex(({ record }) => !isTitle(record));
  const head = all[at];
  if (!head) return text;
  const bytes = new TextEncoder().encode(plain);
  const written = (from: number, to?: number): string =>
    new TextDecoder().decode(bytes.subarray(from, to));
  const before = all[at - 1]?.info.bytes ?? 0;
  const breaks = written(before, head.info.bytes).match(/\r\n|\r|\n/g) ?? [];
  const heads = headsOf(head.record).map((each) =>
    quoted(Object.hasOwn(called, each) ? (called[each] ?? each) : each),
  );
  const line = `${heads.join(delimiter)}${breaks.at(-1) ?? ''}`;
  return [
    written(0, before),
    ...breaks.slice(0, -1).map(() => breaks.at(-1) ?? ''),
    line,
    written(head.info.bytes),
  ].join('');
}
