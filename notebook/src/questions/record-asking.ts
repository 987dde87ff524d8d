import type { Again, Ledger } from '@tarebook/record';
import { housesNow } from '../state/house';
import type { QuestionsAsked, QuestionsTold } from './answer-shapes';
import { dayOf } from './known';

/** Asks once, beside the page, with a worker that ends with its answer. */
function askOnce(asked: QuestionsAsked): Promise<QuestionsTold> {
  const worker = new Worker(new URL('../aside/worker.ts', import.meta.url), { type: 'module' });
  return new Promise<QuestionsTold>((done, failed) => {
    worker.onmessage = ({ data }: MessageEvent<QuestionsTold>) => done(data);
    worker.onerror = () => failed(new Error('What reads the record could not be had.'));
    worker.postMessage({ kind: 'questions', ...asked });
  }).finally(() => worker.terminate());
}

/** What would be said today of each answer, by its id. */
export async function askAgain(ledger: Ledger): Promise<ReadonlyMap<string, Again>> {
  const asked = { ask: 'again', ledger, day: dayOf(new Date()), houses: housesNow() } as const;
  const told = await askOnce(asked);
  return new Map(told.told === 'again' ? told.found.map((each) => [each.id, each]) : []);
}

/** Both ledgers in one, or why a colleague's cannot be read. */
export async function mergeWith(
  mine: Ledger,
  text: string,
): Promise<Ledger | { readonly says: string }> {
  const told = await askOnce({ ask: 'merge', mine, text });
  return told.told === 'merge' ? told.merged : { says: 'Nothing was taken in.' };
}
