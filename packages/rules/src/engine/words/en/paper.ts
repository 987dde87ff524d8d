import type { Say, Sayable } from '../value';
import { bullets, capital, spaced } from './grammar';

type Several = { readonly of: readonly Sayable[] };

/** How a limit stands, in words. */
const states: Readonly<Record<string, string>> = {
  stop: 'over',
  unknown: 'not settled',
  if: 'to be made sure of',
  care: 'with care',
  ok: 'within',
};

const headings: Readonly<Record<string, string>> = {
  limits: 'How close to each limit',
  findings: 'Also',
  missing: 'Find out first',
  changes: 'What would change it',
  assumed: 'Taken for granted',
  careful: 'Be careful',
  working: 'The working',
  how: 'How it is done',
  known: 'Known',
  open: 'Open',
  asked: 'Asked',
  answer: 'Answer',
  links: 'Where to read on',
};

/** The words that stand around an answer on paper: the ticket, headings, what is asked back, a slip. */
export const paper = {
  ticket: (
    values: {
      readonly outcome: Sayable;
      readonly figure: Sayable | null;
      readonly sentence: Sayable;
    },
    say: Say,
  ) => {
    const { outcome, figure, sentence } = values;
    const lines = [capital(say(outcome)), figure ? capital(say(figure)) : '', say(sentence)];
    return lines.filter((each) => each !== '').join('\n');
  },

  part: ({ title, of }: Several & { readonly title: Sayable }, say: Say) =>
    of.length === 0 ? '' : `${say(title)}\n${bullets(of.map(say))}`,

  heading: ({ of }: { readonly of: string }) => headings[of] ?? '',

  'stands-at': (
    values: {
      readonly label: Sayable;
      readonly used: Sayable;
      readonly of: Sayable;
      readonly state: string;
    },
    say: Say,
  ) => {
    const { label, used, of, state } = values;
    return `${say(label)}: ${say(used)} of ${say(of)}, ${states[state] ?? state}`;
  },
  labeled: ({ label, of }: { readonly label: Sayable; readonly of: Sayable }, say: Say) =>
    `${say(label)}: ${say(of)}`,
  'ask-numbered': (
    values: {
      readonly place: number;
      readonly ask: Sayable;
      readonly where: Sayable | null;
    },
    say: Say,
  ) => {
    const asked = `${values.place}. ${say(values.ask)}`;
    return values.where === null ? asked : `${asked} (${say(values.where)})`;
  },
  'to-answer': () => 'To answer that we need:',
  'nothing-to-ask': () => 'Nothing more has to be asked: what was told decides it.',
  'fact-read': (
    values: { readonly label: Sayable; readonly value: Sayable; readonly from: Sayable | null },
    say: Say,
  ) => `${say(values.label)}: ${say(values.value)}${values.from ? ` (${say(values.from)})` : ''}`,
  'rows-told': ({ of }: Several, say: Say) => of.map(say).join('; '),
  'row-told': (
    { label, cells }: { readonly label: Sayable; readonly cells: readonly Sayable[] },
    say: Say,
  ) => spaced([say(label), cells.map(say).join(', ')]),
  'promised-by': () => 'Promised: ____________________  by: __________  to: __________',
  'goes-to': () => 'For: [ ] service  [ ] sales  [ ] the maker',
  'under-rules': (values: {
    readonly topic: string;
    readonly rules: string;
    readonly asOf: string;
  }) => `Rules ${values.topic} ${values.rules}, as of ${values.asOf}.`,
};
