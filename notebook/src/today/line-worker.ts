import {
  type Findable,
  lineReader,
  type ReadLine,
  searchOver,
  tellingWords,
} from '@tarebook/record';
import { loadedTopics, openAllTopics } from '../state/topics';

/** A line to be read; `chosen` is the topic that was taken by hand, '' for none. */
export type LineAsked = {
  readonly kind: 'read';
  readonly id: number;
  readonly text: string;
  readonly chosen: string;
};

/** A question to be looked up; `among` are the cases, where they are not known here yet. */
export type FindAsked = {
  readonly kind: 'find';
  readonly id: number;
  readonly question: string;
  readonly among: readonly Findable[] | undefined;
};

export type CasesFound = {
  /** `topic/name` of each, the nearest first. */
  readonly hits: readonly string[];
  /** Words of the question that stand nowhere. */
  readonly nowhere: readonly string[];
};

export type LineFound = { readonly id: number } & (
  | { readonly kind: 'read'; readonly line: ReadLine }
  | { readonly kind: 'find'; readonly found: CasesFound }
);

const ready = openAllTopics().then(() => lineReader(loadedTopics));

/** Of so few words it is told which stand nowhere; a whole question has some that nobody filed. */
const few = 4;
/** What shares so much less with the question than the nearest is not about it. */
const near = 0.25;

let search: ReturnType<typeof searchOver> | undefined;

async function find({ question, among }: FindAsked): Promise<CasesFound> {
  await ready;
  if (among || !search) search = searchOver(among ?? [], loadedTopics);
  const over = search;
  const all = over(question);
  const least = (all[0]?.score ?? 0) * near;
  const hits = all.filter(({ score }) => score >= least).map(({ path }) => path);
  const asked = tellingWords(question);
  const nowhere = asked.length > few ? [] : asked.filter((word) => over(word).length === 0);
  return { hits, nowhere };
}

let last: Promise<unknown> = Promise.resolve();

addEventListener('message', ({ data }: MessageEvent<LineAsked | FindAsked>) => {
  const answer = async (): Promise<void> => {
    const { id } = data;
    if (data.kind === 'find') {
      postMessage({ kind: 'find', id, found: await find(data) } satisfies LineFound);
      return;
    }
    const read = await ready;
    const line = read(data.text, data.chosen === '' ? undefined : data.chosen);
    postMessage({ kind: 'read', id, line } satisfies LineFound);
  };
  // One after the other; what breaks is heard of, and holds up none after it.
  last = last.then(answer).catch((problem: unknown) => {
    setTimeout(() => {
      throw problem;
    });
  });
});
