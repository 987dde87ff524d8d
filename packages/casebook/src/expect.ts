import { type Answer, declaredUnit, nearest, type Topic } from '@tarebook/rules/engine';
import {
  convert,
  findUnit,
  type Interval,
  readQuantity,
  sameDimension,
  show,
  type Unit,
  unitOf,
  wasMisread,
} from '@tarebook/rules/quantity';
import type { Note } from './front';
import type { CaseDocument, Expectation } from './shapes';

const states = ['ok', 'care', 'if', 'stop', 'unknown', 'not asked'] as const;

/** Everything an Expect table may name, with the words it may say; numbers have none. */
export function namesOf(topic: Topic): ReadonlyMap<string, readonly string[] | undefined> {
  const names = new Map<string, readonly string[] | undefined>();
  names.set(
    'verdict',
    Object.values(topic.outcomes).map((outcome) => outcome.words),
  );
  names.set('limit.binding', [...Object.keys(topic.limits), 'none']);
  for (const id of Object.keys(topic.limits)) names.set(`limit.${id}`, states);
  for (const id of Object.keys(topic.findings)) names.set(`finding.${id}`, states);
  for (const [id, { unit }] of Object.entries(topic.formulas)) {
    if (unit !== 'yes-no') names.set(id, undefined);
  }
  for (const [id, { results }] of Object.entries(topic.decisions ?? {})) {
    names.set(id, [...Object.keys(results), 'unknown']);
  }
  for (const [id, { items, amounts }] of Object.entries(topic.selections ?? {})) {
    for (const item of Object.keys(items)) names.set(`${id}.${item}`, ['yes', 'no', 'unknown']);
    for (const amount of Object.keys(amounts)) names.set(`${id}.${amount}`, undefined);
  }
  return names;
}

const spaced = (text: string): string => text.trim().toLowerCase().replace(/-/g, ' ');

const unitFor = (topic: Topic, name: string): Unit => unitOf(declaredUnit(topic, name) || '1');

/** The ends a number must have, in its declared unit, and how far off they may be. */
type Wanted = { readonly lo: number; readonly hi: number; readonly within: number };

function wantedOf(text: string, unit: Unit): Wanted | undefined {
  const read = readQuantity(text);
  if (wasMisread(read)) return undefined;
  const written = read.unit ?? findUnit('1');
  if (!written || !sameDimension(written.dimension, unit.dimension)) return undefined;
  const into = (value: number) => convert(value, written, unit);
  const origin = into(0);
  const within = Math.abs(into(read.within ?? read.step / 2) - origin);
  return { lo: into(read.from), hi: into(read.to), within };
}

/** Notes every expectation that names nothing, or says what its name can never be. */
export function checkExpectations(topic: Topic, rows: readonly Expectation[], note: Note): void {
  const names = namesOf(topic);
  const seen = new Map<string, number>();
  for (const { name, text, place, valueSpan } of rows) {
    const first = seen.get(name);
    if (first !== undefined) note(place, { code: 'twice', name, line: first });
    else seen.set(name, place.line);
    if (!names.has(name)) {
      const near = nearest(name, names.keys());
      const what = 'a result, limit or finding';
      note(place, { code: 'unknown-name', name, what, topic: topic.id, ...(near && { near }) });
      continue;
    }
    const words = names.get(name);
    if (words && !words.some((word) => spaced(word) === spaced(text))) {
      const near = nearest(text, words);
      note(valueSpan.start, {
        code: 'expect-word',
        name,
        found: text,
        wanted: words.join(', '),
        ...(near && { near }),
      });
    }
    if (!words && spaced(text) !== 'unknown' && !wantedOf(text, unitFor(topic, name))) {
      const { symbol } = unitFor(topic, name);
      const unit =
        symbol === '1'
          ? 'a number or percentage'
          : `a number with its unit, such as “100 ${symbol}”`;
      note(valueSpan.start, {
        code: 'expect-value',
        name,
        found: text,
        wanted: `${unit}, or unknown`,
      });
    }
  }
}

export type Difference = {
  readonly name: string;
  readonly expected: string;
  readonly found: string;
};

function stateOf(answer: Answer, name: string): string | undefined {
  const [kind, id] = [name.slice(0, name.indexOf('.')), name.slice(name.indexOf('.') + 1)];
  if (kind === 'limit') return answer.limits.find((limit) => limit.id === id)?.state;
  if (kind === 'finding') return answer.findings.find((finding) => finding.id === id)?.level;
  return undefined;
}

function wordOf(answer: Answer, name: string): string | undefined {
  if (name === 'verdict') return answer.words;
  if (name === 'limit.binding') return answer.binding ?? 'none';
  const choice = answer.choices[name];
  if (choice) return choice.among.length === 1 ? choice.among[0] : 'unknown';
  const list = answer.selections.find(({ id }) => name.startsWith(`${id}.`));
  const item = list?.items.find(({ id }) => `${list.id}.${id}` === name);
  if (item) return item.chosen;
  return stateOf(answer, name);
}

function holds(found: Interval, text: string, unit: Unit): boolean {
  if (spaced(text) === 'unknown') return !Number.isFinite(found.lo) || !Number.isFinite(found.hi);
  const wanted = wantedOf(text, unit);
  if (!wanted) return false;
  const slack = wanted.within + 1e-6;
  return Math.abs(found.lo - wanted.lo) <= slack && Math.abs(found.hi - wanted.hi) <= slack;
}

/** What came out otherwise than the document expects; nothing, when the case holds. */
export function compareWithExpect(
  doc: Pick<CaseDocument, 'expectations'>,
  answer: Answer,
): readonly Difference[] {
  return doc.expectations.flatMap(({ name, text }) => {
    const word = wordOf(answer, name);
    if (word !== undefined) {
      return spaced(word) === spaced(text)
        ? []
        : [{ name, expected: text, found: word.replace(/-/g, ' ') }];
    }
    const value = answer.values[name];
    if (!value) return [{ name, expected: text, found: 'nothing' }];
    if (holds(value, text, unitOf(value.unit || '1'))) return [];
    return [{ name, expected: text, found: show(value, value.unit) }];
  });
}
