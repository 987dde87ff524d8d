import { type FrontReader, isPlain, type TopicShelf } from '@tarebook/casebook';
import { loadedTopics, topicIds } from './topics';

let yaml: FrontReader | undefined;

/** Loads what reads YAML, so that any case whatever can be read. */
export async function openYaml(): Promise<void> {
  yaml ??= (await import('@tarebook/casebook/yaml')).yamlEntries;
}

/** The same where one of the texts needs it; nearly every case does without. */
export async function openYamlFor(texts: readonly (string | undefined)[]): Promise<void> {
  if (texts.some((text) => text !== undefined && !isPlain(text))) await openYaml();
}

/** What a case is read against: the topics loaded so far, the ids of all, YAML once it is loaded. */
export const shelfOfTopics = (): TopicShelf => ({
  ids: topicIds,
  topics: loadedTopics,
  ...(yaml && { yaml }),
});
