import type { Findable, ReadLine } from '@tarebook/record';
import type { CasesFound, FindAsked, LineAsked, LineFound } from './line-worker';

/** What is asked is given so long once the reader is there, in milliseconds; at first it has to come. */
const most = 6_000;
const atFirst = 30_000;

let worker: Worker | undefined;
let asked = 0;
let hasAnswered = false;
/** The cases that the worker knows. */
let known: readonly Findable[] | undefined;

/** Has the reader come before anybody needs it. */
export function openLineReader(): Worker {
  worker ??= new Worker(new URL('./line-worker.ts', import.meta.url), { type: 'module' });
  return worker;
}

function end(): void {
  worker?.terminate();
  worker = undefined;
  hasAnswered = false;
  known = undefined;
}

/** @throws Error when the reader cannot be had, or takes too long */
function ask(make: (id: number) => LineAsked | FindAsked): Promise<LineFound> {
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
      hasAnswered = true;
      leave();
      found(data);
    };
    const broke = (): void => {
      leave();
      if (at === worker) end();
      failed(new Error('What reads and finds could not be had.'));
    };
    const timer = setTimeout(broke, hasAnswered ? most : atFirst);
    at.addEventListener('message', hear);
    at.addEventListener('error', broke);
    at.postMessage(make(id));
  });
}

/**
 * Reads a line beside the page, so that typing is never held up.
 *
 * @throws Error when the reader cannot be had, or takes too long
 */
export async function readLine(text: string, chosen: string): Promise<ReadLine> {
  const found = await ask((id) => ({ kind: 'read', id, text, chosen }));
  if (found.kind !== 'read') throw new Error('Another answer came than was asked for.');
  return found.line;
}

/** Longer questions are looked up as far as this. */
const mostCharacters = 600;

/**
 * Cases that a question as people type it is about, by `topic/name`, the nearest first.
 *
 * @param among what is looked through; the same list is handed over once
 * @throws Error when what finds them cannot be had, or takes too long
 */
export async function findCases(question: string, among: readonly Findable[]): Promise<CasesFound> {
  openLineReader();
  const sent = among === known ? undefined : among;
  known = among;
  // Every case is taken in anew, which takes its time where there are thousands.
  if (sent) hasAnswered = false;
  const text = question.slice(0, mostCharacters);
  const found = await ask((id) => ({ kind: 'find', id, question: text, among: sent }));
  if (found.kind !== 'find') throw new Error('Another answer came than was asked for.');
  return found.found;
}
