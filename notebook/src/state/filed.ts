/// <reference types="vite/client" />

/** The worked cases that come with the page, read when they are wanted. */
const files = import.meta.glob<string>(['../../../cases/*/*.md', '!../../../cases/refused/*.md'], {
  query: '?raw',
  import: 'default',
});

export type Filed = { readonly topic: string; readonly name: string; readonly text: string };

const pattern = /cases\/([^/]+)\/([^/]+)\.md$/;

const readers = Object.entries(files).flatMap(([path, read]) => {
  const [, topic, name] = pattern.exec(path) ?? [];
  return topic !== undefined && name !== undefined ? [{ topic, name, read }] : [];
});

export const allFiled = async (): Promise<readonly Filed[]> =>
  Promise.all(readers.map(async ({ topic, name, read }) => ({ topic, name, text: await read() })));

export async function filedCase(topic: string, name: string): Promise<string | undefined> {
  return readers.find((each) => each.topic === topic && each.name === name)?.read();
}
