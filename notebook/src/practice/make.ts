import type { ExerciseWanted } from '../aside/exercise-made';
import { caseOf } from '../class/class-cases';
import { filedOf } from '../state/filed';
import type { Exercise } from '../state/practice';
import { type From, judgedHere, type Made, type MadeTold } from './made';
import { seeded, shuffled } from './seeded';

/** Told while an exercise is made: how many cases were tried, or what came of it. */
export type Making = { readonly tried: number } | { readonly made: MadeTold | undefined };

/** Who waits for an exercise. */
export type Waiting = {
  /** How many cases were tried and had nothing for it. */
  readonly tried: (count: number) => void;
  /** Ends it; nothing comes of it then. */
  readonly signal: AbortSignal;
};

/**
 * Has an exercise made beside the page, of the first case that has one.
 *
 * @throws Error when what makes it cannot be had
 */
function madeAside(wanted: ExerciseWanted, { tried, signal }: Waiting): Promise<Made | undefined> {
  const worker = new Worker(new URL('../aside/worker.ts', import.meta.url), { type: 'module' });
  return new Promise<Made | undefined>((done, failed) => {
    signal.addEventListener('abort', () => done(undefined), { once: true });
    worker.onmessage = ({ data }: MessageEvent<Making>) => {
      if ('tried' in data) tried(data.tried);
      else done(data.made && judgedHere(data.made));
    };
    worker.onerror = () => failed(new Error('What makes exercises could not be had.'));
    worker.postMessage({ kind: 'make', ...wanted });
  }).finally(() => worker.terminate());
}

/** So many cases of a topic are tried before it is said that it has none for this. */
const mostTried = 15;

/** An exercise of a topic, another one for another seed; undefined where its cases have none. */
export async function makeAny(
  exercise: Exercise,
  topic: string,
  seed: number,
  waiting: Waiting,
): Promise<Made | undefined> {
  const from = shuffled(seeded(seed), await filedOf(topic)).slice(0, mostTried);
  return madeAside({ exercise, from, seed }, waiting);
}

/** An exercise of one case, with other figures than the last time; undefined where it has none. */
export async function makeOf(
  exercise: Exercise,
  of: { readonly topic: string; readonly name: string; readonly title: string },
  seed: number,
  waiting: Waiting,
): Promise<Made | undefined> {
  const found = await caseOf(of);
  if (!found) return undefined;
  const { topic, name, text }: From = found;
  return madeAside({ exercise, from: [{ topic, name, text }], seed }, waiting);
}
