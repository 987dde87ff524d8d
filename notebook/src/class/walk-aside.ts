import type { TaskTold } from '../practice/made';
import { frontLine } from '../state/front-line';
import { isWalked, noteTask, type ToWalk, walkedCase } from './record';

/** Works out beside the page what takes long of a case, one case after another. */
export type Walker = {
  /** Done once `walkedCase` tells it without work; where the signal ends it before, never. */
  walk(each: ToWalk): Promise<void>;
  end(): void;
};

function asked(worker: Worker, { text, exercise = 'predict' }: ToWalk) {
  return new Promise<TaskTold | undefined>((done, failed) => {
    worker.onmessage = ({ data }: MessageEvent<{ readonly task: TaskTold | undefined }>) =>
      done(data.task);
    worker.onerror = () => failed(new Error('What works it out could not be had.'));
    const topic = frontLine(text, 'topic');
    worker.postMessage({ kind: 'task', topic, text, exercise });
  });
}

export function walker(): Walker {
  let worker: Worker | undefined;
  let last: Promise<void> = Promise.resolve();
  const walkOne = async (each: ToWalk): Promise<void> => {
    if (isWalked(each)) return;
    worker ??= new Worker(new URL('../aside/worker.ts', import.meta.url), { type: 'module' });
    try {
      noteTask(each, await asked(worker, each));
    } catch {
      // Without what works it out beside the page, the page does it: a class goes on all the same.
      walkedCase(each);
    }
  };
  return {
    walk(each) {
      last = last.then(() => walkOne(each));
      return last;
    },
    end() {
      worker?.terminate();
      worker = undefined;
    },
  };
}
