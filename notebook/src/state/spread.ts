import type { Asked, HouseLayer, Spread } from '@tarebook/rules/engine';

/** What is drawn: a case of a topic, with a house layer where one is kept. */
export type SpreadRequest = {
  readonly topic: string;
  readonly asked: Asked;
  readonly house?: HouseLayer | undefined;
  readonly draws: number;
  readonly seed: number;
};

/** What the worker tells: how many draws are done, then what came out or why nothing did. */
export type SpreadMessage =
  | { readonly kind: 'progress'; readonly done: number }
  | { readonly kind: 'result'; readonly spread: Spread }
  | { readonly kind: 'refused'; readonly says: string };

export type SpreadRun = {
  /** Undefined when it was left off. Rejected with a sentence when the case cannot be drawn. */
  readonly result: Promise<Spread | undefined>;
  readonly cancel: () => void;
};

/** As many as the page draws, from a seed that is always the same. */
const usual = { draws: 100_000, seed: 1 };

type Teller = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): Teller =>
  new Worker(new URL('./spread-worker.ts', import.meta.url), { type: 'module' });

/**
 * Draws a case beside the page, in a worker of its own.
 *
 * @param request without draws or a seed, the usual ones are taken
 * @param progress told the share of the draws that is done, from 0 to 1
 */
export function startSpread(
  request: Omit<SpreadRequest, 'draws' | 'seed'> & Partial<SpreadRequest>,
  progress: (share: number) => void = () => undefined,
  make: () => Teller = inWorker,
): SpreadRun {
  const worker = make();
  const whole: SpreadRequest = { ...usual, ...request };
  let leaveOff = (): void => undefined;
  const result = new Promise<Spread | undefined>((resolve, reject) => {
    const end = (finish: () => void): void => {
      worker.terminate();
      finish();
    };
    leaveOff = () => end(() => resolve(undefined));
    worker.onmessage = ({ data }: MessageEvent<SpreadMessage>) => {
      if (data.kind === 'progress') progress(data.done / whole.draws);
      else if (data.kind === 'result') end(() => resolve(data.spread));
      else end(() => reject(new Error(data.says)));
    };
    worker.onerror = () =>
      end(() =>
        reject(new Error('The chances could not be reckoned; reload the page and try again.')),
      );
  });
  worker.postMessage(whole);
  return { result, cancel: () => leaveOff() };
}
