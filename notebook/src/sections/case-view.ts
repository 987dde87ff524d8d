import type { CaseDocument } from '@tarebook/casebook';
import type { Answer, Topic } from '@tarebook/rules/engine';
import type { UnitSystem } from '@tarebook/rules/quantity';
import { nothing, type TemplateResult } from 'lit';
import type { Open } from '../elements/known-said';
import type { History } from '../state/history';
import type { Judged } from '../state/judged';
import type { Ticket } from '../state/ticket';

/** A case as it stands, and what may be done with it: all that a section of the page is given. */
export type CaseView = {
  readonly doc: CaseDocument;
  /** Undefined while the document names no topic that there is. */
  readonly topic: Topic | undefined;
  /** Undefined as long as the document has never been free of troubles. */
  readonly answer: Answer | undefined;
  /** Whether the answer is that of the present text. */
  readonly current: boolean;
  /** The text as it came with the page or with a link; undefined for a case of one's own. */
  readonly filed: Judged | undefined;
  /** Whether the author's words hold of what stands there now. */
  readonly asFiled: boolean;
  readonly ticket: Ticket | undefined;
  /** The fact that is asked just now. */
  readonly asking: string | undefined;
  readonly history: History;
  /** The last part of the case's address. */
  readonly name: string;
  readonly system: UnitSystem;
  /** Why nothing is kept just now; '' while all is well. */
  readonly notice: string;
  /** What was last done with the ticket. */
  readonly said: string;
  /**
   * Changes the text. What was typed since this view was drawn may be in the document that is handed
   * over; changes of one field within a moment are undone as one.
   */
  edit(write: (doc: CaseDocument) => string, field: string): void;
  /** Goes to another point of the history. */
  go(to: (history: History) => History): void;
};

/** An answered case: what the sections below the ticket stand on. */
export type AnsweredView = CaseView & { readonly topic: Topic; readonly answer: Answer };

/** A stretch of the page with one purpose, drawn from the case as it stands. */
export type Section<View extends CaseView = CaseView> = (
  view: View,
) => TemplateResult | typeof nothing;

/** The text whose verdict cannot be said, for what can be said of it all the same. */
export const openOf = ({ id }: Topic, { doc: { text }, system }: CaseView): Open => ({
  ...{ topic: id, text, system },
});

export const isAnswered = (view: CaseView): view is AnsweredView =>
  view.topic !== undefined && view.answer !== undefined;

/** A section that is shown once there is an answer. */
export const whenAnswered =
  (section: Section<AnsweredView>): Section =>
  (view) =>
    isAnswered(view) ? section(view) : nothing;
