import type { State } from '@tarebook/rules/engine';
import { type House, houseOf } from '../state/house';

/** How a case came out, as a list shows it. */
export type Verdict = {
  readonly stands: State;
  readonly words: string;
  /** What is asked next, where it cannot be said yet. */
  readonly asks?: string;
};

/** A case whose verdict a list wants to show, and the dealer's numbers it is judged under. */
export type VerdictAsked = {
  readonly topic: string;
  readonly text: string;
  readonly house: House | undefined;
};

type Teller = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): Teller =>
  new Worker(new URL('../aside/worker.ts', import.meta.url), { type: 'module' });

/** One case is given so long, in milliseconds; the next ones shall not wait for it. */
const most = 5000;
const tooLong: Verdict = { stands: 'unknown', words: 'takes too long to judge here' };
const away: Verdict = { stands: 'unknown', words: 'not judged: the network is away' };

/**
 * Verdicts of cases, found one after another beside the page and kept for as long as the window is
 * open: the same text under the same numbers is judged once.
 */
export function verdicts(make: () => Teller = inWorker) {
  const found = new Map<string, Promise<Verdict>>();
  let worker: Teller | undefined;
  let last: Promise<unknown> = Promise.resolve();

  const ask = (asked: VerdictAsked): Promise<Verdict> =>
    new Promise((done) => {
      worker ??= make();
      const at = worker;
      const end = (verdict: Verdict, broken: boolean): void => {
        clearTimeout(timer);
        if (broken) {
          at.terminate();
          worker = undefined;
        }
        done(verdict);
      };
      const timer = setTimeout(() => end(tooLong, true), most);
      at.onmessage = ({ data }: MessageEvent<Verdict>) => end(data, false);
      at.onerror = () => end(away, true);
      at.postMessage({ kind: 'verdict', ...asked });
    });

  return (topic: string, text: string, wanted: () => boolean = () => true): Promise<Verdict> => {
    const asked: VerdictAsked = { topic, text, house: houseOf(topic) };
    const key = JSON.stringify([topic, text, asked.house]);
    const before = found.get(key);
    if (before) return before;
    const next = last.then(() => {
      if (wanted()) return ask(asked);
      // Out of sight before its turn came: it is asked for again once it is seen.
      found.delete(key);
      return away;
    });
    found.set(key, next);
    last = next;
    next.then((verdict) => {
      if (verdict === away) found.delete(key);
    });
    return next;
  };
}

export const verdictFor = verdicts();
