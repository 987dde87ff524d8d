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
  const told = [...(part.loads ?? []), ...(part.people ?? []), ...(part.open ?? [])];
  const left = told.reduce((now, { words }) => (words ? now.replace(words, '\n') : now), plain);
  const found = [...left.matchAll(figure)].map(([said]) => said.trim());
  return [...new Set(found)].filter((said) => !year.test(said)).slice(0, mostNamed);
}

const inTurn = new Intl.ListFormat('en-US', { type: 'conjunction' });

const figuresOf = (unread: readonly string[]): string =>
  inTurn.format(unread.map((each) => `the ${each}`));

/** What whoever answers is told of figures that an answer does not use; it stands beside the answer. */
export const unreadSaid = (unread: readonly string[]): string =>
  unread.length === 0 ? '' : `This answer does not use ${figuresOf(unread)} of the question.`;

/** What stands before the figures of an example, where others were told that nothing was read from. */
const exampleSaid = 'The figures in this are an example, not yours.';

/** The same where some of the figures that were told were read, though none of them is said. */
const partlySaid = 'Not every figure in this is yours.';

/** What is only supposed in an answer: “Say 370 lb of people and a tongue of 610 lb: …” */
const supposed = /^Say .*\d/;
const ofPeople = /(?<!\p{L})(?:people|tongue)(?!\p{L})/u;

/** Whether who rides along, or the tongue, was told, as it may be understood. */
const tellsLoad = ({ facts, people = [], loads = [], open = [] }: QuestionPart): boolean =>
  people.length > 0 ||
  loads.some(({ list }) => list === 'load.occupants') ||
  [...Object.keys(facts), ...open.flatMap(({ among }) => among)].some((fact) =>
    /ongueWeight$/.test(fact),
  );

/**
 * A draft without what is supposed of people, a tongue or whatever else was told: nobody who told a figure
 * is answered with that of an example. Where nothing else is said, what has to be known is asked.
 */
function withoutSupposed(answered: Answered, part: QuestionPart, isUnread: boolean): Answered {
  const { text, asks } = answered;
  const sentences = text.split(/(?<=[.?!]) /);
  const isTold = tellsLoad(part);
  const left = sentences.filter(
    (each) => !supposed.test(each) || !(isUnread || (isTold && ofPeople.test(each))),
  );
  if (left.length === sentences.length) return answered;
  return { ...answered, text: left.join(' ') || (asks[0] ?? text) };
}

/** Units as they are said aloud, by how they are written. */
const aloudUnits: Readonly<Record<string, readonly string[]>> = {
  ...{ lb: ['pounds?'], psi: ['pounds? a square inch'], gal: ['gallons?'], '%': ['percent'] },
  ...{ in: ['inch(?:es)?'], ft: ['foot', 'feet'], mi: ['miles?'], mph: ['miles an hour'] },
  ...{ Ah: ['amp-hours?'], A: ['amps?'], V: ['volts?'], W: ['watts?'], yr: ['years?'] },
};
const isFigure = /^\d[\d.]* \S+$/;

/** Whether an answer says a figure that was told, with its unit: then it is of whoever asked. */
function saysTold(text: string, { facts }: QuestionPart): boolean {
  const plain = text.replaceAll(/(?<=\d),(?=\d{3})/g, '');
  return Object.values(facts).some((value) => {
    const said = isFigure.test(value) ? value : undefined;
    if (said === undefined) return false;
    const [amount = '', unit = ''] = said.split(' ');
    const units = [escaped(unit), ...(aloudUnits[unit] ?? [])].join('|');
    return new RegExp(`(?<![\\d.])${escaped(amount)} (?:${units})(?!\\p{L})`, 'u').test(plain);
  });
}
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Decided is what fits whoever asked; all else but the short form may speak in the figures of an example. */
const decided: ReadonlySet<Answered['form']> = new Set(['post', 'spoken']);
const anyFigure = /\d/;

/**
 * An answer beside which stands what it does not use; whoever is asked back is asked what that is. No
 * example stands in it as if it were what was told. What is no calculation uses no figure.
 */
export function withUnread(
  whole: Answered,
  part: QuestionPart,
  personal: readonly string[],
): Answered {
  const unread = whole.doc === undefined ? [] : unreadIn(part, personal);
  const answered = withoutSupposed(whole, part, unread.length > 0);
  if (unread.length === 0) return answered;
  const { form, fits, text } = answered;
  if (form === 'askBack') {
    const asks = `And what ${unread.length === 1 ? 'is' : 'are'} ${figuresOf(unread)} of?`;
    return { ...answered, text: `${text}\n${asks}` };
  }
  const mayBe = form !== 'short' && (form === 'everybody' || !decided.has(fits));
  const isExample = mayBe && anyFigure.test(text) && !saysTold(text, part);
  const isPartly = Object.values(part.facts).some((value) => isFigure.test(value));
  return {
    ...answered,
    beside: unreadSaid(unread),
    text: isExample ? `${isPartly ? partlySaid : exampleSaid} ${text}` : text,
  };
}
