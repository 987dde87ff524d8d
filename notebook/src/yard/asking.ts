import type { OwnTexts } from '../state/own-catalogue';
import type {
  AnyAsked,
  AnyTold,
  Beside,
  ImportAsked,
  Imported,
  YardAsked,
  YardFound,
  YardWhy,
} from './asked';

type Teller = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): Teller =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/** So long the whole yard may take, in milliseconds; a hostile catalogue shall not hold it for ever. */
const most = 20_000;

export type YardAsking = {
  /**
   * Undefined where something else was asked before it came to this.
   *
   * @param heard whys of what was found, as they come after it
   */
  readonly ask: (
    asked: YardAsked,
    heard?: (whys: readonly YardWhy[]) => void,
  ) => Promise<YardFound | undefined>;
  readonly read: (asked: ImportAsked) => Promise<Imported | undefined>;
  readonly beside: (files: OwnTexts | undefined) => Promise<Beside | undefined>;
  readonly end: () => void;
};

type Heard = (whys: readonly YardWhy[]) => void;

type Waiting = {
  readonly asked: AnyAsked;
  readonly heard: Heard | undefined;
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
  let turn = 0;
  /** Who hears whys of this turn. */
  let hearing: Heard | undefined;

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
    turn += 1;
    hearing = undefined;
    worker.onmessage = ({ data }: MessageEvent<AnyTold>) => {
      if ('whys' in data) {
        if (data.turn === turn) hearing?.(data.whys);
        return;
      }
      settle(({ done, failed, heard }) => {
        hearing = heard;
        if ('refused' in data) failed(new Error(data.refused));
        else done(data);
      });
    };
    worker.onerror = () => fail('The yard could not be reckoned; reload the page and try again.');
    timer = setTimeout(() => fail('The yard takes too long to reckon here.'), most);
    worker.postMessage({ ...waiting.asked, turn });
  }
  const asking = (asked: AnyAsked, heard?: Heard): Promise<AnyTold | undefined> =>
    new Promise((done, failed) => {
      const waiting = { asked, heard, done, failed };
      if (!now) begin(waiting);
      else {
        next?.done(undefined);
        next = waiting;
      }
    });

  return {
    ask: async (asked, heard) => {
      const told = await asking(asked, heard);
      return told && 'found' in told ? told.found : undefined;
    },
    read: async (asked) => {
      const told = await asking(asked);
      return told && 'imported' in told ? told.imported : undefined;
    },
    beside: async (files) => {
      const told = await asking({ kind: 'beside', files });
      return told && 'beside' in told ? told.beside : undefined;
    },
    end: shut,
  };
}
