import { lineReader, type ReadLine } from '@tarebook/record';
import { loadedTopics, openAllTopics } from '../state/topics';

/** A line to be read; `chosen` is the topic that was taken by hand, '' for none. */
export type LineAsked = { readonly id: number; readonly text: string; readonly chosen: string };
export type LineFound = { readonly id: number; readonly line: ReadLine };

const ready = openAllTopics().then(() => lineReader(loadedTopics));

addEventListener('message', async ({ data }: MessageEvent<LineAsked>) => {
  const { id, text, chosen } = data;
  const read = await ready;
  postMessage({ id, line: read(text, chosen === '' ? undefined : chosen) } satisfies LineFound);
});
