import { checksum } from './checksum';
import { dropRecord, everyRecord, hasFields, putRecord } from './shelf';

export const ownFileNames = [
  'trailers.csv',
  'vehicles.csv',
  'loads.csv',
  'accessories.csv',
  'accessory-fits.csv',
  'rates.csv',
  'offers.csv',
  'options.csv',
  'floor-plans.csv',
  'columns.csv',
] as const;
export type OwnFileName = (typeof ownFileNames)[number];

/** The texts of one's own files, by what they are called here. */
export type OwnTexts = { readonly [Name in OwnFileName]?: string };

/** A file of the dealer's own catalogue, in our columns, as it was read from theirs. */
export type OwnFile = {
  readonly file: string;
  readonly text: string;
  /** What their file was called. */
  readonly from: string;
  /** Milliseconds since 1970. */
  readonly at: number;
};

export const isOwnFile = (value: unknown): value is OwnFile =>
  hasFields(value, { file: 'string', text: 'string', from: 'string', at: 'number' });

export const allOwnFiles = (): Promise<readonly OwnFile[]> => everyRecord('catalogue', isOwnFile);
export const keepOwnFile = (own: OwnFile): Promise<void> => putRecord('catalogue', own.file, own);
export const dropOwnFile = (file: string): Promise<void> => dropRecord('catalogue', file);

/** What the yard is asked of: each file of one's own in the place of the invented one. */
export function filesOf(own: readonly OwnFile[]): OwnTexts | undefined {
  const told = ownFileNames.flatMap((name) => {
    const found = own.find(({ file }) => file === name);
    return found ? [[name, found.text] as const] : [];
  });
  return told.length === 0 ? undefined : Object.fromEntries(told);
}

/** Of them only the vehicles and trailers, which every pair hangs on. */
export function pairsOf(files: OwnTexts | undefined): OwnTexts | undefined {
  const [trailers, vehicles] = [files?.['trailers.csv'], files?.['vehicles.csv']];
  if (trailers === undefined && vehicles === undefined) return undefined;
  return {
    ...(trailers !== undefined && { 'trailers.csv': trailers }),
    ...(vehicles !== undefined && { 'vehicles.csv': vehicles }),
  };
}

/** Which catalogue counts on this device, so that it is known later: the day of its newest file, and a sum. */
export function catalogueVersion(own: readonly OwnFile[]): string {
  if (own.length === 0) return 'as it came';
  const texts = own.toSorted((a, b) => a.file.localeCompare(b.file)).map(({ text }) => text);
  const sum = checksum(new TextEncoder().encode(texts.join('\0'))).toString(36);
  const newest = new Date(Math.max(...own.map(({ at }) => at)));
  return `${newest.toISOString().slice(0, 10)} ${sum}`;
}
