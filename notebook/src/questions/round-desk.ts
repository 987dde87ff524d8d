import type { QuestionPart, ReadMessage } from '@tarebook/record';
import { type Asked, keepQuestion, keepQuestions } from '../state/questions';
import { isIn, newRound, type Round } from '../state/round';
import type { Answered } from './answer-shapes';
import { givenIn } from './leaving';
import { spokenOf, withAnswered } from './make-round';
import type { Sought } from './reader';

/** The page a round is made on. */
export type RoundHost = {
  round: Round | undefined;
  readonly messages: readonly Asked[] | undefined;
  readonly readings: ReadonlyMap<string, ReadMessage>;
  /** Which catalogue counts here. */
  readonly catalogue: string;
  readonly answer: (of: Sought, isFirst?: boolean) => Promise<Answered | undefined>;
  readonly change: (asked: Asked) => void;
  readonly failedToKeep: (problem: unknown) => void;
};

/** The round that is made just now: what goes in, what comes out, and that it was spoken. */
export function roundDesk(host: RoundHost) {
  /** The round that is still to be spoken, or a new one. */
  const open = (): Round =>
    host.round && host.round.spoken === 0 ? host.round : newRound(Date.now());

  function keep(round: Round): void {
    const isSpoken = round.spoken > 0 && host.round?.spoken === 0;
    host.round = round;
    if (isSpoken) {
      keepQuestions(givenIn(round, new Date(), host.catalogue)).catch(host.failedToKeep);
      const said = new Set(round.items.map(({ message }) => message));
      for (const each of host.messages ?? []) {
        if (said.has(each.id) && each.done === 0) host.change({ ...each, done: round.spoken });
      }
    }
    keepQuestion(round).catch(host.failedToKeep);
  }

  return {
    keep,
    /** Everything that has an answer. */
    async make(): Promise<void> {
      const { messages = [], readings, answer } = host;
      keep(await withAnswered(open(), messages, readings, answer));
    },
    /** @returns whether it could be done */
    async toggle(asked: Asked, part: QuestionPart): Promise<boolean> {
      const now = open();
      if (isIn(now, asked.id, part.text)) {
        const items = now.items.filter(
          (each) => each.message !== asked.id || each.question !== part.text,
        );
        keep({ ...now, items });
        return true;
      }
      const spoken = await spokenOf(asked, part, host.answer);
      const { items } = open();
      if (spoken) {
        keep({ ...open(), items: spoken.isUrgent ? [spoken, ...items] : [...items, spoken] });
      }
      return spoken !== undefined;
    },
  };
}
