import { checksum } from './checksum';
import { hasFields } from './shelf';

/** A reply in a person's own words, and the verdict that it was written for. */
export type Wording = { readonly text: string; readonly writtenFor: string };

/** Wordings of one case, by reply and units. */
export type Wordings = Readonly<Record<string, Wording>>;

/** The wordings of one case, as they go into a file. */
export type CaseWordings = {
  readonly topic: string;
  readonly name: string;
  readonly wordings: Wordings;
};

const prefix = 'tarebook.reply/';
const place = (topic: string, name: string): string => `${prefix}${topic}/${name}`;

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

/** The wordings that are whole; whatever is not is left out. */
function wholeOf(value: unknown): Wordings {
  if (typeof value !== 'object' || value === null) return {};
  const entries = Object.entries(value).flatMap(([kind, wording]: [string, unknown]) =>
    isWording(wording) ? [[kind, wording] as const] : [],
  );
  return Object.fromEntries(entries);
}

/** What was kept of a case's wordings; whatever cannot be read is left where it is, unused. */
export function keptWordings(topic: string, name: string): Wordings {
  try {
    return wholeOf(JSON.parse(localStorage.getItem(place(topic, name)) ?? '{}'));
  } catch {
    return {};
  }
}

/** Whether a value is the wordings of a case, all of them whole. */
export function isCaseWordings(value: unknown): value is CaseWordings {
  if (!hasFields(value, { topic: 'string', name: 'string', wordings: 'object' })) return false;
  const held: unknown = Object.getOwnPropertyDescriptor(value, 'wordings')?.value;
  return typeof held === 'object' && held !== null && Object.values(held).every(isWording);
}

/** The wordings of every case; a device that refuses storage has none. */
export function allWordings(): readonly CaseWordings[] {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix))
      .toSorted()
      .flatMap((key) => {
        const [topic = '', ...rest] = key.slice(prefix.length).split('/');
        const name = rest.join('/');
        const wordings = keptWordings(topic, name);
        return Object.keys(wordings).length === 0 ? [] : [{ topic, name, wordings }];
      });
  } catch {
    return [];
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
