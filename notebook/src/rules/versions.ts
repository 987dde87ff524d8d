import {
  compareTopics,
  partInWords,
  sayChange,
  type Topic,
  topicFromPublished,
} from '@tarebook/rules/engine';

/** Released rule sets, read when they are wanted. */
const files = import.meta.glob<unknown>('../../../packages/rules/published/*/*.json', {
  import: 'default',
});

export type Changed = {
  readonly from: string;
  readonly parts: readonly { readonly part: string; readonly says: readonly string[] }[];
};

/** A rule set as it was released, by topic and version. */
export async function released(topic: string, version: string): Promise<Topic | undefined> {
  const [, read] =
    Object.entries(files).find(([path]) => path.endsWith(`/${topic}/${version}.json`)) ?? [];
  return read && topicFromPublished(await read());
}

/** What a topic says otherwise than each earlier release of it did, the latest first. */
export async function changedSince(topic: Topic): Promise<readonly Changed[]> {
  const found: Changed[] = [];
  for (const [path, read] of Object.entries(files)) {
    const [, id, version] = /published\/([^/]+)\/([^/]+)\.json$/.exec(path) ?? [];
    if (id !== topic.id || version === undefined || version === topic.version) continue;
    const was = topicFromPublished(await read());
    const parts = new Map<string, string[]>();
    for (const change of compareTopics(was, topic)) {
      parts.set(change.part, [...(parts.get(change.part) ?? []), sayChange(change, topic)]);
    }
    const told = [...parts].map(([part, says]) => ({ part: partInWords(part), says }));
    found.push({ from: version, parts: told });
  }
  return found.sort((a, b) => b.from.localeCompare(a.from, 'en', { numeric: true }));
}
