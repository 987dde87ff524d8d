import type { Topic } from '@tarebook/rules/engine';
import type { Answerable } from './answer-shapes';

type Open = NonNullable<Answerable['open']>[number];

/** What a fact is called within a sentence. */
export function nounIn(topic: Topic, fact: string): string {
  const declared = topic.facts[fact];
  const noun = declared?.kind === 'quantity' ? declared.noun : undefined;
  return noun ?? `the ${(declared?.label ?? fact).toLowerCase()}`;
}

/** A value with its thousands apart. */
export const inFigures = (value: string): string =>
  value.replace(/^\d{4,}/, (all) => Number(all).toLocaleString('en-US'));

const either = new Intl.ListFormat('en-US', { type: 'disjunction' });

/** What of a figure’s kinds the topic knows: a question that was put to other rules keeps none of the others’. */
export const knownAmong = (topic: Topic, { among }: Open): readonly string[] =>
  among.filter((fact) => Object.hasOwn(topic.facts, fact));

/** Which of the things that it may be a figure is, asked: “Is 4,200 lb the dry weight or the trailer’s own maximum?” */
export const eitherSaid = (topic: Topic, { value, among }: Open): string =>
  `Is ${inFigures(value)} ${either.format(among.map((fact) => nounIn(topic, fact)))}?`;

/** A figure that is asked about, or that a person said what it is. */
export type AsksOpen = {
  readonly open: Open;
  readonly question: string;
  /** What it may be, each as it is pressed. */
  readonly may: readonly { readonly fact: string; readonly says: string }[];
  /** What a person said that it is; undefined while it is asked. */
  readonly chosen: string | undefined;
};

/** Of each open figure what is asked, with nothing that the topic has no word for. */
export const asksOpen = (
  topic: Topic,
  open: readonly Open[],
  mended: Readonly<Record<string, string>>,
): readonly AsksOpen[] =>
  open.flatMap((each) => {
    const among = knownAmong(topic, each);
    if (among.length === 0) return [];
    return {
      open: each,
      question: eitherSaid(topic, { ...each, among }),
      may: among.map((fact) => ({ fact, says: `It is ${nounIn(topic, fact)}` })),
      chosen: among.find((fact) => mended[fact] === each.value),
    };
  });
