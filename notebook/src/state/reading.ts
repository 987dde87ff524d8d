import {
  type CaseDocument,
  type FrontReader,
  isPlain,
  readCaseWith,
  type TopicShelf,
  type TreeReader,
  withoutMark,
} from '@tarebook/casebook';
import { loadedTopics, topicIds } from './topics';
import { type PackedNode, unpackTree } from './tree-packed';

let yaml: FrontReader | undefined;
let markdown: TreeReader | undefined;
/** The blocks of texts that were read when the page was built. */
const built = new Map<string, readonly PackedNode[]>([['', []]]);

/** Loads what reads YAML, so that any case whatever can be read. */
export async function openYaml(): Promise<void> {
  yaml ??= (await import('@tarebook/casebook/yaml')).yamlEntries;
}

/** Loads what reads Markdown, so that a text can be read that did not come with the page. */
export async function openReader(): Promise<void> {
  markdown ??= (await import('./reader')).treeOf;
}

export const hasReader = (): boolean => markdown !== undefined;

/** Takes note of what a text that came with the page was read as. */
export function noteBlocks(text: string, blocks: readonly PackedNode[]): void {
  built.set(withoutMark(text), blocks);
}

/** Loads what these texts need before they can be read; a case that came with the page needs nothing. */
export async function openReadersFor(texts: readonly (string | undefined)[]): Promise<void> {
  const present = texts.filter((text) => text !== undefined);
  await Promise.all([
    present.every((text) => built.has(withoutMark(text))) ? undefined : openReader(),
    present.every(isPlain) ? undefined : openYaml(),
  ]);
}

const treeOf: TreeReader = (source) => {
  if (markdown) return markdown(source);
  const blocks = built.get(source);
  if (!blocks) throw new Error('No reader of Markdown was loaded for this text.');
  return unpackTree(blocks, source);
};

/** What a case is read against: the topics loaded so far, the ids of all, YAML once it is loaded. */
export const shelfOfTopics = (): TopicShelf => ({
  ids: topicIds,
  topics: loadedTopics,
  ...(yaml && { yaml }),
});

/** Reads a case; what it needs must have been loaded. */
export const readDocument = (text: string): CaseDocument =>
  readCaseWith(treeOf, shelfOfTopics(), text);
