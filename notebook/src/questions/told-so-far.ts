import type { QuestionPart } from '@tarebook/record';
import type { Asked } from '../state/questions';
import type { Returned } from '../state/returned';
import { rowsText, rowsToldIn } from './rows-told';
import { factText } from './words';

/** What came back by a link to a question, and was not struck out. */
export const backOf = ({ back, struck }: Asked, { text }: QuestionPart): Returned => {
  const all = back && Object.hasOwn(back, text) ? (back[text] ?? {}) : {};
  return Object.fromEntries(
    Object.entries(all).filter(([fact, value]) => !struck.includes(returnedText(fact, value))),
  );
};

/** One that came back, as it is shown and struck out. */
export const returnedText = (fact: string, value: Returned[string]): string =>
  factText(fact, typeof value === 'string' ? value : rowsText(value));

/** The facts that were read and not struck out, people and loads as rows; what came back holds over them. */
export function factsOf(asked: Asked, part: QuestionPart): Returned {
  const { struck } = asked;
  const read = Object.entries(part.facts).filter(
    ([fact, value]) => !struck.includes(factText(fact, value)),
  );
  return { ...Object.fromEntries(read), ...rowsToldIn(part, struck), ...backOf(asked, part) };
}
