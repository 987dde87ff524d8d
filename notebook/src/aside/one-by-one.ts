export type Teller = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>;

const inWorker = (): Teller =>
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });

/**
 * Asks beside the page, one thing after another, in a worker that is made when the first is asked and
 * anew after one that took too long, so that the next ones do not wait for it.
 *
 * @param most milliseconds that each is given
 * @param tooLong told of what took longer
 * @param away told where what reckons cannot be had, and of what was unwanted once its turn came
 */
export function oneByOne<Asked extends { readonly kind: string }, Told>(
  { most, tooLong, away }: { readonly most: number; readonly tooLong: Told; readonly away: Told },
  make: () => Teller = inWorker,
) {
  let worker: Teller | undefined;
  let last: Promise<unknown> = Promise.resolve();

  const ask = (asked: Asked): Promise<Told> =>
    new Promise((done) => {
      worker ??= make();
      const at = worker;
      const end = (told: Told, broken: boolean): void => {
        clearTimeout(timer);
        if (broken) {
          at.terminate();
          worker = undefined;
        }
        done(told);
      };
      const timer = setTimeout(() => end(tooLong, true), most);
      at.onmessage = ({ data }: MessageEvent<Told>) => end(data, false);
      at.onerror = () => end(away, true);
      at.postMessage(asked);
    });

  return (asked: Asked, wanted: () => boolean): Promise<Told> => {
    const next = last.then(() => (wanted() ? ask(asked) : away));
    last = next;
    return next;
  };
}
