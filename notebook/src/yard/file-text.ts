/** More than this is no catalogue that a person keeps. */
const mostBytes = 5_000_000;

const begins = (bytes: Uint8Array, ...first: readonly number[]): boolean =>
  first.every((byte, i) => bytes[i] === byte);

/**
 * The text of a file in whichever way a spreadsheet wrote its letters.
 *
 * @throws Error with a sentence, when it is no text
 */
export async function fileText(file: File): Promise<string> {
  if (file.size > mostBytes) {
    throw new Error(`${file.name} is over 5 MB; a catalogue is smaller, so split it.`);
  }
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (begins(bytes, 0x50, 0x4b) || begins(bytes, 0xd0, 0xcf)) {
    throw new Error(`${file.name} is a workbook; save its sheet as CSV and choose that.`);
  }
  if (begins(bytes, 0xff, 0xfe)) return new TextDecoder('utf-16le').decode(bytes);
  if (begins(bytes, 0xfe, 0xff)) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
