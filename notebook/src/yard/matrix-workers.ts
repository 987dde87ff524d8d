import type { CatalogueFiles } from '@tarebook/sweep';
import type { House } from '../state/house';
import type { MatrixAsked, MatrixTold, PairAsked } from './matrix-asked';

/** More would only take each other's place in a machine's memory. */
const mostWorkers = 3;

/** The invented yard is judged before a second worker has begun. */
const workersFor = (files: CatalogueFiles | undefined): number =>
  files === undefined ? 1 : Math.max(1, Math.min(mostWorkers, navigator.hardwareConcurrency));

/** All pairs of a yard, dealt out to as many workers as the machine has use for. */
export class MatrixWorkers {
  private workers: Worker[] = [];
  private meant: { readonly house: string; readonly files: CatalogueFiles | undefined } | undefined;
  private yard = 0;
  private begun = 0;
  private turn = 0;
  /** Milliseconds of each worker that is through with the turn. */
  private done: number[] = [];

  constructor(private readonly hear: (told: MatrixTold) => void) {}

  end(): void {
    for (const worker of this.workers) worker.terminate();
    this.workers = [];
    this.meant = undefined;
  }

  /** Tells which yard it is from here on; of the same one nothing is read again. */
  mean(house: House | undefined, files: CatalogueFiles | undefined): void {
    const meant = { house: JSON.stringify(house) ?? '', files };
    if (meant.house === this.meant?.house && files === this.meant.files) return;
    this.meant = meant;
    this.yard += 1;
    const of = workersFor(files);
    for (const worker of this.workers.splice(of)) worker.terminate();
    while (this.workers.length < of) this.workers.push(this.made());
    this.workers.forEach((worker, at) => {
      worker.postMessage({ kind: 'yard', yard: this.yard, share: { at, of }, house, files });
    });
  }

  all(asked: MatrixAsked): void {
    this.turn = asked.turn;
    this.done = [];
    for (const worker of this.workers) worker.postMessage(asked);
  }

  pair(asked: PairAsked): void {
    this.workers[0]?.postMessage(asked);
  }

  private made(): Worker {
    const worker = new Worker(new URL('./matrix-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<MatrixTold>) => this.told(data);
    worker.onerror = () => {
      const says = 'The pairs could not be reckoned; reload the page and try again.';
      this.hear({ kind: 'refused', says });
    };
    return worker;
  }

  /** All workers of a yard tell what it is; whoever is first is heard. */
  private told(told: MatrixTold): void {
    if (told.kind === 'begun') {
      if (told.yard !== this.yard || told.yard === this.begun) return;
      this.begun = told.yard;
    } else if (told.kind === 'done') {
      if (told.turn !== this.turn) return;
      this.done.push(told.took);
      if (this.done.length < this.workers.length) return;
      this.hear({ ...told, took: Math.max(...this.done) });
      return;
    }
    this.hear(told);
  }
}
