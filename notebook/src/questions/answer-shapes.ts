import type { Again, Ledger, MessageColumns, Pasted, ReadMessage } from '@tarebook/record';
import type { FormName } from '@tarebook/rules/engine';
import type { House } from '../state/house';
import type { Asked } from '../state/questions';
import type { Returned } from '../state/returned';
import type { TableFound } from './table-of';

/** By topic the words of every case and note that came with the page, and what each was filed for. */
export type FiledWords = Readonly<
  Record<
    string,
    {
      readonly cases: Readonly<Record<string, string>>;
      readonly asked: Readonly<Record<string, string>>;
    }
  >
>;
/** A note by its name, as it is written. */
export type NoteText = { readonly name: string; readonly text: string };

/** A bunch to be split; a message to be read; a question to be answered: all of it beside the page. */
export type QuestionsAsked =
  | { readonly ask: 'split'; readonly text: string }
  | {
      readonly ask: 'table';
      readonly text: string;
      readonly columns: MessageColumns | undefined;
    }
  | {
      readonly ask: 'read';
      readonly turn: number;
      readonly messages: readonly Asked[];
      readonly filed: FiledWords;
    }
  | { readonly ask: 'answer'; readonly key: string; readonly of: Answerable }
  | {
      readonly ask: 'again';
      readonly ledger: Ledger;
      readonly day: string;
      readonly houses: readonly House[];
    }
  | { readonly ask: 'merge'; readonly mine: Ledger; readonly text: string };

/** What an answer hangs on. */
export type Answerable = {
  /** A rule set's id, or else a note. */
  readonly topic: string | null;
  readonly note: NoteText | null;
  /** Which of the topic's askings is answered first; absent: the one that what was told implies. */
  readonly asking?: string;
  /** The fact on which that hangs first. */
  readonly look?: string;
  /** Figures of which nobody said which of several facts they are. */
  readonly open?: readonly { readonly value: string; readonly among: readonly string[] }[];
  /** As a case writes them, a list as its rows. */
  readonly facts: Returned;
  /** The question as it may leave, for the case that an answer can be opened as. */
  readonly question: string;
  readonly house: House | undefined;
  readonly day: string;
  /** The form that is wanted; null: the one that fits what is known. */
  readonly form: AnswerForm | 'aloud' | null;
};

/** The forms that go to whoever asked, and the slip to whoever here goes on with it. */
export const answerForms = [
  'short',
  'post',
  'everybody',
  'askBack',
  'spoken',
  'letter',
  'slip',
] as const;
export type AnswerForm = (typeof answerForms)[number] & FormName;

/** What may be said aloud to all, as it stands: not what asks back, hands on or is a letter. */
export const speakable: ReadonlySet<string> = new Set(['short', 'post', 'everybody', 'spoken']);

/** What leaves in these is no answer yet: the question stays open. */
export const leavesOpen: ReadonlySet<string> = new Set(['first reply', 'askBack', 'slip']);

export type Answered = {
  readonly form: AnswerForm;
  /** The form that fits what is known, where more than the short one is wanted. */
  readonly fits: AnswerForm;
  readonly text: string;
  /** What whoever answers has to know of it, and nobody else; it never leaves. */
  readonly beside?: string;
  /** The cautions that stand in it. */
  readonly cautions: readonly string[];
  /** What it stood on, as `judge --json` writes it. */
  readonly saved: Readonly<Record<string, unknown>>;
  /** Gravity of what came out, for the order of a round. */
  readonly isWarning: boolean;
  /** The question as a case, what is asked next left open; undefined for a note. */
  readonly doc?: string;
  /** What is asked next, in its words. */
  readonly asks: readonly string[];
};

export type QuestionsTold =
  | { readonly told: 'split'; readonly found: readonly Pasted[] }
  | { readonly told: 'table'; readonly table: TableFound }
  | {
      readonly told: 'read';
      readonly turn: number;
      readonly read: readonly ReadMessage[];
      /** How many of all have been read. */
      readonly done: number;
      readonly of: number;
      /** Whether what is filed near to each of them was looked for too. */
      readonly near: boolean;
    }
  | { readonly told: 'answer'; readonly key: string; readonly answered: Answered | undefined }
  | { readonly told: 'again'; readonly found: readonly Again[] }
  /** What a colleague's file holds beside what is here, or why it cannot be read. */
  | { readonly told: 'merge'; readonly merged: Ledger | { readonly says: string } };
