import type { Pasted } from '@tarebook/record';
import { checksum } from './checksum';
import { type Given, isGiven } from './given';
import { isReturned, type Returned } from './returned';
import { isRound, type Round } from './round';
import { everyRecord, hasFields, inTurn, putRecord, shelf } from './shelf';

/** A message as it came, and what a person here made of it. */
export type Asked = Pasted & {
  readonly kind: 'message';
  readonly id: string;
  /** When it was taken in, in milliseconds since 1970, and its place in its bunch. */
  readonly came: number;
  readonly place: number;
  /** What seemed urgent when it was last read; '' where nothing did. */
  readonly urgent: string;
  /** The topic that a person chose, by the words of the question; 'none' is a choice too. */
  readonly topics: Readonly<Record<string, string>>;
  /** Facts that a person struck out, as “fact: value”. */
  readonly struck: readonly string[];
  /** The form of answer that a person chose, by the words of the question; no other question takes it. */
  readonly forms?: Readonly<Record<string, string>>;
  /** Answers in a person's own words, by the words of the question. */
  readonly wordings: Readonly<Record<string, string>>;
  /** When it was answered or laid aside, in milliseconds since 1970; 0 while it is open. */
  readonly done: number;
  /** What came back by a link, by the words of the question; what came back last holds. */
  readonly back?: Readonly<Record<string, Returned>>;
  /** By whose rules that came back, by the words of the question; facts of other rules are none of it. */
  readonly backTopics?: Readonly<Record<string, string>>;
  /** Of which text a case was made of it, as a checksum, by the words of the question. */
  readonly cases?: Readonly<Record<string, string>>;
  /** What it waits for, in words, since something was asked back or handed on; '' where for nothing. */
  readonly waits?: string;
  /** The kind of urgency that a person lifted: what was read as that is not urgent to them. */
  readonly lifted?: string;
  /** Its questions whose answer has left, by their words. */
  readonly sent?: readonly string[];
  /** Whether a person said that it asks something else than the one it was read as a repeat of. */
  readonly apart?: boolean;
  /** What a person put in the place of a fact that was read, by the words of the question and the fact. */
  readonly mended?: Readonly<Record<string, Readonly<Record<string, string>>>>;
};

const isTexts = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((each) => typeof each === 'string');
const isTextRecord = (value: unknown): value is Readonly<Record<string, string>> =>
  typeof value === 'object' &&
  value !== null &&
  Object.values(value).every((each) => typeof each === 'string');
const isTextRecords = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Object.values(value).every(isTextRecord);

const held = (value: object, key: string): unknown =>
  Object.getOwnPropertyDescriptor(value, key)?.value;

/** Whether a stored record is a message, whole. */
export function isAsked(value: unknown): value is Asked {
  return (
    hasFields(value, {
      ...{ kind: 'string', id: 'string', channel: 'string', asker: 'string', askedOn: 'string' },
      ...{ text: 'string', came: 'number', place: 'number', urgent: 'string', done: 'number' },
    }) &&
    held(value, 'kind') === 'message' &&
    isTextRecord(held(value, 'topics')) &&
    isTextRecord(held(value, 'wordings')) &&
    isTextRecord(held(value, 'forms') ?? {}) &&
    isTexts(held(value, 'struck')) &&
    ['undefined', 'string'].includes(typeof held(value, 'waits')) &&
    ['undefined', 'string'].includes(typeof held(value, 'lifted')) &&
    ['undefined', 'boolean'].includes(typeof held(value, 'apart')) &&
    isTexts(held(value, 'sent') ?? []) &&
    isTextRecords(held(value, 'mended') ?? {}) &&
    isReturned(held(value, 'back') ?? {}) &&
    isTextRecord(held(value, 'backTopics') ?? {}) &&
    isTextRecord(held(value, 'cases') ?? {})
  );
}

const bytes = new TextEncoder();
const sumOf = ({ channel, asker, askedOn, text }: Pasted): string =>
  checksum(bytes.encode(JSON.stringify([channel, asker, askedOn, text]))).toString(36);

/** Whether a message still has the very words, way and sender with which it was taken in. */
export const isAsItCame = (asked: Asked): boolean => asked.id.split('-')[0] === sumOf(asked);

/** Each as a record of its own; the same bunch pasted twice makes the same records. */
export function recordsOf(pasted: readonly Pasted[], now: number): readonly Asked[] {
  const counts = new Map<string, number>();
  return pasted.map((each, place) => {
    const sum = sumOf(each);
    const count = (counts.get(sum) ?? 0) + 1;
    counts.set(sum, count);
    return {
      ...each,
      ...{ kind: 'message', id: count === 1 ? sum : `${sum}-${count}`, came: now, place },
      ...{ urgent: '', topics: {}, struck: [], wordings: {}, done: 0 },
    };
  });
}

export const inOrder = (all: readonly Asked[]): readonly Asked[] =>
  all.toSorted((a, b) => a.came - b.came || a.place - b.place);

/** Whatever stands in the store of questions. */
export type QuestionRecord = Asked | Round | Given;
export const isQuestionRecord = (value: unknown): value is QuestionRecord =>
  isAsked(value) || isRound(value) || isGiven(value);
export const questionKey = ({ kind, id }: QuestionRecord): string => `${kind}/${id}`;

export const allQuestionRecords = (): Promise<readonly QuestionRecord[]> =>
  everyRecord('questions', isQuestionRecord);
export const keepQuestion = (record: QuestionRecord): Promise<void> =>
  putRecord('questions', questionKey(record), record);

/** All of them in one go, or none. */
export const keepQuestions = (records: readonly QuestionRecord[]): Promise<void> =>
  inTurn(async () => {
    const write = (await shelf()).transaction('questions', 'readwrite');
    await Promise.all(records.map((each) => write.store.put(each, questionKey(each))));
    await write.done;
  });

/** Takes records out, all of them or none. */
export const dropQuestions = (records: readonly QuestionRecord[]): Promise<void> =>
  inTurn(async () => {
    const write = (await shelf()).transaction('questions', 'readwrite');
    await Promise.all(records.map((each) => write.store.delete(questionKey(each))));
    await write.done;
  });

/** What waits for an answer, the urgent ones first, and the next round: for the first page. */
export type AtHand = {
  readonly urgent: readonly Asked[];
  readonly open: number;
  /** What was asked back or handed on, and has not come back. */
  readonly waiting: readonly Asked[];
  /** The round that is still to be spoken. */
  readonly round: Round | undefined;
};

export async function questionsAtHand(): Promise<AtHand> {
  const all = await allQuestionRecords();
  const open = inOrder(all.filter(isAsked)).filter(({ done }) => done === 0);
  const round = all
    .filter(isRound)
    .toSorted((a, b) => a.made - b.made)
    .at(-1);
  return {
    urgent: open.filter(({ urgent }) => urgent !== ''),
    open: open.length,
    waiting: open.filter(({ waits = '' }) => waits !== ''),
    round: round && round.spoken === 0 && round.items.length > 0 ? round : undefined,
  };
}
