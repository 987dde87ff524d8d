import { type Answer, message, own, type Sayable, sayer, type Topic } from '@tarebook/rules/engine';
import { refuseTroubled } from '../asked';
import { refuseNoDocument } from '../doors';
import type { Difference } from '../expect';
import { paragraphsOf, sentencesOf } from './said';
import type { NoteDocument, NoteOutcome } from './shapes';

/** The case a note leans on, and its verdict as it stands. */
export type Leaning = {
  readonly path: string;
  readonly title: string;
  readonly topic: Topic;
  readonly answer: Answer;
};

/** A note as it stands on a day. */
export type JudgedNote = {
  readonly note: NoteDocument;
  readonly outcome: NoteOutcome;
  readonly day: string;
  readonly leaning?: Leaning;
};

/**
 * Whether a note may still be said.
 *
 * @param day the day it is looked at, `2026-11-28`
 * @throws for a note with troubles
 */
export function judgeNote(note: NoteDocument, day: string, leaning?: Leaning): JudgedNote {
  refuseNoDocument(note);
  refuseTroubled(note.troubles);
  const outcome = day > note.goodUntil ? 'expired' : 'holds';
  return { note, outcome, day, ...(leaning && { leaning }) };
}

export const ownerOf = ({ owner }: NoteDocument): Sayable | null =>
  owner === undefined ? null : own(owner);

/** In one sentence: what the note says first; of one past its day, that it is to be checked. */
export const noteSentence = ({ note, outcome }: JudgedNote): Sayable =>
  message('note-sentence', {
    expired: outcome === 'expired',
    first: own(sentencesOf(note)[0] ?? note.front.title),
    until: note.goodUntil,
    owner: ownerOf(note),
  });

/** What came out otherwise than the note expects. */
export const compareNote = ({ note, outcome }: JudgedNote): readonly Difference[] =>
  note.expectations.flatMap(({ name, text }) =>
    text.trim().toLowerCase() === outcome ? [] : [{ name, expected: text, found: outcome }],
  );

/** A note as other programs read it. */
export function judgedNote(judged: JudgedNote): object {
  const { note, outcome, day, leaning } = judged;
  const { front, about, goodUntil, say, owner, links } = note;
  return {
    topic: 'note',
    title: front.title,
    asOf: day,
    outcome,
    sentence: sayer()(noteSentence(judged)),
    about,
    goodUntil,
    say,
    owner: owner ?? null,
    text: paragraphsOf(note).join('\n\n'),
    links,
    leansOn: leaning
      ? {
          path: leaning.path,
          title: leaning.title,
          topic: leaning.topic.id,
          rules: leaning.answer.rules,
          outcome: leaning.answer.outcome,
          sentence: leaning.answer.sentence,
        }
      : null,
    cautions: leaning?.answer.cautions ?? [],
    house: null,
    asked: { document: note.text },
  };
}
