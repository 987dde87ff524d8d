import type { AnyAsked, AnyTold, ImportAsked, Imported, YardAsked, YardFound } from './asked';

type Teller = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): Teller =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/** So long the whole yard may take, in milliseconds; a hostile catalogue shall not hold it for ever. */
const most = 20_000;

export type YardAsking = {
  /** Undefined where something else was asked before it came to this. */
  readonly ask: (asked: YardAsked) => Promise<YardFound | undefined>;
  readonly read: (asked: ImportAsked) => Promise<Imported | undefined>;
  readonly end: () => void;
};

type Waiting = {
  readonly asked: AnyAsked;
  readonly done: (told: AnyTold | undefined) => void;
  readonly failed: (problem: Error) => void;
};

/**
 * Asks beside the page, one thing at a time: while one is reckoned only the latest other waits.
 *
 * What it gives rejects with a sentence where the yard could not be reckoned.
 */
export function yardAsking(make: () => Teller = inWorker): YardAsking {
  let worker: Teller | undefined;
  let now: Waiting | undefined;
  let next: Waiting | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const shut = (): void => {
    clearTimeout(timer);
    worker?.terminate();
    worker = undefined;
  };
  const settle = (finish: (of: Waiting) => void): void => {
    clearTimeout(timer);
    const was = now;
    now = undefined;
    if (was) finish(was);
    if (next) {
      const following = next;
      next = undefined;
      begin(following);
    }
  };
  const fail = (says: string): void => {
    shut();
    settle(({ failed }) => failed(new Error(says)));
  };
  function begin(waiting: Waiting): void {
    now = waiting;
    worker ??= make();
    worker.onmessage = ({ data }: MessageEvent<AnyTold>) =>
      settle(({ done, failed }) =>
        'refused' in data ? failed(new Error(data.refused)) : done(data),
      );
    worker.onerror = () => fail('The yard could not be reckoned; reload the page and try again.');
    timer = setTimeout(() => fail('The yard takes too long to reckon here.'), most);
    worker.postMessage(waiting.asked);
  }
  const asking = (asked: AnyAsked): Promise<AnyTold | undefined> =>
    new Promise((done, failed) => {
      const waiting = { asked, done, failed };
      if (!now) begin(waiting);
      else {
        next?.done(undefined);
        next = waiting;
      }
    });

  return {
    ask: async (asked) => {
      const told = await asking(asked);
      return told && 'found' in told ? told.found : undefined;
    },
    read: async (asked) => {
      const told = await asking(asked);
      return told && 'imported' in told ? told.imported : undefined;
    },
    end: shut,
  };
}
