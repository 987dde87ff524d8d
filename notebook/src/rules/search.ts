/// <reference types="vite/client" />
import { topics } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { find, type Sought } from '../state/find';

/** “What it says beside the limits” ► `what-it-says-beside-the-limits` */
export const sectionId = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');

/** A place in the rules that can be gone to. */
export type RulesPlace = Sought & { readonly href: string; readonly of: string };

const none: readonly string[] = [];

type Called = NonNullable<Topic['called']>;
/** Topics come without what people call their things: see `wordsApart` where the page is built. */
const wordsOf = Object.fromEntries(
  Object.entries(
    import.meta.glob<Called>('../../../packages/rules/src/topics/*/called.ts', {
      eager: true,
      import: 'called',
    }),
  ).map(([path, called]) => [path.split('/').at(-2) ?? '', called]),
);

function placesIn(topic: Topic): readonly RulesPlace[] {
  const at = (part: string) => `#/rules/${topic.id}/${part}`;
  const { facts: factsCalled = {}, topic: itselfCalled = none } =
    topic.called ?? wordsOf[topic.id] ?? {};
  const facts = Object.entries(topic.facts).map(([id, fact]) => ({
    href: at(id),
    title: fact.label,
    of: `${topic.title}: what is asked`,
    words: `${id} ${fact.ask} ${fact.where} ${fact.means ?? ''}`,
    called: factsCalled[id] ?? none,
  }));
  const limits = Object.values(topic.limits).map(({ label }) => ({
    href: at('the-limits'),
    title: label,
    of: `${topic.title}: a limit`,
    words: '',
    called: none,
  }));
  const formulas = Object.entries(topic.formulas).map(([id, { label, source }]) => ({
    href: at(id),
    title: label,
    of: `${topic.title}: how it reckons`,
    words: `${id} ${source.cite}`,
    called: none,
  }));
  const findings = Object.values(topic.findings).map(({ label, otherwise, source }) => ({
    href: at('what-it-says-beside-the-limits'),
    title: label,
    of: `${topic.title}: what it says`,
    words: `${typeof otherwise === 'string' ? otherwise : ''} ${source.cite}`,
    called: none,
  }));
  const itself = {
    href: `#/rules/${topic.id}`,
    title: topic.title,
    of: topic.question,
    words: topic.question,
    called: itselfCalled,
  };
  return [itself, ...facts, ...limits, ...findings, ...formulas];
}

let all: readonly RulesPlace[] | undefined;

/** What in any topic a question or a word is about, the nearest first. */
export function findInRules(query: string): readonly RulesPlace[] {
  all ??= Object.values(topics).flatMap(placesIn);
  return find(query, all).hits;
}
