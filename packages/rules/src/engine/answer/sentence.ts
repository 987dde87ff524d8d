import { show, showNumber } from '../../quantity';
import type { Level, Topic } from '../define/shapes';
import type { FindingAnswer, LimitAnswer, Missing } from './shapes';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function leftOf({ headroom, limit }: LimitAnswer): string {
  const left = { lo: Math.max(0, headroom.lo), hi: Math.max(0, headroom.hi) };
  if (left.hi === 0) return `nothing left of ${show(limit, limit.unit)}`;
  return `${show(left, headroom.unit)} left of ${show(limit, limit.unit)}`;
}

function overBy({ headroom }: LimitAnswer): string {
  return `over by ${show({ lo: -headroom.hi, hi: -headroom.lo }, headroom.unit)}`;
}

function because(
  topic: Topic,
  level: Level,
  limits: readonly LimitAnswer[],
  findings: readonly FindingAnswer[],
  binding: LimitAnswer | null,
  missing: readonly Missing[],
): string {
  const short = (limit: LimitAnswer) => topic.limits[limit.id]?.short ?? limit.label;
  if (level === 'stop') {
    const over = limits.filter((limit) => limit.state === 'stop');
    const [first, ...rest] = over.toSorted((a, b) => b.roomUsed.hi - a.roomUsed.hi);
    const finding = findings.find((each) => each.level === 'stop');
    if (!first) return finding?.says ?? '';
    const more =
      rest.length === 0
        ? ''
        : `, and so ${rest.length === 1 ? 'is' : 'are'} ${listed(rest.map(short))}`;
    return `${capital(short(first))} is ${overBy(first)}${more}.`;
  }
  if (level === 'unknown') {
    const asked = missing.slice(0, 2).map((each) => each.label.toLowerCase());
    if (asked.length === 0) return '';
    return `First find out: ${listed(asked)}.`;
  }
  return binding ? `${capital(short(binding))} runs out first: ${leftOf(binding)}.` : '';
}

export function listed(items: readonly string[]): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** One or two short sentences, fit to be said aloud. */
export function sentenceOf(
  topic: Topic,
  level: Level,
  limits: readonly LimitAnswer[],
  findings: readonly FindingAnswer[],
  binding: LimitAnswer | null,
  missing: readonly Missing[],
): string {
  const reason = because(topic, level, limits, findings, binding, missing);
  return [topic.outcomes[level].sentence, reason].filter((each) => each !== '').join(' ');
}

const smallNumbers = [
  'none',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
  'twenty',
];
const inLetters = (n: number): string => smallNumbers[n] ?? showNumber(n, 0);

/** On how many limits the verdict rests, and which were not asked. */
export function restsOn(limits: readonly LimitAnswer[]): string {
  const silent = limits.filter((limit) => limit.state === 'not-asked');
  const asked = limits.length - silent.length;
  const head = `This rests on ${inLetters(asked)} of the ${inLetters(limits.length)} limits.`;
  if (silent.length === 0) return head;
  return `${head} Not asked, for want of a rating: ${listed(silent.map((l) => l.label.toLowerCase()))}.`;
}
