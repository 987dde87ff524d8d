import { checksum } from './checksum';

/** A reply in a person's own words, and the verdict that it was written for. */
export type Wording = { readonly text: string; readonly writtenFor: string };

/** Wordings of one case, by reply and units. */
export type Wordings = Readonly<Record<string, Wording>>;

const place = (topic: string, name: string): string => `tarebook.reply/${topic}/${name}`;

/** A short mark of a long key. */
export const markOf = (key: string): string =>
  checksum(new TextEncoder().encode(key)).toString(16).padStart(8, '0');

const isWording = (value: unknown): value is Wording =>
  typeof value === 'object' &&
  value !== null &&
  'text' in value &&
  'writtenFor' in value &&
  typeof value.text === 'string' &&
  typeof value.writtenFor === 'string';

/** What was kept of a case's wordings; whatever cannot be read is left where it is, unused. */
export function keptWordings(topic: string, name: string): Wordings {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(place(topic, name)) ?? '{}');
    if (typeof value !== 'object' || value === null) return {};
    const entries = Object.entries(value).flatMap(([kind, wording]: [string, unknown]) =>
      isWording(wording) ? [[kind, wording] as const] : [],
    );
    return Object.fromEntries(entries);
  } catch {
    return {};
  }
}

/** @returns whether this device took it. */
export function keepWordings(topic: string, name: string, wordings: Wordings): boolean {
  try {
    if (Object.keys(wordings).length === 0) localStorage.removeItem(place(topic, name));
    else localStorage.setItem(place(topic, name), JSON.stringify(wordings));
    return true;
  } catch {
    return false;
  }
}
