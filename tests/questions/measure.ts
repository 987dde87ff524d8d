import { readdirSync, readFileSync } from 'node:fs';
import { askedIn, type ReadMessage, reader } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { readFacts, type Topic } from '@tarebook/rules/engine';

/**
 * Messages as people write them, with what a person read in each: of each question its topic or none
 * and the facts it tells, what is urgent, what repeats what, and what is personal.
 */
type LabeledPart = {
  readonly topic: string | null;
  /** Another topic that would be as right. */
  readonly orTopic?: string | null | readonly (string | null)[];
  readonly facts: Readonly<Record<string, string>>;
  /** What may be read in it too, and need not be: neither right nor wrong. */
  readonly mayFacts?: Readonly<Record<string, string>>;
};
export type Labeled = {
  readonly id: string;
  readonly channel: string;
  readonly text: string;
  readonly parts: readonly LabeledPart[];
  readonly urgent: string | null;
  readonly sameAs: string | null;
  readonly personal: readonly string[];
};

/** So many of so many, with the interval in which the share lies at 95 % (Wilson 1927). */
export type Share = {
  readonly of: number;
  readonly hits: number;
  readonly share: number;
  readonly lo: number;
  readonly hi: number;
};

export function shareOf(hits: number, of: number): Share {
  const z = 1.96;
  const share = of === 0 ? 1 : hits / of;
  const middle = (share + (z * z) / (2 * of)) / (1 + (z * z) / of);
  const half =
    (z * Math.sqrt((share * (1 - share)) / of + (z * z) / (4 * of * of))) / (1 + (z * z) / of);
  return {
    of,
    hits,
    share,
    lo: of === 0 ? 0 : Math.max(0, middle - half),
    hi: of === 0 ? 1 : Math.min(1, middle + half),
  };
}

/**
 * The open set, on which the reader is made. Its messages m001 to b232 are by two writers; a third of
 * them was held out until the reader had been measured on it (of 22 that are urgent it found 17, of 28
 * without a topic it forced one on 9) and has been open since then. e001 to e120 are by a third, and
 * were measured once before anything was made to suit them: of 45 urgent ones 13 were found by the
 * signs of then, and 40 by those that were written without them.
 */
const open = new URL('open.json', import.meta.url);

/** The labeled messages of a file; without one those of the open set. */
export function labeled(file: string | URL = open): readonly Labeled[] {
  return JSON.parse(readFileSync(file, 'utf8'));
}

type Facts = Readonly<Record<string, string>>;
type Part = { readonly topic: string | null; readonly facts: Facts };

/** A tire’s code has two digits for its year; whoever labels writes all four. */
const asCoded = (facts: Facts): Facts =>
  Object.fromEntries(
    Object.entries(facts).map(([fact, value]) => [
      fact,
      /\.codeYear$/.test(fact) ? `${Number(value) % 100}` : value,
    ]),
  );

/** A fact with its value in one unit, so that 5 ½ feet are 66 inches. */
function saidIn(topicId: string | null, told: Facts): readonly string[] {
  const topic = Object.values(topics).find(({ id }) => id === topicId);
  const facts = asCoded(told);
  const inputs = topic && readFacts(topic, facts).inputs;
  return Object.entries(facts).map(([fact, value]) => {
    const input = JSON.stringify(inputs?.get(fact) ?? value);
    return `${fact} ${input.replace(/\d+\.\d+/g, (digits) => Number(digits).toPrecision(5))}`;
  });
}
const factsOf = (parts: readonly Part[]) =>
  parts.flatMap(({ topic, facts }) => saidIn(topic, facts));

/** The first writer labeled figures with a unit alone, so of those messages nothing else is counted. */
function heardOf({ id }: Labeled, { parts }: ReadMessage): readonly string[] {
  if (!id.startsWith('m')) return factsOf(parts);
  return parts.flatMap(({ topic, facts }) => {
    const declared = Object.values(topics).find((each) => each.id === topic)?.facts ?? {};
    const kinds = new Map(Object.entries(declared));
    const isFigure = (fact: string): boolean => {
      const of = kinds.get(fact);
      return of?.kind === 'quantity' && of.unit !== '';
    };
    return saidIn(
      topic,
      Object.fromEntries(Object.entries(facts).filter(([fact]) => isFigure(fact))),
    );
  });
}
const topicsOf = (parts: readonly Part[]) => parts.flatMap(({ topic }) => topic ?? []);

/** Whether somebody is called Mrs. or not, the same name is found. */
const withoutTitles = (names: readonly string[]): readonly string[] =>
  names.map((each) => each.replace(/^(?:Mr|Mrs|Ms|Miss|Dr|Sister|Brother|Pastor|Father)\.? /, ''));

/** How many of the one stand among the other, each once. */
function common(some: readonly string[], others: readonly string[]): number {
  return some.length - without(some, others).length;
}

/** What is left of the one when the other is taken out, each once. */
function without(some: readonly string[], others: readonly string[]): readonly string[] {
  const taken = [...others];
  return some.filter((each) => {
    const at = taken.indexOf(each);
    if (at >= 0) taken.splice(at, 1);
    return at < 0;
  });
}

/** Facts that were heard, without those that need not be told. */
function counted(label: Labeled, found: ReadMessage): readonly string[] {
  const told = factsOf(label.parts);
  // What may be read in a part without a topic is of the topic that it was read as.
  const readAs = found.parts.find(({ topic }) => topic !== null)?.topic ?? null;
  const may = label.parts.flatMap(({ topic, mayFacts = {} }) => saidIn(topic ?? readAs, mayFacts));
  const heard = heardOf(label, found);
  const beyond = without(heard, told);
  return without(heard, without(beyond, without(beyond, may)));
}

const orNone = ({ orTopic }: LabeledPart): readonly (string | null)[] =>
  [orTopic ?? []].flat().map((each) => (each === 'none' ? null : each));

/** Of the topics of a message, those that were found; another that would be as right counts. */
function topicsFound(label: Labeled, found: ReadMessage): number {
  const seen = topicsOf(label.parts);
  const others = without(topicsOf(found.parts), seen);
  const open = label.parts.filter(
    ({ topic }) => topic !== null && !topicsOf(found.parts).includes(topic),
  );
  const spare = [...others];
  const asRight = open.filter((part) => {
    const at = spare.findIndex((each) => orNone(part).includes(each));
    if (at >= 0) spare.splice(at, 1);
    return at >= 0 || (others.length === 0 && orNone(part).includes(null));
  });
  return common(seen, topicsOf(found.parts)) + asRight.length;
}

/** Whether a message without a topic got one that nobody would take as right either. */
const isForced = ({ parts }: Labeled, found: ReadMessage): boolean =>
  without(
    topicsOf(found.parts),
    parts.flatMap(orNone).flatMap((each) => each ?? []),
  ).length > 0;

export type Measured = {
  readonly messages: number;
  /** Of the messages without a topic, those that got one: it was forced on them. */
  readonly forced: Share;
  /** Of the topics that a person saw, those that were found. */
  readonly topic: Share;
  /** Of the messages, those that were cut into as many questions. */
  readonly split: Share;
  readonly urgent: Share;
  readonly falseAlarms: Share;
  readonly factPrecision: Share;
  readonly factRecall: Share;
  readonly repeatPrecision: Share;
  readonly repeatRecall: Share;
  readonly personal: Share;
  readonly masksTooMuch: number;
  /** What came out otherwise than the label, a line each. */
  readonly confused: readonly string[];
};

const cases = new URL('../../cases/', import.meta.url);

/** The questions that the filed cases and notes of this repository were written for. */
export const before = [...Object.keys(filedTopics()), 'note'].flatMap((topic) =>
  readdirSync(new URL(topic, cases)).map((name) => {
    const text = readFileSync(new URL(`${topic}/${name}`, cases), 'utf8');
    return {
      topic,
      text: askedIn({ title: name.replace(/\.md$/, '').replaceAll('-', ' '), text }),
    };
  }),
);

function filedTopics(): Readonly<Record<string, Topic>> {
  return Object.fromEntries(Object.values(topics).map((topic) => [topic.id, topic]));
}

/** Reads a set in its order, each writer’s by itself, and counts what came out; a set that is held out is told by its file. */
export function measure(file?: string): Measured {
  const set = labeled(file);
  // A writer knew what they had asked before, and not what others had.
  const readers = new Map<string, ReturnType<typeof reader>>();
  const readerOf = (writer: string) => {
    const read = readers.get(writer) ?? reader({ topics, before });
    readers.set(writer, read);
    return read;
  };
  const found = new Map(
    set.map((label) => {
      const read = readerOf(label.id.charAt(0));
      return [label.id, read({ ...label, askedOn: '2026-11-01', asker: '' })] as const;
    }),
  );
  const pairs = set.flatMap((label): readonly (readonly [Labeled, ReadMessage])[] => {
    const heard = found.get(label.id);
    return heard ? [[label, heard]] : [];
  });
  const sum = (of: (label: Labeled, found: ReadMessage) => number): number =>
    pairs.reduce((total, [label, found]) => total + of(label, found), 0);
  const yes = (is: boolean): number => (is ? 1 : 0);
  const none = ({ parts }: Labeled): boolean => topicsOf(parts).length === 0;
  const confused = pairs.flatMap(([label, found]) => {
    const lines: string[] = [];
    const [was, is] = [topicsOf(label.parts), topicsOf(found.parts)];
    if (topicsFound(label, found) < was.length || is.length > was.length)
      lines.push(`topics ${was} read as ${is}`);
    const [told, heard] = [factsOf(label.parts), counted(label, found)];
    const missed = told.filter((each) => !heard.includes(each));
    const wrong = heard.filter((each) => !told.includes(each));
    if (missed.length > 0) lines.push(`missed ${missed}`);
    if (wrong.length > 0) lines.push(`wrongly ${wrong}`);
    if (label.urgent !== found.urgent) lines.push(`urgent ${label.urgent} read as ${found.urgent}`);
    if (label.sameAs !== found.sameAs) lines.push(`same ${label.sameAs} read as ${found.sameAs}`);
    if (label.parts.length !== found.parts.length)
      lines.push(`${label.parts.length} parts read as ${found.parts.length}`);
    if (String(label.personal) !== String(found.personal))
      lines.push(`personal ${label.personal} read as ${found.personal}`);
    return lines.map((line) => `${label.id} ${line}: ${label.text.slice(0, 90)}`);
  });
  return {
    messages: set.length,
    forced: shareOf(
      sum((l, f) => yes(none(l) && isForced(l, f))),
      sum((l) => yes(none(l))),
    ),
    topic: shareOf(
      sum(topicsFound),
      sum((l) => topicsOf(l.parts).length),
    ),
    split: shareOf(
      sum((l, f) => yes(l.parts.length === f.parts.length)),
      set.length,
    ),
    urgent: shareOf(
      sum((l, f) => yes(l.urgent !== null && f.urgent !== null)),
      sum((l) => yes(l.urgent !== null)),
    ),
    falseAlarms: shareOf(
      sum((l, f) => yes(l.urgent === null && f.urgent !== null)),
      sum((l) => yes(l.urgent === null)),
    ),
    factPrecision: shareOf(
      sum((l, f) => common(counted(l, f), factsOf(l.parts))),
      sum((l, f) => counted(l, f).length),
    ),
    factRecall: shareOf(
      sum((l, f) => common(factsOf(l.parts), factsOf(f.parts))),
      sum((l) => factsOf(l.parts).length),
    ),
    repeatPrecision: shareOf(
      sum((l, f) => yes(f.sameAs !== null && f.sameAs === l.sameAs)),
      sum((_, f) => yes(f.sameAs !== null)),
    ),
    repeatRecall: shareOf(
      sum((l, f) => yes(l.sameAs !== null && f.sameAs === l.sameAs)),
      sum((l) => yes(l.sameAs !== null)),
    ),
    personal: shareOf(
      sum((l, f) => common(withoutTitles(l.personal), withoutTitles(f.personal))),
      sum((l) => l.personal.length),
    ),
    masksTooMuch: sum(
      (l, f) => f.personal.length - common(withoutTitles(f.personal), withoutTitles(l.personal)),
    ),
    confused,
  };
}
