import type { MessageColumns, Pasted, ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';
import { openTopic } from '../state/topics';
import type { Answered } from './answer-shapes';
import { type QuestionsReader, questionsReader, type Sought } from './reader';
import { setRightAsBefore } from './remembered';
import type { TableFound } from './table-of';
import { readUrgency } from './urgency';

/** The page that messages are read on. */
export type ReadingHost = {
  messages: readonly Asked[] | undefined;
  readings: ReadonlyMap<string, ReadMessage>;
  /** How far the reading is; undefined while nothing is read. */
  progress: { readonly done: number; readonly of: number } | undefined;
  /** Whether what is filed near to each question was looked for. */
  near: boolean;
  readonly keep: (records: readonly Asked[]) => Promise<boolean>;
  /** The rules of a topic came, and with them what its facts are called. */
  readonly topicCame: () => void;
  /** All of them were read once. */
  readonly isAllRead: () => void;
  readonly failedToRead: () => void;
};

/** Reads what was asked, beside the page, and shows it as it comes. */
export function readingDesk(host: ReadingHost) {
  let reader: QuestionsReader | undefined;
  const whenRead: (() => void)[] = [];

  function heardRead(): void {
    for (const go of whenRead.splice(0)) go();
  }

  /** Messages in the place of those of the same id. */
  function put(now: readonly Asked[]): void {
    const byId = new Map(now.map((each) => [each.id, each]));
    host.messages = host.messages?.map((each) => byId.get(each.id) ?? each);
  }

  function anew(): void {
    const { messages = [] } = host;
    if (messages.length === 0) return;
    host.progress = { done: 0, of: messages.length };
    reader?.read(messages);
  }

  /** A correction is remembered: whoever asks in the same words is read as the one before. */
  function setRight(read: readonly ReadMessage[]): void {
    const right = setRightAsBefore(host.messages ?? [], read);
    if (right.length === 0) return;
    put(right);
    void host.keep(right).then(anew);
  }

  const took: Parameters<typeof questionsReader>[0]['read'] = (read, { done, of, near }) => {
    host.near = near;
    host.readings = new Map([...host.readings, ...read.map((each) => [each.id, each] as const)]);
    const isAll = host.progress !== undefined && done === of;
    host.progress = done < of ? { done, of } : undefined;
    heardRead();
    if (isAll) {
      setRight([...host.readings.values()]);
      host.isAllRead();
    }
    const about = read.flatMap(({ parts }) => parts.map((part) => part.topic ?? ''));
    for (const topic of new Set(about)) {
      if (topic !== '') openTopic(topic).then(host.topicCame);
    }
    const turned = readUrgency(host.messages ?? [], read);
    if (turned.length === 0) return;
    put(turned);
    void host.keep(turned);
  };

  return {
    open(): void {
      reader = questionsReader({
        read: took,
        failed: () => {
          host.progress = undefined;
          heardRead();
          host.failedToRead();
        },
      });
    },
    close: (): void => reader?.close(),
    anew,
    /** Resolves once a message was read, or where it cannot be. */
    async isRead(id: string): Promise<void> {
      while (host.progress && !host.readings.has(id)) {
        await new Promise<void>((go) => {
          whenRead.push(go);
        });
      }
    },
    split: async (text: string): Promise<readonly Pasted[]> => (await reader?.split(text)) ?? [],
    table: (text: string, columns: MessageColumns | undefined): Promise<TableFound> =>
      reader?.table(text, columns) ?? Promise.reject(new Error('The page is closed.')),
    answer: (of: Sought, isFirst = false): Promise<Answered | undefined> =>
      reader?.answer(of, isFirst) ?? Promise.resolve(undefined),
  };
}

export type ReadingDesk = ReturnType<typeof readingDesk>;
