import type { QuestionPart, ReadMessage } from '@tarebook/record';
import { type Asked, keepQuestion, keepQuestions } from '../state/questions';
import { isIn, newRound, type Round, type Spoken } from '../state/round';
import type { Answered, AnswerForm } from './answer-shapes';
import { givenIn } from './leaving';
import { followed, spokenOf, withAnswered } from './make-round';
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

/** What cannot wait comes first; what a message asks too is heard behind the rest of it. */
function withOne(items: readonly Spoken[], one: Spoken): readonly Spoken[] {
  if (one.isUrgent) return [one, ...items];
  const at = items.findLastIndex(({ message }) => message === one.message);
  return at < 0 ? [...items, one] : items.toSpliced(at + 1, 0, one);
}

/** The round that is made just now: what goes in, what comes out, and that it was spoken. */
export function roundDesk(host: RoundHost) {
  /** The round that is still to be spoken, or a new one. */
  const open = (): Round =>
    host.round && host.round.spoken === 0 ? host.round : newRound(Date.now());

  /** Messages of which something was said, and all of whose questions in the round were. */
  function lay(round: Round, items: readonly Spoken[]): void {
    const open = new Set(round.items.filter(({ isKept }) => !isKept).map(({ message }) => message));
    const said = new Set(items.map(({ message }) => message).filter((id) => !open.has(id)));
    for (const each of host.messages ?? []) {
      if (said.has(each.id) && each.done === 0) host.change({ ...each, done: Date.now() });
    }
  }

  /** The same round with some of its answers in the record; what stood there before does not again. */
  function recorded(round: Round, which: (item: Spoken) => boolean): Round {
    const items = round.items.filter((each) => which(each) && !each.isKept);
    if (items.length === 0) return round;
    keepQuestions(givenIn({ items }, new Date(), host.catalogue)).catch(host.failedToKeep);
    return {
      ...round,
      items: round.items.map((each) => (items.includes(each) ? { ...each, isKept: true } : each)),
    };
  }

  function keep(round: Round): void {
    const isSpoken = round.spoken > 0 && host.round?.spoken === 0;
    const now = isSpoken ? recorded(round, () => true) : round;
    host.round = now;
    if (isSpoken) lay(now, now.items);
    keepQuestion(now).catch(host.failedToKeep);
  }

  return {
    keep,
    /** Left before its end: what was spoken so far is in the record, and its messages are done. */
    stop(): void {
      const { round } = host;
      if (!round || round.spoken > 0) return;
      const now = recorded(round, ({ at }) => at >= 0);
      if (now !== round) keep(now);
      lay(
        now,
        now.items.filter(({ at }) => at >= 0),
      );
    },
    /** Printed: its answers are in the record as they are printed; its messages stay open. */
    printed(): void {
      const { round } = host;
      if (round && round.spoken === 0) keep(recorded(round, () => true));
    },
    /** Everything that has an answer. */
    async make(): Promise<void> {
      const { messages = [], readings, answer } = host;
      keep(await withAnswered(open(), messages, readings, { answer }));
    },
    /** What was set right beside its question is said so in the round that is still to be spoken. */
    async follow(): Promise<void> {
      const { round, messages = [], readings, answer } = host;
      if (!round || round.spoken > 0) return;
      const now = await followed(round, messages, readings, { answer });
      if (now !== round && host.round === round) keep(now);
    },
    /** @returns whether it could be done */
    async toggle(asked: Asked, part: QuestionPart, form: AnswerForm | undefined): Promise<boolean> {
      const now = open();
      if (isIn(now, asked.id, part.text)) {
        const items = now.items.filter(
          (each) => each.message !== asked.id || each.question !== part.text,
        );
        keep({ ...now, items });
        return true;
      }
      const { answer } = host;
      const parts = host.readings.get(asked.id)?.parts ?? [];
      const spoken = await spokenOf(asked, part, { answer, parts, ...(form && { form }) });
      if (spoken) keep({ ...open(), items: withOne(open().items, spoken) });
      return spoken !== undefined;
    },
  };
}
