import type { MessageColumns, Pasted, ReadMessage } from '@tarebook/record';
import { filedCase } from '../state/filed';
import type { Asked } from '../state/questions';
import type { Answerable, Answered, QuestionsAsked, QuestionsTold } from './answer-shapes';
import type { TableFound } from './table-of';

/** One answer is given so long, in milliseconds; the next ones shall not wait for it. */
const most = 8000;

/** What an answer hangs on, a note by its name. */
export type Sought = Omit<Answerable, 'note'> & { readonly note: string | null };

type Heard = {
  /** Some were read; `done` of `of` so far, and whether what is near to all was looked for. */
  readonly read: (
    read: readonly ReadMessage[],
    far: { readonly done: number; readonly of: number; readonly near: boolean },
  ) => void;
  readonly failed: () => void;
};

/** What splits, reads and answers beside the page, for as long as the page of questions is open. */
export type QuestionsReader = {
  /** @throws Error when the worker cannot be had */
  readonly split: (text: string) => Promise<readonly Pasted[]>;
  /** @throws Error when the worker cannot be had */
  readonly table: (text: string, columns: MessageColumns | undefined) => Promise<TableFound>;
  /** A new reading ends the one before it. */
  readonly read: (messages: readonly Asked[]) => void;
  /** @param isFirst whether somebody waits for this very one */
  readonly answer: (of: Sought, isFirst?: boolean) => Promise<Answered | undefined>;
  readonly close: () => void;
};

export function questionsReader(heard: Heard): QuestionsReader {
  let turn = 0;
  let splitting:
    | { done: (found: readonly Pasted[]) => void; failed: (why: Error) => void }
    | undefined;
  let tabling: { done: (found: TableFound) => void; failed: (why: Error) => void } | undefined;
  const answers = new Map<string, Promise<Answered | undefined>>();
  const answering = new Map<string, (answered: Answered | undefined) => void>();
  const waiting = new Map<string, (answered: Answered | undefined) => void>();

  const make = (): Worker => {
    const worker = new Worker(new URL('../aside/worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<QuestionsTold>) => {
      if (data.told === 'split') splitting?.done(data.found);
      else if (data.told === 'table') tabling?.done(data.table);
      else if (data.told === 'answer') answering.get(data.key)?.(data.answered);
      else if (data.told === 'read' && data.turn === turn) heard.read(data.read, data);
    };
    worker.onerror = () => {
      splitting?.failed(new Error('What reads messages could not be had.'));
      tabling?.failed(new Error('What reads messages could not be had.'));
      answers.clear();
      for (const end of [...answering.values()]) end(undefined);
      heard.failed();
    };
    return worker;
  };
  // Answers have a worker of their own: they are wanted while thousands are still being read.
  const workers: { reads?: Worker | undefined; answers?: Worker | undefined } = {};
  const ask = (which: 'reads' | 'answers', asked: QuestionsAsked): void => {
    workers[which] ??= make();
    workers[which].postMessage({ kind: 'questions', ...asked });
  };

  type Wanted = { readonly key: string; readonly sought: Sought };
  const queue: Wanted[] = [];
  let isBusy = false;

  /** One after the other, so that only the time of its own counts against an answer. */
  async function next(): Promise<void> {
    const wanted = isBusy ? undefined : queue.shift();
    if (!wanted) return;
    isBusy = true;
    const { key, sought } = wanted;
    const end = (answered: Answered | undefined): void => {
      clearTimeout(timer);
      waiting.get(key)?.(answered);
      waiting.delete(key);
      answering.delete(key);
      isBusy = false;
      void next();
    };
    const timer = setTimeout(() => {
      workers.answers?.terminate();
      workers.answers = undefined;
      answers.delete(key);
      end(undefined);
    }, most);
    answering.set(key, end);
    const { note: name, ...others } = sought;
    try {
      const text = name === null ? undefined : await filedCase('note', name);
      const note = name === null || text === undefined ? null : { name, text };
      ask('answers', { ask: 'answer', key, of: { ...others, note } });
    } catch {
      answers.delete(key);
      end(undefined);
    }
  }

  return {
    split: (text) =>
      new Promise((done, failed) => {
        splitting = { done, failed };
        ask('reads', { ask: 'split', text });
      }),
    table: (text, columns) =>
      new Promise((done, failed) => {
        tabling = { done, failed };
        ask('reads', { ask: 'table', text, columns });
      }),
    read(messages) {
      turn += 1;
      const mine = turn;
      import('virtual:filed-words')
        .then(({ default: filed }) => {
          if (mine === turn) ask('reads', { ask: 'read', turn: mine, messages, filed });
        })
        .catch(heard.failed);
    },
    answer(sought, isFirst = false) {
      const key = JSON.stringify(sought);
      const at = queue.findIndex((each) => each.key === key);
      if (isFirst && at > 0) queue.unshift(...queue.splice(at, 1));
      const before = answers.get(key);
      if (before) return before;
      const given = new Promise<Answered | undefined>((done) => {
        waiting.set(key, done);
      });
      answers.set(key, given);
      if (isFirst) queue.unshift({ key, sought });
      else queue.push({ key, sought });
      void next();
      return given;
    },
    close() {
      workers.reads?.terminate();
      workers.answers?.terminate();
    },
  };
}
