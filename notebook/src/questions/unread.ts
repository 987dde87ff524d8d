import type { QuestionPart } from '@tarebook/record';
import type { Answered } from './answer-shapes';
import { stretches } from './words';

const units =
  'lb|lbs|pounds?|kg|kilos?|tons?|gal|gallons?|liters?|ft|feet|foot|inch(?:es)?|in|mi|miles|mph|mpg|psi|ah|amp[- ]hours?|amps?|watts?|w|wh|kwh|volts?|v|btu|hp|degrees|nights?|days?|hours?';
/** A figure with its unit, or one of three digits and more; no price, and nothing within a word. */
const figure = new RegExp(
  `(?<![\\p{L}\\d$.,/-])(?:\\d[\\d,]*(?:\\.\\d+)?[ -]?(?:${units})(?![\\p{L}\\d])|\\d{1,2},\\d{3}|\\d{3,5})(?![\\p{L}\\d]|[.,]\\d)`,
  'giu',
);
/** A year is said of many things, and is none that is reckoned with. */
const year = /^(?:19|20)\d\d$/;
const mostNamed = 4;

/** Figures of a question that nothing was read from, in their order, each once. */
export function unreadIn(part: QuestionPart, personal: readonly string[]): readonly string[] {
  const plain = stretches(part, personal)
    .filter(({ kind }) => kind === 'plain')
    .map(({ text }) => text)
    .join('\n');
  const left = (part.loads ?? []).reduce((now, { words }) => now.replace(words, '\n'), plain);
  const found = [...left.matchAll(figure)].map(([said]) => said.trim());
  return [...new Set(found)].filter((said) => !year.test(said)).slice(0, mostNamed);
}

const inTurn = new Intl.ListFormat('en-US', { type: 'conjunction' });

/**
 * What an answer says of figures that it does not use, so that none of its own is taken for one of them;
 * whoever is asked back is asked what they are.
 */
export function unreadSaid(unread: readonly string[], form: Answered['form']): string {
  if (unread.length === 0) return '';
  const figures = inTurn.format(unread.map((each) => `the ${each}`));
  if (form === 'askBack') return `And what ${unread.length === 1 ? 'is' : 'are'} ${figures} of?`;
  const example = form === 'everybody' ? '; the figures in it are an example' : '';
  return `This answer does not use ${figures} of the question${example}.`;
}

/** An answer that says so; what is no calculation uses no figure, and says nothing of it. */
export function withUnread(
  answered: Answered,
  part: QuestionPart,
  personal: readonly string[],
): Answered {
  const said =
    answered.doc === undefined ? '' : unreadSaid(unreadIn(part, personal), answered.form);
  if (said === '') return answered;
  const { form, text } = answered;
  return { ...answered, text: form === 'askBack' ? `${text}\n${said}` : `${said} ${text}` };
}
