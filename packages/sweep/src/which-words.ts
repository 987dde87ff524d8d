import type { Topic } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import type { Need } from './needs';
import type { Which, WhichRow } from './which';

/** So many names a listener keeps in mind. */
const mostNames = 5;

function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

const amount = (value: number, unit: string): string => show({ lo: value, hi: value }, unit);

/** “the payload on the door label at least 1,180 lb” */
export function needSaid(topic: Topic, fact: string, { atLeast, atMost, unit }: Need): string {
  const declared = topic.facts[fact];
  const name = declared?.noun ?? declared?.label ?? fact;
  const least = atLeast === undefined ? '' : ` is at least ${amount(atLeast, unit)}`;
  const most = atMost === undefined ? '' : ` is at most ${amount(atMost, unit)}`;
  return `${name}${least}${least !== '' && most !== '' ? ' and' : ''}${most}`;
}

const named = (rows: readonly WhichRow[]): string => {
  const names = rows.slice(0, mostNames).map(({ name }) => name);
  const more = rows.length - names.length;
  return more === 0 ? listed(names) : `${names.join(', ')} and ${more} more`;
};

/** Of those that nothing stops and that hang on figures nobody has read, the one that asks least. */
function openSaid(topic: Topic, rows: readonly WhichRow[]): string {
  const [first] = rows;
  const needs = Object.entries(first?.needs ?? {}).map(([fact, need]) =>
    needSaid(topic, fact, need),
  );
  if (!first || needs.length === 0) return '';
  return `For the ${first.name} it takes that ${listed(needs)}.`;
}

/** A sentence fit to be said, and what stops the next one. */
export function whichSaid(topic: Topic, found: Which): { sentence: string; next: string } {
  const { rows, next, against } = found;
  const of = (level: 'ok' | 'care' | 'if' | 'unknown' | 'stop') =>
    rows.filter(({ outcome }) => outcome === topic.outcomes[level].id);
  const kind = against === 'trailers' ? ['trailer', 'trailers'] : ['vehicle', 'vehicles'];
  const going = [...of('ok'), ...of('care')];
  const [maybe, open] = [of('if'), of('unknown')];
  const parts: string[] = [];
  const whole = `Of ${rows.length} ${rows.length === 1 ? kind[0] : kind[1]}`;
  if (rows.length === 0) return { sentence: `The catalogue has no such ${kind[0]}.`, next: '' };
  if (going.length > 0) parts.push(`${whole}, ${going.length} fit: ${named(going)}.`);
  if (maybe.length > 0) {
    const head = parts.length === 0 ? `${whole}, ${maybe.length}` : `${maybe.length} more`;
    parts.push(`${head} fit if what was not told holds: ${named(maybe)}.`);
  }
  if (open.length > 0) {
    const head = parts.length === 0 ? `${whole}, ${open.length}` : `${open.length} more`;
    parts.push(`${head} may fit, once more is known: ${named(open)}.`, openSaid(topic, open));
  }
  if (parts.length === 0) parts.push(`${whole}, none fits.`);
  const label = next ? (topic.limits[next.limit.id]?.short ?? next.limit.label) : '';
  const { used, limit } = next?.limit ?? {};
  const over = used && limit ? amount(Math.max(0, Math.round(used.lo - limit.hi)), used.unit) : '';
  return {
    sentence: parts.filter((part) => part !== '').join(' '),
    next: next ? `The ${next.row.name} is stopped by ${label}: ${over} too much.` : '',
  };
}
