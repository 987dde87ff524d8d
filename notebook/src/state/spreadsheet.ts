const begins = (bytes: Uint8Array, ...first: readonly number[]): boolean =>
  first.every((byte, i) => bytes[i] === byte);

/**
 * The text of a file in whichever way a spreadsheet wrote its letters.
 *
 * @param most bytes that may be read, and what is said of a file with more; `after` ends a refusal
 * @throws Error with a sentence, when it is too large or no text
 */
export async function spreadsheetText(
  file: File,
  most: { readonly bytes: number; readonly says: string; readonly after?: string },
): Promise<string> {
  const refused = (says: string): Error =>
    new Error([`${file.name} ${says}.`, most.after ?? ''].join(' ').trim());
  if (file.size > most.bytes) throw refused(most.says);
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (begins(bytes, 0x50, 0x4b) || begins(bytes, 0xd0, 0xcf)) {
    throw refused('is a workbook; save its sheet as CSV and choose that');
  }
  if (begins(bytes, 0xff, 0xfe)) return new TextDecoder('utf-16le').decode(bytes);
  if (begins(bytes, 0xfe, 0xff)) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
