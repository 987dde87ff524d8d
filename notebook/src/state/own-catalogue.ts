import type { CatalogueFiles } from '@tarebook/sweep';
import { dropRecord, everyRecord, hasFields, putRecord } from './shelf';

export const ownFileNames = ['trailers.csv', 'vehicles.csv'] as const;
export type OwnFileName = (typeof ownFileNames)[number];

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
export function filesOf(own: readonly OwnFile[]): CatalogueFiles | undefined {
  const text = (name: OwnFileName): string | undefined =>
    own.find(({ file }) => file === name)?.text;
  const [trailers, vehicles] = ownFileNames.map(text);
  if (trailers === undefined && vehicles === undefined) return undefined;
  return {
    ...(trailers !== undefined && { 'trailers.csv': trailers }),
    ...(vehicles !== undefined && { 'vehicles.csv': vehicles }),
  };
}
