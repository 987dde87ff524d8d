import { readdir, readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { compareVersions, isVersion, type Topic, topicFromPublished } from '@tarebook/rules/engine';

/** Where the rules package keeps the released versions of its rule sets. */
export const keptFolder = (): string =>
  join(
    dirname(createRequire(import.meta.url).resolve('@tarebook/rules/package.json')),
    'published',
  );

/** The kept versions of a topic, oldest first; none when it was never released. */
export async function keptVersions(
  topic: string,
  folder: string = keptFolder(),
): Promise<readonly string[]> {
  const files = await readdir(join(folder, topic)).catch(() => []);
  return files
    .map((file) => file.replace(/\.json$/, ''))
    .filter(isVersion)
    .sort(compareVersions);
}

/** Read once, however many answers are run again: a released version never changes. */
const read = new Map<string, Promise<Topic>>();

const readKept = async (file: string): Promise<Topic> =>
  topicFromPublished(JSON.parse(await readFile(file, 'utf8')));

/** A kept version of a topic, ready to be asked; undefined when that version is not kept. */
export async function keptTopic(
  topic: string,
  version: string,
  folder: string = keptFolder(),
): Promise<Topic | undefined> {
  if (!(await keptVersions(topic, folder)).includes(version)) return undefined;
  const file = join(folder, topic, `${version}.json`);
  const kept = read.get(file) ?? readKept(file);
  read.set(file, kept);
  return kept;
}
