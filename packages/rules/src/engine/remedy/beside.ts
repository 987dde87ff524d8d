import { reckoned } from '../answer/answer';
import type { FactsGiven } from '../check/given';
import { InputError } from '../check/problem';
import type { Topic } from '../define/shapes';
import { message } from '../words/message';
import { own, type Sayable, text } from '../words/value';
import { type Bench, benchOf, type Judged, judge, worsened } from './trial';

/** Another question that the same facts answer. */
type Other = {
  readonly topic: Topic;
  readonly bench: Bench;
  readonly before: Judged;
};

/** The facts that another topic asks as well. */
const sharedBy = (topic: Topic, facts: FactsGiven): FactsGiven =>
  Object.fromEntries(Object.entries(facts).filter(([id]) => Object.hasOwn(topic.facts, id)));

function judgedIn(topic: Topic, bench: Bench, facts: FactsGiven, asOf: string): Judged | undefined {
  try {
    return judge(bench, reckoned(topic, { facts: sharedBy(topic, facts), asOf }, asOf).inputs);
  } catch (problem) {
    // What this topic cannot read says nothing about the other.
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** How the facts stand in every other topic that asks for some of them. */
export function othersOf(
  topic: Topic,
  beside: readonly Topic[],
  rig: FactsGiven,
  asOf: string,
): readonly Other[] {
  return beside.flatMap((other) => {
    if (other.id === topic.id) return [];
    if (Object.keys(sharedBy(other, rig)).length === 0) return [];
    const bench = benchOf(other, asOf, new Map());
    const before = judgedIn(other, bench, rig, asOf);
    return before ? [{ topic: other, bench, before }] : [];
  });
}

/** What a change upsets in other topics: “Tongue share (Hitch setup)”. */
export function upsetElsewhere(
  others: readonly Other[],
  after: FactsGiven,
  asOf: string,
): readonly Sayable[] {
  return others.flatMap(({ topic, bench, before }) => {
    const then = judgedIn(topic, bench, after, asOf);
    if (!then) return [];
    return worsened(then, before).map((of) => {
      const id = of.slice(of.indexOf('.') + 1);
      const entry = of.startsWith('limit.') ? topic.limits[id] : topic.findings[id];
      const label = entry ? text(entry.label) : own(id);
      return message('in-topic', { label, topic: text(topic.title) });
    });
  });
}
