import { readFileSync } from 'node:fs';
import { urgencies } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { topicTerms } from '../../packages/record/src/learned/topic-terms';
import { saysKind, urgentTerms } from '../../packages/record/src/learned/urgent-terms';
import { besideOver, none } from '../../packages/record/src/questions/about';
import { partsOf } from '../../packages/record/src/questions/split';
import { before, type Labeled, labeled } from './measure';
import { type Learned, learn, type Sample } from './softmax';

/** What the reader learns from: the open messages, those written to learn from, and single sentences. */
export type Lesson = {
  readonly writer: string;
  readonly urgent: string | null;
  readonly text: string;
};

const trained = new URL('train.json', import.meta.url);
/** By two writers more, each measured once before anything was learned from them. */
const onceHeldOut = new URL('once-held-out.json', import.meta.url);

/** All labeled messages that may be learned from; a writer’s begin with the same letters. */
export const lessons: readonly Labeled[] = [
  ...labeled(),
  ...labeled(trained),
  ...labeled(onceHeldOut),
];
export const writerOf = ({ id }: Pick<Labeled, 'id'>): string => id.replace(/\d.*$/, '');

const sentences = (name: string): readonly string[] =>
  JSON.parse(readFileSync(new URL(name, import.meta.url), 'utf8'));
/** Sentences by nobody whose messages are measured; each counts like a message. */
const single: readonly Lesson[] = [
  ...sentences('dangers.json').map((text) => ({ writer: '', urgent: 'some', text })),
  ...sentences('calm.json').map((text) => ({ writer: '', urgent: null, text })),
];
const ofSingle = 1;

const ridge = 0.1;
const rounds = 80;
const fewest = 3;

const isKind = (kind: string | null): kind is string =>
  (urgencies as readonly (string | null)[]).includes(kind);

/** Which danger it is, single words and the signs say. */
export const kindTerms = (text: string): readonly string[] =>
  [...urgentTerms(text).keys()].filter(saysKind);

type Chosen = (writer: string) => boolean;

/** Told by the writers that are chosen, what speaks for danger. */
export function learnUrgent(from: Chosen = () => true): Learned {
  const told = [
    ...lessons.map((each) => ({ ...each, writer: writerOf(each), weight: 1 })),
    ...single.map((each) => ({ ...each, weight: ofSingle })),
  ].filter(({ writer }) => from(writer));
  const samples = told.map(
    ({ text, urgent, weight }): Sample => ({
      terms: [...urgentTerms(text).keys()],
      label: urgent === null ? 'calm' : 'urgent',
      weight,
    }),
  );
  return learn(samples, { classes: ['calm', 'urgent'], ridge, rounds, fewest });
}

/** And what kind of danger it is. */
export function learnKind(from: Chosen = () => true): Learned {
  const samples = lessons
    .filter((each) => from(writerOf(each)))
    .flatMap(({ text, urgent }): readonly Sample[] =>
      urgent === null
        ? []
        : [
            {
              terms: kindTerms(text),
              label: isKind(urgent) ? urgent : 'doubt',
              weight: 1,
            },
          ],
    );
  return learn(samples, { classes: urgencies, ridge: 1, rounds, fewest: 5 });
}

export const classes: readonly string[] = [none, ...Object.values(topics).map(({ id }) => id)];
const beside = besideOver(topics, before);

const urgencyOf = (kind: string | null) => urgencies.find((each) => each === kind) ?? null;

/** What speaks for each topic in a text besides what is learned. */
export const besidesOf = (text: string, urgent: string | null): readonly (readonly number[])[] => {
  const found = beside(text, urgencyOf(urgent));
  return classes.map((id) => found.get(id)?.values ?? []);
};

/** The questions of the labeled messages, where they are cut as they were labeled. */
export const asked = lessons.flatMap((each) => {
  const parts = partsOf(each.text);
  const writer = writerOf(each);
  const isOne = each.parts.length === 1;
  const texts = parts.length === each.parts.length ? parts : isOne ? [each.text] : [];
  return texts.map((text, at) => ({
    ...{ writer, text, label: each.parts[at]?.topic ?? none },
    others: [each.parts[at]?.orTopic ?? []].flat().map((other) => other ?? none),
    hasOther: each.parts[at]?.orTopic !== undefined,
    urgent: isOne ? each.urgent : null,
  }));
});

/** What speaks for each topic, and for none. */
export function learnTopics(from: Chosen = () => true): Learned {
  const samples = asked
    .filter(({ writer }) => from(writer))
    .map(
      ({ text, label, urgent }): Sample => ({
        terms: [...topicTerms(text).keys()],
        label,
        weight: 1,
        beside: besidesOf(text, urgent),
      }),
    );
  return learn(samples, { classes, ridge: 0.3, rounds: 50, fewest });
}
