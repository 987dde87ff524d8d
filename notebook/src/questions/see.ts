import type { ReadMessage } from '@tarebook/record';
import type { Asked } from '../state/questions';
import { aboutOf } from './known';

/** How often one matter was asked about, in all and by month. */
export type SeenTopic = {
  /** A rule set’s id, `note/<name>`, or `none`. */
  readonly about: string;
  readonly count: number;
  readonly months: Readonly<Record<string, number>>;
};

/** A question that is open, and what it waits for. */
export type Waiting = { readonly id: string; readonly question: string };

export type Seen = {
  /** Every month in which something was asked, as 2026-11. */
  readonly months: readonly string[];
  /** What was asked most, first. */
  readonly topics: readonly SeenTopic[];
  /** Questions near to which nothing is filed. */
  readonly unfiled: readonly Waiting[];
  /** By what they wait for, the most first. */
  readonly waiting: readonly { readonly what: string; readonly questions: readonly Waiting[] }[];
};

/** “Nov 27, 2026”, “11/27/2026, 9:14 AM”, “2026-11-27”; a day without a year is of the year it was taken in. */
function monthOf({ askedOn, came }: Asked): string {
  const taken = new Date(came);
  const iso = /^(\d{4}-\d{2})-\d{2}/.exec(askedOn)?.[1];
  if (iso !== undefined) return iso;
  const year = /\b(?:19|20)\d{2}\b/.test(askedOn) ? '' : `, ${taken.getFullYear()}`;
  const hasDay = /[A-Za-z]{3,} \d|\d{1,2}\/\d{1,2}/.test(askedOn);
  const told = hasDay ? new Date(`${askedOn.replace(/,? (?:at )?\d{1,2}:.*$/, '')}${year}`) : taken;
  const day = Number.isNaN(told.getTime()) ? taken : told;
  return `${day.getFullYear()}-${String(day.getMonth() + 1).padStart(2, '0')}`;
}

function groups<T>(all: readonly T[], key: (each: T) => string): ReadonlyMap<string, readonly T[]> {
  const found = new Map<string, T[]>();
  for (const each of all) {
    const own = found.get(key(each)) ?? [];
    own.push(each);
    found.set(key(each), own);
  }
  return found;
}

/** What all messages together say: asked most, without a case, and what the open ones wait for. */
export function seenOf(
  messages: readonly Asked[],
  readings: ReadonlyMap<string, ReadMessage>,
): Seen {
  const all = messages.flatMap((asked) => {
    const month = monthOf(asked);
    return (readings.get(asked.id)?.parts ?? []).map((part) => ({
      ...{ asked, part, month, about: aboutOf(asked, part) },
    }));
  });
  const topics = [...groups(all, ({ about }) => about)].map(([about, some]): SeenTopic => {
    const months = [...groups(some, ({ month }) => month)].map(([month, of]) => [month, of.length]);
    return { about, count: some.length, months: Object.fromEntries(months) };
  });
  const waits = all
    .filter(({ asked }) => asked.done === 0)
    .flatMap(({ asked, part, about }) => {
      const one = { id: asked.id, question: part.text };
      if (about === 'none') return [{ ...one, what: 'a note, or words of your own' }];
      const [ask] = about === part.topic ? part.ask : [];
      return [{ ...one, what: ask === undefined ? 'nothing: its answer is ready' : ask }];
    });
  const waiting = [...groups(waits, ({ what }) => what)].map(([what, some]) => ({
    what,
    questions: some.map(({ id, question }) => ({ id, question })),
  }));
  return {
    months: [...new Set(all.map(({ month }) => month))].toSorted(),
    topics: topics.toSorted((a, b) => b.count - a.count || a.about.localeCompare(b.about)),
    unfiled: all
      .filter(({ part, about }) => part.answeredBy === null && !about.startsWith('note/'))
      .map(({ asked, part }) => ({ id: asked.id, question: part.text })),
    waiting: waiting.toSorted(
      (a, b) => b.questions.length - a.questions.length || a.what.localeCompare(b.what),
    ),
  };
}
