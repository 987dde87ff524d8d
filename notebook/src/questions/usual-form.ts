import { type AnswerForm, answerForms, type UsualForms } from './answer-shapes';

const place = 'tarebook.answer-forms';
/** Whoever goes on with one question goes on with no other; that is never usual. */
const never: ReadonlySet<AnswerForm> = new Set(['slip']);

const formOf = (value: unknown): AnswerForm | undefined =>
  answerForms.find((form) => form === value);

/** The forms a person chose last in the place of the short one, as this device keeps them. */
export function usualForms(): UsualForms {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? '{}');
    const told = Object.entries(typeof kept === 'object' && kept !== null ? kept : {});
    return Object.fromEntries(
      told.flatMap(([fits, chosen]) => {
        const [from, to] = [formOf(fits), formOf(chosen)];
        return from && to ? [[from, to]] : [];
      }),
    );
  } catch {
    return {};
  }
}

/** The same with one that was chosen just now; whoever chooses the short one has nothing usual there. */
export function withChosen(usual: UsualForms, fits: AnswerForm, chosen: AnswerForm): UsualForms {
  if (never.has(chosen)) return usual;
  const { [fits]: _, ...others } = usual;
  return chosen === 'short' ? others : { ...others, [fits]: chosen };
}

/** Keeps them; on a device that keeps nothing they last as long as the page. */
export function keepUsual(usual: UsualForms): void {
  try {
    localStorage.setItem(place, JSON.stringify(usual));
  } catch {
    // They stand in this window alone.
  }
}
