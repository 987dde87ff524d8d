/// <reference types="vite/client" />

import own from 'virtual:own-topics';
import type { Topic } from '@tarebook/rules/engine';

/** Every rule set by the folder of its id, each a script of its own that is loaded when wanted. */
const files = import.meta.glob<Readonly<Record<string, unknown>>>(
  '../../../packages/rules/src/topics/*/index.ts',
);

const loaders = new Map([
  ...Object.entries(files).flatMap(([path, load]) => {
    const id = /topics\/([^/]+)\/index\.ts$/.exec(path)?.[1];
    return id === undefined ? [] : [[id, load] as const];
  }),
  ...Object.entries(own),
]);

/** The ids of all topics there are. */
export const topicIds: readonly string[] = [...loaders.keys()].toSorted();

const loaded: Record<string, Topic> = {};

const isTopic = (value: unknown, id: string): value is Topic =>
  typeof value === 'object' && value !== null && 'id' in value && value.id === id;

/** Loads a topic, so that cases of it can be read; undefined when there is none of that id. */
export async function openTopic(id: string): Promise<Topic | undefined> {
  const before = Object.hasOwn(loaded, id) ? loaded[id] : undefined;
  const load = loaders.get(id);
  if (before || !load) return before;
  const found = Object.values(await load()).find((each) => isTopic(each, id));
  if (isTopic(found, id)) loaded[id] = found;
  return loaded[id];
}

export async function openAllTopics(): Promise<void> {
  await Promise.all(topicIds.map(openTopic));
}

/** The topics loaded so far, by id. */
export const loadedTopics: Readonly<Record<string, Topic>> = loaded;
