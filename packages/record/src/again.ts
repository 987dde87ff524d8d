import {
  type Answer,
  answerNow,
  type HouseLayer,
  houseLayerOf,
  InputError,
  readSaved,
  type Topic,
  withHouse,
} from '@tarebook/rules/engine';
import type { Ledger, LedgerEntry } from './ledger';

/** How an answer that was given stands by what one would say today. */
export type AgainState = 'same' | 'wording' | 'figure' | 'verdict' | 'expired';

export type Again = {
  readonly id: string;
  /** What was said, and what would be said now. */
  readonly was: string;
  readonly now: string;
  readonly state: AgainState;
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
  return { id, was: text, now, state: isOver ? 'expired' : 'same' };
}

function stateOf(entry: LedgerEntry, said: string, answer: Answer): AgainState {
  if (entry.saved.outcome !== answer.outcome) return 'verdict';
  if (said === answer.sentence) return 'same';
  return anyDiffers(figures(entry.saved), figures(answer)) ? 'figure' : 'wording';
}

function one(entry: LedgerEntry, { topics, day, house }: AgainOptions): Again {
  const { id, saved } = entry;
  if (saved.topic === 'note') return noteAgain(entry, day);
  const said = typeof saved.sentence === 'string' ? saved.sentence : entry.text;
  const name = String(saved.topic);
  const topic = Object.hasOwn(topics, name) ? topics[name] : undefined;
  if (!topic)
    return { id, was: said, now: `There are no rules for “${name}” any more.`, state: 'verdict' };
  try {
    const read = readSaved(saved);
    const layer = house ? house.find((each) => each.topic === name) : houseLayerOf(read);
    const answer = answerNow(layer ? withHouse(topic, layer) : topic, { ...read.asked, asOf: day });
    return { id, was: said, now: answer.sentence, state: stateOf(entry, said, answer) };
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    return { id, was: said, now: problem.message, state: 'verdict' };
  }
}

/** What would be said today of everything that was said before, in the order of the ledger. */
export const again = (ledger: Ledger, options: AgainOptions): readonly Again[] =>
  ledger.entries.map((entry) => one(entry, options));
