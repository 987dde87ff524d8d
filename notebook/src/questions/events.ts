import type { QuestionPart } from '@tarebook/record';
import type { Asked } from '../state/questions';
import type { Answered, AnswerForm } from './answer-shapes';

/** A person corrected what was read of a message, worded an answer, or laid it aside. */
export class AskedChanged extends CustomEvent<Asked> {
  constructor(asked: Asked) {
    super('asked-changed', { detail: asked, bubbles: true });
  }
}

/** An answer was copied, to leave. */
export type Left = {
  readonly asked: Asked;
  /** The words of the question. */
  readonly question: string;
  readonly form: AnswerForm | 'first reply' | 'own words';
  readonly text: string;
  readonly answered: Answered | undefined;
  /** Whether the browser copied it; else a person does, and says so. */
  readonly isCopied: boolean;
};
export class AnswerLeft extends CustomEvent<Left> {
  constructor(left: Left) {
    super('answer-left', { detail: left, bubbles: true });
  }
}

/** A question goes into the round, in the form that its card shows, or out of it. */
export class SpokenToggled extends CustomEvent<{
  asked: Asked;
  part: QuestionPart;
  form: AnswerForm | undefined;
}> {
  constructor(asked: Asked, part: QuestionPart, form: AnswerForm | undefined) {
    super('spoken-toggled', { detail: { asked, part, form }, bubbles: true });
  }
}

/** A message is to be taken out, as it should never have come in. */
export class TakenOut extends CustomEvent<Asked> {
  constructor(asked: Asked) {
    super('taken-out', { detail: asked, bubbles: true });
  }
}
