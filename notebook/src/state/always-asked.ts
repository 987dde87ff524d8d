import { answerNow, type FactsGiven, type Topic } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';

/** Some value that a fact may have, to see what is still asked once it is told. */
function anyValue(topic: Topic, id: string): string | undefined {
  const fact = topic.facts[id];
  if (fact?.kind === 'yes-no') return 'yes';
  if (fact?.kind === 'choice') return fact.options[0];
  if (fact?.kind !== 'quantity') return undefined;
  const middle = Math.round((Math.max(0, fact.least) + fact.most) / 2);
  return show({ lo: middle, hi: middle }, fact.unit);
}

const rounds = 4;

/** Facts told with some value, until nothing else is asked; only those that were asked for. */
function toldWhenAsked(topic: Topic): FactsGiven {
  let told: Record<string, string> = {};
  for (let i = 0; i < rounds; i += 1) {
    const asked = answerNow(topic, { facts: told }).missing.flatMap(({ fact }) => {
      const value = anyValue(topic, fact);
      return value === undefined || told[fact] !== undefined ? [] : [[fact, value] as const];
    });
    if (asked.length === 0) break;
    told = { ...told, ...Object.fromEntries(asked) };
  }
  return told;
}

/** How many limits and findings cannot be told yet. */
function openLeft(topic: Topic, facts: FactsGiven): number {
  const { limits, findings } = answerNow(topic, { facts });
  const open = [...limits.map(({ state }) => state), ...findings.map(({ level }) => level)];
  return open.filter((state) => state === 'unknown').length;
}

const few = 6;

/**
 * The facts without any of which a topic cannot answer at all, in the topic's order. A fact that
 * others can stand in for is left out, the last named first. A topic that answers with nothing
 * told starts with the first few facts it knows.
 */
export function alwaysAsked(topic: Topic): readonly string[] {
  const order = Object.keys(topic.facts);
  let told = toldWhenAsked(topic);
  const floor = openLeft(topic, told);
  for (const id of order.toReversed()) {
    if (told[id] === undefined) continue;
    const { [id]: _, ...without } = told;
    if (openLeft(topic, without) <= floor) told = without;
  }
  const needed = order.filter((id) => told[id] !== undefined);
  if (needed.length > 0) return needed;
  return order.filter((id) => topic.facts[id]?.kind !== 'rows').slice(0, few);
}
