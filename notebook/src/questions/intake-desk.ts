import { topicTitle } from '../cases/topics';
import { type Asked, dropQuestions, keepQuestions, recordsOf } from '../state/questions';
import type { Round } from '../state/round';
import { whyNotKept } from '../state/shelf';
import { loadedTopics } from '../state/topics';
import { linksIn, markedOff, withoutLink } from './come-back';
import { keepOut, outKept } from './out-kept';
import type { ReadingDesk, ReadingHost } from './reading-desk';
import type { TableRead } from './table-box';
import { leftTaken, takenBack } from './take-back';
import { takenSaid, tooMany } from './taken';
import { goesOut, outSaid, withBack, without } from './taken-out';

/** The page that messages are taken in on. */
export type IntakeHost = Pick<ReadingHost, 'messages' | 'readings' | 'keep'> & {
  readonly round: Round | undefined;
  /** Why nothing was taken in, in one sentence; '' while all is well. */
  wrong: string;
  said: string;
  busy: boolean;
  /** What was taken out, until it comes back or more is taken out. */
  takenOut: readonly Asked[];
  readonly emptyBox: () => void;
};

export const labelOf = (topic: string, fact: string): string =>
  loadedTopics[topic]?.facts[fact]?.label ?? fact;

/** What comes in: pasted, from a table, or back by a link; and out again, if it was a mistake. */
export function intakeDesk(host: IntakeHost, reading: ReadingDesk) {
  let isTaking = false;
  let counted: { messages: readonly Asked[]; round: Round | undefined; out: number } | undefined;

  async function takeIn(records: readonly Asked[], refused?: readonly string[]): Promise<boolean> {
    host.wrong = tooMany(records.length) ?? '';
    if (host.wrong !== '') return false;
    const here = new Set(host.messages?.map(({ id }) => id));
    const fresh = records.filter(({ id }) => !here.has(id));
    // Kept in one go before any of them is shown: what a person saw is never lost.
    const isKept = await host.keep(fresh);
    host.messages = [...(host.messages ?? []), ...fresh];
    if (isKept) host.said = takenSaid(fresh.length, records.length - fresh.length, refused);
    host.takenOut = without(host.takenOut, fresh);
    reading.anew();
    return isKept;
  }

  const takeBack = (links: readonly string[]) =>
    takenBack(links, {
      get messages() {
        return host.messages;
      },
      get readings() {
        return host.readings;
      },
      titleOf: topicTitle,
      labels: labelOf,
      isRead: reading.isRead,
      /** What came back is kept and shown with its question, which is read anew. */
      async putBack(now) {
        host.messages = host.messages?.map((each) => (each.id === now.id ? now : each));
        const isKept = await host.keep([now]);
        reading.anew();
        return isKept;
      },
    });

  async function takeText(text: string): Promise<void> {
    const back = await takeBack(linksIn(text));
    const split = await reading.split(markedOff(text, [...back.taken, ...back.held]));
    const found = split.flatMap((each) => {
      const rest = withoutLink(each.text);
      return rest === undefined ? [] : [{ ...each, text: rest }];
    });
    const isIn =
      found.length === 0 && back.taken.length + back.held.length > 0
        ? true
        : await takeIn(recordsOf(found, Date.now()));
    // What could not be put stays where it was pasted.
    if (isIn && back.held.length === 0) host.emptyBox();
    host.said = [back.says, host.said].filter((each) => each !== '').join(' ');
  }

  const isSpoken = (id: string): boolean =>
    host.round?.spoken === 0 && host.round.items.some(({ message }) => message === id);

  /** Messages go out of what is kept first, so that none comes back by itself. */
  async function goOut(out: readonly Asked[], stays: number): Promise<void> {
    host.wrong = '';
    try {
      await dropQuestions(out);
    } catch (problem) {
      host.wrong = `Nothing was taken out. ${whyNotKept(problem)}`;
      return;
    }
    host.messages = without(host.messages ?? [], out);
    host.takenOut = out;
    keepOut(out);
    host.said = outSaid(out.length, stays);
    reading.anew();
  }

  return {
    /** What was taken out before this page was opened anew, unless it is here again. */
    outBefore: (messages: readonly Asked[]): readonly Asked[] => without(outKept(), messages),
    async pasted(text: string): Promise<void> {
      host.wrong = '';
      host.said = '';
      if (!/[\p{L}\p{N}]/u.test(text)) {
        host.wrong =
          'There are no words here yet; paste the messages as they came, with an empty line between two.';
        return;
      }
      host.busy = true;
      try {
        await takeText(text);
      } catch {
        host.wrong =
          'Nothing was taken in, since what reads messages could not be had: the network is away. The words stand where they were.';
      }
      host.busy = false;
    },
    async tableRead({ found, refused }: TableRead['detail']): Promise<void> {
      host.said = '';
      await takeIn(recordsOf(found, Date.now()), refused);
    },
    /** What another page left to be taken in, once its question is read. */
    async takeLeft(): Promise<void> {
      // What is put is read anew, and that ends here once more.
      if (isTaking) return;
      isTaking = true;
      const left = await leftTaken(takeBack);
      isTaking = false;
      if ('wrong' in left) host.wrong = left.wrong;
      else if (left.says !== '') host.said = left.says;
    },
    /** What was pasted last goes out; what a person has worked on since stays. */
    lastOut(): Promise<void> {
      const { out, stays } = goesOut(host.messages ?? [], isSpoken);
      return goOut(out, stays.length);
    },
    /** How many would go out; thousands are looked through once, and not for every stroke of the page. */
    goesOut(): number {
      const { messages = [], round } = host;
      if (counted?.messages !== messages || counted.round !== round) {
        counted = { messages, round, out: goesOut(messages, isSpoken).out.length };
      }
      return counted.out;
    },
    oneOut: (asked: Asked): Promise<void> => goOut([asked], 0),
    async broughtBack(): Promise<void> {
      const back = host.takenOut;
      try {
        await keepQuestions(without(back, host.messages ?? []));
      } catch (problem) {
        host.wrong = `Nothing was brought back. ${whyNotKept(problem)}`;
        return;
      }
      host.messages = withBack(host.messages ?? [], back);
      host.takenOut = [];
      keepOut([]);
      host.said = takenSaid(back.length, 0).replace('taken in', 'brought back');
      reading.anew();
    },
  };
}
