import type { Rows } from './encode';

/** The code of a text, made beside the page: a long one would hold up a key on a slow device. */
export function codeRows(text: string): Promise<Rows> {
  return new Promise<Rows>((made, failed) => {
    const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<Rows>) => {
      worker.terminate();
      made(data);
    });
    worker.addEventListener('error', (problem) => {
      problem.preventDefault();
      worker.terminate();
      failed(new Error('The code cannot be made beside the page.'));
    });
    worker.postMessage(text);
  }).catch(async () => (await import('./encode')).rowsOf(text));
}
