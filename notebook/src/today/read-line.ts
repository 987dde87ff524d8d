import type { ReadLine } from '@tarebook/record';
import type { LineAsked, LineFound } from './line-worker';

/** A line is given so long once the reader is there, in milliseconds; at first it has to come. */
const most = 3_000;
const atFirst = 30_000;

let worker: Worker | undefined;
let asked = 0;
let hasRead = false;

/** Has the reader come before anybody needs it. */
export function openLineReader(): Worker {
  worker ??= new Worker(new URL('./line-worker.ts', import.meta.url), { type: 'module' });
  return worker;
}

function end(): void {
  worker?.terminate();
  worker = undefined;
  hasRead = false;
}

/**
 * Reads a line beside the page, so that typing is never held up.
 *
 * @throws Error when the reader cannot be had, or takes too long
 */
export function readLine(text: string, chosen: string): Promise<ReadLine> {
  const at = openLineReader();
  asked += 1;
  const id = asked;
  return new Promise((found, failed) => {
    const leave = (): void => {
      clearTimeout(timer);
      at.removeEventListener('message', hear);
      at.removeEventListener('error', broke);
    };
    const hear = ({ data }: MessageEvent<LineFound>): void => {
      if (data.id !== id) return;
      hasRead = true;
      leave();
      found(data.line);
    };
    const broke = (): void => {
      leave();
      end();
      failed(new Error('The reader of the line could not be had.'));
    };
    const timer = setTimeout(broke, hasRead ? most : atFirst);
    at.addEventListener('message', hear);
    at.addEventListener('error', broke);
    at.postMessage({ id, text, chosen } satisfies LineAsked);
  });
}
