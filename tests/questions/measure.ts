import { readFileSync } from 'node:fs';
import { type Message, type ReadMessage, reader } from '@tarebook/record';
import { topics } from '@tarebook/rules';

/**
 * Messages as people write them, with what a person read in each: of each question its topic or none
 * and the facts it tells, what is urgent, what repeats what, and what is personal.
 */
type Labeled = {
  readonly id: string;
  readonly channel: string;
  readonly text: string;
  readonly parts: readonly {
    readonly topic: string | null;
    readonly facts: Readonly<Record<string, string>>;
  }[];
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

export function labeled(name: 'open' | 'held-out'): readonly Labeled[] {
  return JSON.parse(readFileSync(new URL(`${name}.json`, import.meta.url), 'utf8'));
}

const factsOf = (parts: readonly { readonly facts: Readonly<Record<string, string>> }[]) =>
  parts.flatMap(({ facts }) => Object.entries(facts).map(([fact, value]) => `${fact} ${value}`));
const topicsOf = (parts: readonly { readonly topic: string | null }[]) =>
  parts.flatMap(({ topic }) => topic ?? []);

/** How many of the one stand among the other, each once. */
function common(some: readonly string[], others: readonly string[]): number {
  const left = [...others];
  return some.filter((each) => {
    const at = left.indexOf(each);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  }).length;
}

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

export function measure(set: readonly Labeled[]): Measured {
  const read = reader({ topics });
  const pairs = set.map((label): readonly [Labeled, ReadMessage] => {
    const message: Message = { ...label, askedOn: '2026-11-01', asker: '' };
    return [label, read(message)];
  });
  const sum = (of: (label: Labeled, found: ReadMessage) => number): number =>
    pairs.reduce((total, [label, found]) => total + of(label, found), 0);
  const yes = (is: boolean): number => (is ? 1 : 0);
  const none = ({ parts }: Labeled): boolean => topicsOf(parts).length === 0;
  const confused = pairs.flatMap(([label, found]) => {
    const lines: string[] = [];
    const [was, is] = [topicsOf(label.parts), topicsOf(found.parts)];
    if (common(was, is) < was.length || is.length > was.length)
      lines.push(`topics ${was} read as ${is}`);
    const [told, heard] = [factsOf(label.parts), factsOf(found.parts)];
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
      sum((l, f) => yes(none(l) && topicsOf(f.parts).length > 0)),
      sum((l) => yes(none(l))),
    ),
    topic: shareOf(
      sum((l, f) => common(topicsOf(l.parts), topicsOf(f.parts))),
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
      sum((l, f) => common(factsOf(f.parts), factsOf(l.parts))),
      sum((_, f) => factsOf(f.parts).length),
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
      sum((l, f) => common(l.personal, f.personal)),
      sum((l) => l.personal.length),
    ),
    masksTooMuch: sum((l, f) => f.personal.length - common(f.personal, l.personal)),
    confused,
  };
}
