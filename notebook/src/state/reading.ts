import { type CaseDocument, type FrontReader, isPlain, type TopicShelf } from '@tarebook/casebook';
import { idle } from '../elements/idle';
import { loadedTopics, topicIds } from './topics';

/** A case as it was read when the page was built: without its text, its rules, and places in prose. */
export type Read = Omit<CaseDocument, 'text' | 'topic'>;

let yaml: FrontReader | undefined;
let reader: typeof import('./reader') | undefined;

const nothing: Read = {
  front: { title: '', topic: '' },
  ...{ blocks: [], facts: {}, renamed: [], readFrom: {}, expectations: [], troubles: [] },
};
/** What came with the page, by text. */
const built = new Map<string, Read>([['', nothing]]);

/** Loads what reads YAML, so that any case whatever can be read. */
export async function openYaml(): Promise<void> {
  yaml ??= (await import('@tarebook/casebook/yaml')).yamlEntries;
}

/** Loads what reads Markdown, so that a text can be read that did not come with the page. */
export async function openReader(): Promise<void> {
  reader ??= await import('./reader');
}

export const hasReader = (): boolean => reader !== undefined;

let isRehearsed = false;

/**
 * Reads what makes up a text, once, a piece in an idle moment each: a reader's first text takes it
 * several times as long as any after it, and that is not to be the first key that somebody presses.
 */
export async function rehearse(text: string): Promise<void> {
  if (isRehearsed) return;
  isRehearsed = true;
  // Whoever types is told where it cannot be had.
  await openReader().catch(() => undefined);
  for (const piece of [...text.split(/\n(?=\n)/), text]) {
    await idle();
    reader?.readCaseFrom(shelfOfTopics(), piece);
  }
}

/** Takes note of what a text that came with the page was read as. */
export function noteRead(text: string, read: Read): void {
  built.set(text, read);
}

/** Loads what these texts need before they can be read; a case that came with the page needs nothing. */
export async function openReadersFor(texts: readonly (string | undefined)[]): Promise<void> {
  const others = texts.filter((text) => text !== undefined).filter((text) => !built.has(text));
  if (others.length === 0) return;
  await Promise.all([openReader(), others.every(isPlain) ? undefined : openYaml()]);
}

/** What a case is read against: the topics loaded so far, the ids of all, YAML once it is loaded. */
const shelfOfTopics = (): TopicShelf => ({
  ids: topicIds,
  topics: loadedTopics,
  ...(yaml && { yaml }),
});

/** Reads a case; what it needs must have been loaded. */
export function readDocument(text: string): CaseDocument {
  const read = built.get(text);
  const topic = read && loadedTopics[read.front.topic];
  if (read && (topic || read === nothing)) return { ...read, text, ...(topic && { topic }) };
  if (!reader) throw new Error('No reader of Markdown was loaded for this text.');
  return reader.readCaseFrom(shelfOfTopics(), text);
}
