import { readFacts, type Topic } from '@tarebook/rules/engine';
import { type Amount, amountsIn } from './amounts';
import { asTheyHold } from './corrections';
import { type Evidence, evidenceOver } from './evidence';
import { factsIn } from './facts';
import { firstReplies } from './first-reply';
import { ridersIn } from './people';
import { topicOf } from './read';
import type { Urgency } from './shapes';
import { namedIn, urgentIn } from './urgent';
import { isWhichAsked } from './which-asked';

/** Words of a line that were understood, and as what. */
export type LineMark = { readonly from: number; readonly to: number } & (
  | { readonly kind: 'fact'; readonly fact: string; readonly value: string }
  | {
      readonly kind: 'people';
      readonly who: 'adult' | 'child' | 'dog';
      readonly count: number;
    }
  /** A number that may be any of these facts; of none of them, where the list is empty. */
  | { readonly kind: 'open'; readonly among: readonly string[]; readonly value: string }
);

export type ReadLine = {
  /** A rule set's id; null where none is meant, or more than one may be. */
  readonly topic: string | null;
  readonly because: readonly string[];
  /** The topics that something speaks for, the likeliest first. */
  readonly likely: readonly string[];
  /** In the order of the words; none covers another. */
  readonly marks: readonly LineMark[];
  readonly urgent: Urgency | null;
  readonly firstReply: string | null;
};

/** A longer line is read as far as this. */
const mostCharacters = 6_000;
const mostLikely = 4;
const people = 'load.occupants';
/** Whoever types one line across a counter is there for something. */
const enough = 2;

/** Where two stand over the same words, the later one keeps its number alone, or gives way. */
function apart(marks: readonly (LineMark & { readonly at?: number })[]): readonly LineMark[] {
  const left: LineMark[] = [];
  for (const { at, ...mark } of marks.toSorted((a, b) => a.from - b.from || a.to - b.to)) {
    const end = left.at(-1)?.to ?? 0;
    const from = mark.from < end ? Math.max(end, at ?? mark.to) : mark.from;
    if (from < mark.to) left.push({ ...mark, from });
  }
  return left;
}

/** “A 2019 half-ton” */
const isYear = ({ unit, from, to }: Amount, text: string): boolean =>
  unit === undefined && /^(?:19[5-9]|20[0-4])\d$/.test(text.slice(from, to));
/** A part of a number with dashes, such as a telephone’s. */
const isDialed = ({ from, to }: Amount, text: string): boolean =>
  /^-\d/.test(text.slice(to)) || /\d\) ?$|\d-$/.test(text.slice(0, from));

function marksIn(topic: Topic, text: string): readonly LineMark[] {
  const { facts, places, open } = factsIn(topic, text);
  const refused = new Set(readFacts(topic, facts).problems.map(({ fact }) => fact));
  const read = Object.entries(places).flatMap(([fact, { from, to, amount }]) =>
    refused.has(fact)
      ? []
      : [{ kind: 'fact' as const, fact, value: facts[fact] ?? '', from, to, at: amount.from }],
  );
  const asked = open.map(({ from, to, amount, among }) => ({
    ...{ kind: 'open' as const, among, from, to, at: amount.from },
    value: `${amount.value} ${amount.unit ?? 'lb'}`,
  }));
  const riders = topic.facts[people]?.kind === 'rows' ? ridersIn(text) : [];
  const riding = riders.map((each) => ({ kind: 'people' as const, ...each }));
  const known = [...read, ...asked, ...riding];
  const loose = asTheyHold(text, amountsIn(text))
    .filter(({ value, unit }) => unit !== undefined || value >= 100)
    .filter((each) => !isYear(each, text) && !isDialed(each, text))
    .filter(({ from, to }) => !known.some((each) => each.from < to && from < each.to))
    .map(({ value, unit, from, to }) => ({
      ...{ kind: 'open' as const, among: [], from, to },
      value: `${value} ${unit ?? 'lb'}`,
    }));
  return apart([...known, ...loose]);
}

const towing = 'tow-fit';
const towRating = 'vehicle.maxTrailerWeight';

/** “A hybrid rated 3,500: which?” is asked of one vehicle against a yard, whatever else is named. */
function whichOf(
  topics: Readonly<Record<string, Topic>>,
  text: string,
  evidence: readonly Evidence[],
): Evidence | undefined {
  const topic = isWhichAsked(text) ? topics[towing] : undefined;
  if (!topic || !Object.hasOwn(factsIn(topic, text).facts, towRating)) return undefined;
  const known = evidence.find((each) => each.topic === towing);
  return known ?? { topic: towing, score: enough, because: ['which'] };
}

/** Reads one line about one thing, as it is typed or dictated across a counter. */
export function lineReader(
  topics: Readonly<Record<string, Topic>>,
): (text: string, chosen?: string) => ReadLine {
  const about = evidenceOver(topics);
  return (whole, chosen) => {
    const text = whole.slice(0, mostCharacters).replaceAll('\0', ' ');
    const urgent = urgentIn(text);
    const evidence = about(text, namedIn(text));
    const found = whichOf(topics, text, evidence) ?? topicOf(evidence, enough);
    const id = chosen ?? found?.topic;
    const all = evidence.map((each) => each.topic);
    const likely = found ? [found.topic, ...all.filter((each) => each !== found.topic)] : all;
    const topic = id !== undefined && Object.hasOwn(topics, id) ? topics[id] : undefined;
    return {
      topic: topic?.id ?? null,
      because: chosen === undefined ? (found?.because ?? []) : [],
      likely: likely.slice(0, mostLikely),
      marks: topic ? marksIn(topic, text) : [],
      urgent,
      firstReply: urgent && firstReplies[urgent],
    };
  };
}
