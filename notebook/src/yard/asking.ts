import type { YardAsked, YardFound, YardTold } from './asked';

type Teller = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): Teller =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/** So long the whole yard may take, in milliseconds; a hostile catalogue shall not hold it for ever. */
const most = 20_000;

export type YardAsking = {
  /** Undefined where something else was asked before it came to this. */
  readonly ask: (asked: YardAsked) => Promise<YardFound | undefined>;
  readonly end: () => void;
};

/**
 * Asks beside the page, one thing at a time: while one is reckoned only the latest other waits.
 *
 * What it gives rejects with a sentence where the yard could not be reckoned.
 */
export function yardAsking(make: () => Teller = inWorker): YardAsking {
  type Waiting = {
    readonly asked: YardAsked;
    readonly done: (found: YardFound | undefined) => void;
    readonly failed: (problem: Error) => void;
  };
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
    worker.onmessage = ({ data }: MessageEvent<YardTold>) =>
      settle(({ done, failed }) =>
        'found' in data ? done(data.found) : failed(new Error(data.refused)),
      );
    worker.onerror = () => fail('The yard could not be reckoned; reload the page and try again.');
    timer = setTimeout(() => fail('The yard takes too long to reckon here.'), most);
    worker.postMessage(waiting.asked);
  }

  return {
    ask: (asked) =>
      new Promise((done, failed) => {
        const waiting = { asked, done, failed };
        if (!now) begin(waiting);
        else {
          next?.done(undefined);
          next = waiting;
        }
      }),
    end: shut,
  };
}
