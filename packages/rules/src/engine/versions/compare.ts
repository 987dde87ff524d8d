import { refuseOnlyJudging, refuseTopic } from '../check/asked';
import type { Source, Topic } from '../define/shapes';
import { isRecord, same } from './data';

/** One field of an entry that is not what it was; absent on the side that has no such field. */
export type FieldChange = {
  /** `is`, `values`, `stop.when` */
  readonly field: string;
  readonly was?: unknown;
  readonly now?: unknown;
};

/** One entry of a rule set that is new, gone, or not what it was. */
export type TopicChange = {
  /** `facts`, `parameters`, `formulas`, `limits`, `findings`, `sources`, … or `topic` for its head. */
  readonly part: string;
  readonly id: string;
  readonly label: string;
  readonly kind: 'added' | 'removed' | 'changed';
  /** Of a changed entry, what changed; of one that is new or gone, all it says. */
  readonly fields: readonly FieldChange[];
};

/** Fields that are said and shown, and reckoned with nowhere. */
const forReading = new Set([
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
    'sentence',
    'plain',
    'scale',
  ],
  ...['wrong', 'because', 'do', 'proviso', 'otherwise', 'open', 'silent.says', 'source'].flatMap(
    (field) => [field, ...['stop', 'unknown', 'if', 'care', 'open'].map((at) => `${at}.${field}`)],
  ),
  ...['exact', 'instead', 'near'],
]);

/** Whether a change is one of words alone, which no verdict can rest on. */
export const isWording = ({ kind, part, fields }: TopicChange): boolean =>
  part === 'sources' ||
  part === 'topic' ||
  (kind === 'changed' && fields.every(({ field }) => forReading.has(field)));

type Entries = ReadonlyMap<string, unknown>;

/** Fields that are read as one thing and not taken apart. */
const whole = new Set(['source', 'when', 'values', 'rows', 'range']);

/** The fields of an entry by dotted name. */
function fieldsOf(entry: unknown): ReadonlyMap<string, unknown> {
  const fields = new Map<string, unknown>();
  const walk = (value: unknown, path: string): void => {
    const last = path.slice(path.lastIndexOf('.') + 1);
    if (!isRecord(value) || whole.has(last)) {
      fields.set(path, value);
      return;
    }
    for (const [key, inner] of Object.entries(value)) {
      walk(inner, path === '' ? key : `${path}.${key}`);
    }
  };
  walk(entry, '');
  return fields;
}

const labelOf = (entry: unknown, id: string): string => {
  if (isRecord(entry)) {
    for (const key of ['label', 'words', 'says']) {
      const text = entry[key];
      if (typeof text === 'string') return text;
    }
  }
  return id;
};

/** The entries of a list by what tells them apart. */
function keyed(list: readonly unknown[]): Entries {
  return new Map(
    list.map((entry, i) => {
      if (typeof entry === 'string') return [entry, entry];
      const key = isRecord(entry) ? (entry.id ?? entry.when ?? entry.says) : undefined;
      return [typeof key === 'string' ? key : `#${i + 1}`, entry];
    }),
  );
}

const entriesOf = (value: unknown): Entries =>
  Array.isArray(value)
    ? keyed(value)
    : isRecord(value)
      ? new Map(Object.entries(value))
      : new Map();

const apart = ({ was, now }: { was: unknown; now: unknown }, field: string): FieldChange => ({
  field,
  ...(was !== undefined && { was }),
  ...(now !== undefined && { now }),
});

function changedFields(was: unknown, now: unknown): readonly FieldChange[] {
  const [before, after] = [fieldsOf(was), fieldsOf(now)];
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((field) => {
    const pair = { was: before.get(field), now: after.get(field) };
    return same(pair.was, pair.now) ? [] : [apart(pair, field)];
  });
}

function compareEntries(part: string, was: Entries, now: Entries): readonly TopicChange[] {
  const changes: TopicChange[] = [];
  for (const id of new Set([...was.keys(), ...now.keys()])) {
    const [before, after] = [was.get(id), now.get(id)];
    const fields = changedFields(before, after);
    if (fields.length === 0) continue;
    const kind = before === undefined ? 'added' : after === undefined ? 'removed' : 'changed';
    changes.push({ part, id, label: labelOf(after ?? before, id), kind, fields });
  }
  return [...changes, ...reordered(part, was, now)];
}

/** Of two limits equally full the first binds, and headline results are shown in order. */
function reordered(part: string, was: Entries, now: Entries): readonly TopicChange[] {
  if (part !== 'limits' && part !== 'findings' && part !== 'headline') return [];
  const both = [...was.keys()].filter((id) => now.has(id));
  const after = [...now.keys()].filter((id) => was.has(id));
  if (same(both, after)) return [];
  const fields = [{ field: 'order', was: both, now: after }];
  return [{ part, id: 'order', label: 'Order', kind: 'changed', fields }];
}

/** A source as one cites it, its class first; `brief` leaves its note out. */
export const citation = ({ class: kind, cite, section, note }: Source, brief = false): string =>
  `${kind}: ${cite}${section ? `, ${section}` : ''}${note && !brief ? ` (${note})` : ''}`;

const isSource = (value: unknown): value is Source =>
  isRecord(value) && typeof value.class === 'string' && typeof value.cite === 'string';

/** Everything a topic cites, wherever it stands, each once. */
export function sourcesOf(topic: Topic): Entries {
  const found = new Map<string, unknown>();
  const walk = (value: unknown): void => {
    if (isSource(value)) found.set(citation(value), value);
    else if (Array.isArray(value)) value.forEach(walk);
    else if (isRecord(value)) Object.values(value).forEach(walk);
  };
  walk(topic);
  return found;
}

/** What a reader of a rule set sees of its head. */
const head = ({ title, question }: Topic): Entries => new Map(Object.entries({ title, question }));

/**
 * Every entry in which two versions of a rule set differ, in the order of the parts: head, facts,
 * parameters, tables, formulas, limits, findings, outcomes, and what else the topic holds; sources
 * last. The version itself is no difference.
 */
export function compareTopics(was: Topic, now: Topic): readonly TopicChange[] {
  for (const each of [was, now]) {
    refuseTopic(each);
    refuseOnlyJudging(each);
  }
  const [before, after] = [new Map(Object.entries(was)), new Map(Object.entries(now))];
  const parts = [...new Set([...after.keys(), ...before.keys()])].filter(
    (part) => !['id', 'version', 'title', 'question'].includes(part),
  );
  return [
    ...compareEntries('topic', head(was), head(now)),
    ...parts.flatMap((part) =>
      compareEntries(part, entriesOf(before.get(part)), entriesOf(after.get(part))),
    ),
    ...compareEntries('sources', sourcesOf(was), sourcesOf(now)),
  ];
}
