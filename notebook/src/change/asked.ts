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

/** Ends a search that is no longer wanted. */
export function stopSeeking(): void {
  worker?.terminate();
  worker = undefined;
}

/**
 * Looks for changes beside the page, so that typing is never held up. One search at a time: a new
 * one ends the one before it, whose promise then stays open.
 *
 * @throws Error when the search cannot be started or does not end well
 */
export function seekChanges(asked: ChangeAsked): Promise<ChangeFound> {
  stopSeeking();
  const mine = new Worker(new URL('../aside/worker.ts', import.meta.url), { type: 'module' });
  worker = mine;
  return new Promise((found, failed) => {
    mine.addEventListener('message', ({ data }: MessageEvent<ChangeFound>) => {
      mine.terminate();
      if (worker === mine) worker = undefined;
      found(data);
    });
    mine.addEventListener('error', () => failed(new Error('The search for changes broke off.')));
    mine.postMessage({ kind: 'changes', ...asked });
  });
}
