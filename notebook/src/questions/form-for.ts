import type { Asked } from '../state/questions';
import { type AnswerForm, answerForms } from './answer-shapes';

type Question = { readonly text: string };

/**
 * The form in which one question is answered: the one that a person chose for it, else the first in which
 * they wrote words of their own; undefined where the page chooses. Other questions have no part in it.
 */
export function formFor(
  { forms = {}, wordings }: Pick<Asked, 'forms' | 'wordings'>,
  { text }: Question,
): AnswerForm | undefined {
  const chosen = Object.hasOwn(forms, text) ? forms[text] : undefined;
  return (
    answerForms.find((form) => form === chosen) ??
    answerForms.find((form) => Object.hasOwn(wordings, `${form} ${text}`))
  );
}

/** A message once a form was chosen for one of its questions. */
export const withForm = (asked: Asked, { text }: Question, form: AnswerForm): Asked => ({
  ...asked,
  forms: { ...asked.forms, [text]: form },
});
