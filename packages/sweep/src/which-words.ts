import { refuseUnlessParts, type Topic } from '@tarebook/rules/engine';
import { show, type UnitSystem } from '@tarebook/rules/quantity';
import type { Need } from './needs';
import type { Which, WhichRow } from './which';
import { isSold, nameSaid, numberIn } from './wishes';

/** So many names a listener keeps in mind. */
const mostNames = 5;

function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

type Put = { readonly topic: Topic; readonly system: UnitSystem };

const amount = (value: number, unit: string, system: UnitSystem): string =>
  show({ lo: value, hi: value }, unit, system);

const nounOf = (topic: Topic, fact: string): string => {
  const declared = topic.facts[fact];
  return declared?.noun ?? declared?.label ?? fact;
};

/** “the door label’s payload is at least 1,180 lb” */
export function needSaid(
  topic: Topic,
  fact: string,
  { atLeast, atMost, unit }: Need,
  system: UnitSystem = 'us',
): string {
  const least = atLeast === undefined ? '' : ` is at least ${amount(atLeast, unit, system)}`;
  const most = atMost === undefined ? '' : ` is at most ${amount(atMost, unit, system)}`;
  return `${nounOf(topic, fact)}${least}${least !== '' && most !== '' ? ' and' : ''}${most}`;
}

const named = (rows: readonly WhichRow[]): string => {
  const names = rows.slice(0, mostNames).map(({ name, entry }) => nameSaid(name, entry));
  const more = rows.length - names.length;
  return more === 0 ? listed(names) : `${names.join(', ')} and ${more} more`;
};

/** What the first of them must be, fact by fact. */
function firstSaid({ topic, system }: Put, [first]: readonly WhichRow[]): string {
  const needs = Object.entries(first?.needs ?? {}).map(([fact, need]) =>
    needSaid(topic, fact, need, system),
  );
  if (!first || needs.length === 0) return '';
  return `For the ${nameSaid(first.name, first.entry)} it takes that ${listed(needs)}.`;
}

/**
 * Of those that nothing stops and that hang on figures nobody has read: the figures that do for all
 * of them, and the one that asks least. Where they do not hang on the same, of the first alone.
 */
function openSaid(put: Put, rows: readonly WhichRow[]): string {
  const { topic, system } = put;
  const [head] = rows;
  const facts = Object.keys(head?.needs ?? {}).toSorted();
  const leastOf = (row: WhichRow) => facts.map((fact) => row.needs[fact]?.atLeast);
  const all = rows.map((row) => ({ row, least: leastOf(row) }));
  const alike = all.every(
    ({ row, least }) =>
      Object.keys(row.needs).length === facts.length &&
      Object.values(row.needs).every(({ atMost }) => atMost === undefined) &&
      least.every((each) => each !== undefined),
  );
  if (!head || facts.length === 0 || rows.length < 2 || !alike) return firstSaid(put, rows);
  const sum = (least: readonly (number | undefined)[]) =>
    least.reduce<number>((total, each) => total + (each ?? 0), 0);
  const unsold = all.filter(({ row }) => !isSold(row.entry));
  const offered = unsold.length === 0 ? all : unsold;
  const [easiest] = offered.toSorted((a, b) => sum(a.least) - sum(b.least));
  const amounts = (least: readonly (number | undefined)[]): string =>
    listed(
      least.map((each, i) => amount(each ?? 0, head.needs[facts[i] ?? '']?.unit ?? '', system)),
    );
  const most = facts.map((_, i) => Math.max(...all.map(({ least }) => least[i] ?? 0)));
  const looked = listed(facts.map((fact) => nounOf(topic, fact)));
  return `Look up ${looked}: at ${amounts(most)} or more all ${rows.length} keep within; the ${easiest ? nameSaid(easiest.row.name, easiest.row.entry) : ''} asks least, ${amounts(easiest?.least ?? [])}.`;
}

/** A sentence fit to be said, and what stops the next one. */
export function whichSaid(
  topic: Topic,
  found: Which,
  system: UnitSystem = 'us',
): { sentence: string; next: string } {
  refuseUnlessParts('topic', topic, { outcomes: 'parts' }, 'the rule set that was asked');
  refuseUnlessParts('found', found, { rows: 'list', against: 'text' }, 'what `which` gives');
  const { rows, next, against } = found;
  const of = (level: 'ok' | 'care' | 'if' | 'unknown' | 'stop') =>
    rows.filter(({ outcome }) => outcome === topic.outcomes[level].id);
  const kind = against === 'trailers' ? ['trailer', 'trailers'] : ['vehicle', 'vehicles'];
  const going = [...of('ok'), ...of('care')];
  const [maybe, open] = [of('if'), of('unknown')];
  const parts: string[] = [];
  const whole = `Of ${rows.length} ${rows.length === 1 ? kind[0] : kind[1]}`;
  if (rows.length === 0) return { sentence: `The catalogue has no such ${kind[0]}.`, next: '' };
  if (going.length > 0)
    parts.push(
      `${whole}, ${going.length} ${going.length === 1 ? 'fits' : 'fit'}: ${named(going)}.`,
    );
  if (maybe.length > 0) {
    const head = parts.length === 0 ? `${whole}, ${maybe.length}` : `${maybe.length} more`;
    const fit = maybe.length === 1 ? 'fits' : 'fit';
    parts.push(`${head} ${fit} if what was not told holds: ${named(maybe)}.`);
  }
  if (open.length > 0) {
    const head = parts.length === 0 ? `${whole}, ${open.length}` : `${open.length} more`;
    parts.push(
      `${head} may fit, once more is known: ${named(open)}.`,
      openSaid({ topic, system }, open),
    );
  }
  if (parts.length === 0) parts.push(`${whole}, none fits.`);
  const label = next ? (topic.limits[next.limit.id]?.short ?? next.limit.label) : '';
  const { used, limit } = next?.limit ?? {};
  const over =
    used && limit ? amount(Math.max(0, Math.round(used.lo - limit.hi)), used.unit, system) : '';
  return {
    sentence: parts.filter((part) => part !== '').join(' '),
    next: next
      ? `The ${nameSaid(next.row.name, next.row.entry)} is stopped by ${label}: ${over} too much.`
      : '',
  };
}

/**
 * Of the trailers that may go, those in which so many people can sleep; '' where all of them or
 * nobody knows, and where one is asked about nobody.
 */
export function sleepsSaid(topic: Topic, { rows, against }: Which, people: number): string {
  if (against !== 'trailers' || people < 2) return '';
  const going = rows.filter(({ outcome }) => outcome !== topic.outcomes.stop.id);
  const berths = going.map(({ entry }) => numberIn(entry.cells.sleeps ?? ''));
  if (berths.every((each) => each === undefined)) return '';
  const enough = going.filter((_, at) => (berths[at] ?? 0) >= people);
  if (enough.length === going.length) return '';
  if (enough.length === 0) return `None of them sleeps ${people}.`;
  return `${enough.length} of these ${going.length} ${enough.length === 1 ? 'sleeps' : 'sleep'} ${people}: ${named(enough)}.`;
}
