import type { Asked, NoHelp, Remedy } from '@tarebook/rules/engine';
import type { House } from '../state/house';

/** A case for which changes are wanted, and the dealer's own numbers for every question. */
export type ChangeAsked = {
  readonly topic: string;
  readonly asked: Asked;
  readonly houses: readonly House[];
};

/** What would change the verdict, what would not, and what to know better first. */
export type ChangeFound = {
  readonly remedies: readonly Remedy[];
  readonly noHelp: readonly NoHelp[];
  readonly better: readonly string[];
};

let worker: Worker | undefined;

/** Ends a search that is no longer wanted, whoever wanted it. */
export function stopSeeking(): void {
  worker?.terminate();
  worker = undefined;
}

/** Whether one goes on. */
export const isSeeking = (): boolean => worker !== undefined;

/**
 * Looks for changes beside the page, so that typing is never held up. One search at a time: a new
 * one ends the one before it, whose promise then stays open.
 *
 * @param until ends this very search, and none that came after it
 * @throws Error when the search cannot be started or does not end well
 */
export function seekChanges(asked: ChangeAsked, until?: AbortSignal): Promise<ChangeFound> {
  stopSeeking();
  const mine = new Worker(new URL('../aside/worker.ts', import.meta.url), { type: 'module' });
  worker = mine;
  const leave = (): void => {
    mine.terminate();
    if (worker === mine) worker = undefined;
  };
  until?.addEventListener('abort', leave, { once: true });
  return new Promise((found, failed) => {
    mine.addEventListener('message', ({ data }: MessageEvent<ChangeFound>) => {
      leave();
      found(data);
    });
    mine.addEventListener('error', () => {
      leave();
      failed(new Error('The search for changes broke off.'));
    });
    mine.postMessage({ kind: 'changes', ...asked });
  });
}
