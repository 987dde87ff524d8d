import {
  type Answer,
  answerTraced,
  compareVersions,
  type FormName,
  formNames,
  formOf,
  type HouseLayer,
  houseLayerOf,
  InputError,
  readSaved,
  refuseUnless,
  refuseUnlessParts,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import { type Ledger, type LedgerEntry, refuseNoLedger } from './ledger';

/** How an answer that was given stands by what one would say today. */
export type AgainState =
  | 'same'
  | 'wording'
  | 'figure'
  | 'verdict'
  | 'expired'
  /** There is nothing to judge it by, or it cannot be read; `now` says why. */
  | 'not-judged';

export type Again = {
  readonly id: string;
  /** What was said, and what would be said now. */
  readonly was: string;
  readonly now: string;
  readonly state: AgainState;
  /**
   * What can be sent to whoever was told otherwise, in the form it left in; null where the answer
   * stands, or nothing here says what is right instead.
   */
  readonly correction: string | null;
};

export type AgainOptions = {
  /** The rule sets of today, by id. */
  readonly topics: Readonly<Record<string, Topic>>;
  /** Today, `2026-11-28`. */
  readonly day: string;
  /** The dealer's margins of today; absent: those that each answer stood under. */
  readonly house?: readonly HouseLayer[] | undefined;
};

type Numbers = Readonly<Record<string, number>>;

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Every number below a place, by its path; an open end is no number. */
function numbersIn(value: unknown, path = ''): Numbers {
  if (typeof value === 'number') return { [path]: value };
  if (!isRecord(value)) return {};
  return Object.assign(
    {},
    ...Object.entries(value).map(([key, inner]) => numbersIn(inner, `${path}.${key}`)),
  );
}

/** Comparisons round to a millionth, so what differs by less does not differ. */
const differs = (a: number | undefined, b: number | undefined): boolean =>
  a === undefined || b === undefined ? a !== b : Math.abs(a - b) > 1e-6 * Math.max(1, Math.abs(a));

/** What a verdict rests on in numbers, as it reads back from JSON. */
function figures({ limits, values }: { limits?: unknown; values?: unknown }): Numbers {
  return numbersIn(JSON.parse(JSON.stringify({ limits, values })));
}

function anyDiffers(then: Numbers, now: Numbers): boolean {
  const keys = new Set([...Object.keys(then), ...Object.keys(now)]);
  return [...keys].some((key) => differs(then[key], now[key]));
}

function noteAgain({ id, saved, text }: LedgerEntry, day: string): Again {
  const until = typeof saved.goodUntil === 'string' ? saved.goodUntil : undefined;
  const isOver = until !== undefined && until < day;
  const now = isOver ? `It was good until ${until}; check it before you say it.` : text;
  return { id, was: text, now, state: isOver ? 'expired' : 'same', correction: null };
}

/** What left in a round was spoken; a name that is no form of ours has none. */
const formFor = (name: string): FormName | undefined =>
  name === 'in a round' ? 'spoken' : formNames.find((form) => form === name);

const corrected = (day: string, text: string): string =>
  `A correction to what we said on ${day}: what we go by has changed since then. ${text}`;

function stateOf(entry: LedgerEntry, said: string, answer: Answer): AgainState {
  if (entry.saved.outcome !== answer.outcome) return 'verdict';
  if (said === answer.sentence) return 'same';
  return anyDiffers(figures(entry.saved), figures(answer)) ? 'figure' : 'wording';
}

const nowhere = (id: string, was: string, now: string): Again => ({
  ...{ id, was, now, state: 'not-judged', correction: null },
});

function one(entry: LedgerEntry, { topics, day, house }: AgainOptions): Again {
  const { id, saved } = entry;
  if (saved.topic === 'note') return noteAgain(entry, day);
  const said = typeof saved.sentence === 'string' ? saved.sentence : entry.text;
  const name = String(saved.topic);
  const topic = Object.hasOwn(topics, name) ? topics[name] : undefined;
  if (!topic) return nowhere(id, said, `There are no rules for “${name}” any more.`);
  try {
    const read = readSaved(saved);
    if (compareVersions(read.rules, topic.version) > 0) {
      const now = `It was judged by ${name} ${read.rules}, and there is none newer than ${topic.version} here.`;
      return nowhere(id, said, now);
    }
    const layer = house ? house.find((each) => each.topic === name) : houseLayerOf(read);
    const rules = layer ? withHouse(topic, layer) : topic;
    const asked = { ...read.asked, asOf: day };
    const answer = answerTraced(rules, asked);
    const state = stateOf(entry, said, answer);
    const form = formFor(entry.form);
    const text = form ? formOf(form, rules, asked) : answer.sentence;
    const turned = state === 'figure' || state === 'verdict';
    const correction = turned ? corrected(entry.day, text) : null;
    return { id, was: said, now: answer.sentence, state, correction };
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    return nowhere(id, said, problem.message);
  }
}

/**
 * What would be said today of everything that was said before, in the order of the ledger.
 *
 * @throws InputError for what is no ledger, no day or no rule sets by id
 */
export function again(ledger: Ledger, options: AgainOptions): readonly Again[] {
  refuseNoLedger('ledger', ledger);
  const wanted = '{ topics, day }, the rule sets by id and today';
  refuseUnlessParts('options', options, { topics: 'parts', day: 'text' }, wanted, ['house']);
  const { day, house = [] } = options;
  const isDay = /^\d{4}-\d{2}-\d{2}$/.test(day) && !Number.isNaN(Date.parse(day));
  refuseUnless(isDay, 'options.day', day, 'a day such as 2026-11-28');
  refuseUnless(Array.isArray(house), 'options.house', house, 'a list of house layers');
  return ledger.entries.map((entry) => one(entry, options));
}
