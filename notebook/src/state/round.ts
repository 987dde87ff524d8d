import { hasFields } from './shelf';

/** A question as it is spoken: nobody's name but as it may be said, nothing personal. */
export type Spoken = {
  /** The message it came in. */
  readonly message: string;
  /** The words of the question as they were read; with the message they name it. */
  readonly question: string;
  readonly channel: string;
  /** The name as it is spoken; '' for none. */
  readonly name: string;
  /** The question in few words, and the answer with its caution, as they are said. */
  readonly asks: string;
  readonly answer: string;
  /** Question and answer as they were put in; absent where they came before that was kept. */
  readonly drafted?: string;
  /** What of the answer is a caution; absent where it came before that was kept. */
  readonly cautions?: readonly string[];
  /** A rule set's id, or `note`. */
  readonly topic: string;
  readonly isWarning: boolean;
  /** It cannot wait, and stands first. */
  readonly isUrgent?: boolean;
  /** Seconds after the beginning at which its turn came; -1 where it has not been spoken. */
  readonly at: number;
  /** It stands in the record in these words: spoken, or printed to be. */
  readonly isKept?: boolean;
  /** The verdict it stood on, as `judge --json` writes it. */
  readonly saved: object;
};

/** Chosen questions in their order, with what is said before and after them. */
export type Round = {
  readonly kind: 'round';
  readonly id: string;
  readonly made: number;
  readonly opening: string;
  readonly closing: string;
  /** Words a minute. */
  readonly pace: number;
  readonly items: readonly Spoken[];
  /** When it was spoken, in milliseconds since 1970; 0 while it is still to come. */
  readonly spoken: number;
};

const isSpoken = (value: unknown): value is Spoken =>
  hasFields(value, {
    ...{ message: 'string', question: 'string', channel: 'string', name: 'string' },
    ...{ asks: 'string', answer: 'string', topic: 'string', at: 'number', saved: 'object' },
  }) && typeof Object.getOwnPropertyDescriptor(value, 'isWarning')?.value === 'boolean';

/** Whether a stored record is a round, whole. */
export function isRound(value: unknown): value is Round {
  if (
    !hasFields(value, {
      ...{ kind: 'string', id: 'string', made: 'number', opening: 'string', closing: 'string' },
      ...{ pace: 'number', items: 'object', spoken: 'number' },
    })
  ) {
    return false;
  }
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  const items = held('items');
  return held('kind') === 'round' && Array.isArray(items) && items.every(isSpoken);
}

export const newRound = (now: number): Round => ({
  ...{ kind: 'round', id: now.toString(36), made: now, items: [], spoken: 0, pace: 175 },
  opening: 'Welcome. These are the questions of the week, one after the other.',
  closing: 'That was it for this time. Send the next ones; the labels on your own rig count first.',
});

export const isIn = ({ items }: Pick<Round, 'items'>, message: string, question: string): boolean =>
  items.some((each) => each.message === message && each.question === question);

/** Question and answer in one, to see whether a person changed either. */
export const draftOf = ({ asks, answer }: Pick<Spoken, 'asks' | 'answer'>): string =>
  `${asks}\n${answer}`;
