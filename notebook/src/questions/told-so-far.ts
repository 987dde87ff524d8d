import type { QuestionPart } from '@tarebook/record';
import type { Asked } from '../state/questions';
import type { Returned } from '../state/returned';
import { rowsText, rowsToldIn } from './rows-told';
import { factText } from './words';

/** By whose rules something came back to a question that is about other ones now; else undefined. */
export function otherBack(
  { back, backTopics = {} }: Asked,
  { text, topic }: Pick<QuestionPart, 'text' | 'topic'>,
): string | undefined {
  if (!back || !Object.hasOwn(back, text)) return undefined;
  const of = Object.hasOwn(backTopics, text) ? backTopics[text] : undefined;
  return of === undefined || of === topic ? undefined : of;
}

/** What came back by a link to a question, by its own rules, and was not struck out. */
export const backOf = (asked: Asked, part: QuestionPart): Returned => {
  const { back, struck } = asked;
  const { text } = part;
  if (otherBack(asked, part) !== undefined) return {};
  const all = back && Object.hasOwn(back, text) ? (back[text] ?? {}) : {};
  return Object.fromEntries(
    Object.entries(all).filter(([fact, value]) => !struck.includes(returnedText(fact, value))),
  );
};

/** One that came back, as it is shown and struck out. */
export const returnedText = (fact: string, value: Returned[string]): string =>
  factText(fact, typeof value === 'string' ? value : rowsText(value));

/** What a person put in the place of facts that were read in a question, as far as they still are. */
export function mendedOf(
  { mended }: Asked,
  { text, facts, open = [] }: Pick<QuestionPart, 'text' | 'facts' | 'open'>,
): Readonly<Record<string, string>> {
  const all = mended && Object.hasOwn(mended, text) ? (mended[text] ?? {}) : {};
  const may = open.flatMap(({ among }) => among);
  return Object.fromEntries(
    Object.entries(all).filter(([fact]) => Object.hasOwn(facts, fact) || may.includes(fact)),
  );
}

/** Figures of which neither the question nor a person said what they are. */
export function openOf(asked: Asked, part: QuestionPart): NonNullable<QuestionPart['open']> {
  const mended = mendedOf(asked, part);
  return (part.open ?? []).filter(
    ({ among }) => !among.some((fact) => Object.hasOwn(mended, fact)),
  );
}

/** The facts that were read in a question itself, as a person set them right and not struck out, people and loads as rows. */
export function readOf(asked: Asked, part: QuestionPart): Returned {
  const { struck } = asked;
  const mended = mendedOf(asked, part);
  const read = Object.entries(part.facts).flatMap(([fact, value]) =>
    struck.includes(factText(fact, value)) ? [] : [[fact, mended[fact] ?? value]],
  );
  const own = Object.entries(mended).filter(([fact]) => !Object.hasOwn(part.facts, fact));
  return { ...Object.fromEntries([...read, ...own]), ...rowsToldIn(part, asked) };
}

/** A message with what an open figure is said to be, or once more with nobody saying it. */
export function withOpen(
  asked: Asked,
  { text }: Pick<QuestionPart, 'text'>,
  { value, among }: Pick<NonNullable<QuestionPart['open']>[number], 'value' | 'among'>,
  fact: string,
): Asked {
  const { [text]: before = {}, ...others } = asked.mended ?? {};
  const left = Object.entries(before).filter(([each]) => !among.includes(each));
  const now = Object.fromEntries(before[fact] === value ? left : [...left, [fact, value]]);
  return {
    ...asked,
    mended: Object.keys(now).length === 0 ? others : { ...others, [text]: now },
  };
}

/** A message with a fact of one of its questions set right; the same as was read sets nothing right. */
export function withMended(
  asked: Asked,
  { text, facts }: Pick<QuestionPart, 'text' | 'facts'>,
  fact: string,
  value: string,
): Asked {
  const { [text]: before = {}, ...others } = asked.mended ?? {};
  const { [fact]: _, ...rest } = before;
  const now = facts[fact] === value ? rest : { ...rest, [fact]: value };
  const read = factText(fact, facts[fact] ?? '');
  return {
    ...asked,
    struck: asked.struck.filter((each) => each !== read),
    mended: Object.keys(now).length === 0 ? others : { ...others, [text]: now },
  };
}

/** The same with what came back, which holds over it. */
export const factsOf = (asked: Asked, part: QuestionPart): Returned => ({
  ...part.toldBefore,
  ...readOf(asked, part),
  ...backOf(asked, part),
});

/** A question as it was read, and why its rules refuse what is told, where they do. */
export type ReadPart = QuestionPart & { readonly refused?: string };
