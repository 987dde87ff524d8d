import { numbersOf } from '../define/order';
import type { Topic } from '../define/shapes';
import { compareTopics, type FieldChange, isWording, type TopicChange } from './compare';
import { isRecord, type Plain, same } from './data';

/** What of a version must rise, the least first. */
const rises = ['none', 'patch', 'minor', 'major'] as const;
export type Rise = (typeof rises)[number];

/** Parts that are said, shown, searched and proposed; no verdict rests on them. */
const beside = new Set([
  ...['id', 'version', 'title', 'question', 'topic', 'sources', 'headline', 'tells', 'cautions'],
  ...['called', 'askings', 'everybody', 'how', 'changes', 'renamed', 'apart'],
]);

/** Parts in which something new judges by itself; elsewhere something new waits to be used. */
const judging = new Set(['limits', 'findings', 'decisions', 'outcomes']);

/** Keys of an entry that hold words, or what is looked at and never reckoned with. */
const words = new Set([
  ...['within', 'askedFirst'],
  ...[
    'label',
    'noun',
    'plural',
    'exceeded',
    'supply',
    'short',
    'ask',
    'where',
    'means',
    'says',
    'words',
  ],
  ...['sentence', 'wrong', 'because', 'do', 'near', 'proviso', 'otherwise', 'open', 'see'],
  ...['source', 'saidOpen'],
]);

function withoutWords(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutWords);
  if (!isRecord(value)) return value;
  const kept = Object.entries(value).filter(([key]) => !words.has(key));
  return Object.fromEntries(kept.map(([key, inner]) => [key, withoutWords(inner)]));
}

const isOfWords = ({ field, was, now }: FieldChange): boolean =>
  words.has(field.slice(field.lastIndexOf('.') + 1)) ||
  field.startsWith('see.') ||
  same(withoutWords(was), withoutWords(now));

function riseOf(change: TopicChange): Rise {
  const { part, kind, fields } = change;
  if (isWording(change) || beside.has(part)) return 'patch';
  if (kind === 'changed' && fields.every(isOfWords)) return 'patch';
  return kind === 'added' && !judging.has(part) ? 'minor' : 'major';
}

/**
 * What must rise at least where a rule set has changed so: words alone raise the last number,
 * something added the middle one, and what a verdict may change by the first.
 */
export const riseFor = (changes: readonly TopicChange[]): Rise =>
  rises[Math.max(0, ...changes.map((each) => rises.indexOf(riseOf(each))))] ?? 'none';

/** What has risen from one version to a later one. */
export function risen(was: string, now: string): Rise {
  const [before, after] = [numbersOf(was) ?? [], numbersOf(now) ?? []];
  const first = before.findIndex((number, i) => number !== after[i]);
  return first === 0 ? 'major' : first === 1 ? 'minor' : first === 2 ? 'patch' : 'none';
}

/** Whether the version of a rule set has risen as far as its changes since an older one ask for. */
export const hasRisenEnough = (was: Topic, now: Topic): boolean =>
  rises.indexOf(risen(was.version, now.version)) >= rises.indexOf(riseFor(compareTopics(was, now)));

/** A rule set without its words: everything that a verdict of it rests on. */
export const reckonedOf = (topic: Topic): Plain =>
  Object.fromEntries(
    Object.entries(topic).flatMap(([part, value]) =>
      beside.has(part) ? [] : [[part, withoutWords(value)]],
    ),
  );
