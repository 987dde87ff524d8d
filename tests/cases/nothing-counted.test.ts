import { topics } from '@tarebook/rules';
import { type Asked, answerNow, type FactGiven, formOf, type Topic } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, refusedFolder } from './files';

/**
 * What nobody told of is not counted as nothing: one amount told alone, as a filed case has it, of
 * which no limit is kept and no zero is said. The load that was not told would do the harm.
 */
const asOf = '2026-11-01';

type Amount = { readonly topic: Topic; readonly fact: string; readonly value: FactGiven };

/** As a document has it: `3,500 lb`. */
const isAboveNothing = (given: FactGiven): boolean =>
  typeof given === 'string' && /^(?=.*[1-9])[\d,./ ]+(?: [^\d]|$)/.test(given);

function amounts(): readonly Amount[] {
  const found = new Map<string, Amount>();
  for (const { text } of markdownBelow(casesFolder, refusedFolder)) {
    const { front, facts, troubles } = readFiled(text);
    const topic = Object.values(topics).find(({ id }) => id === front.topic);
    if (!topic || troubles.length > 0) continue;
    for (const [fact, value] of Object.entries(facts)) {
      const key = `${topic.id} ${fact}`;
      if (found.has(key) || topic.facts[fact]?.kind !== 'quantity') continue;
      if (isAboveNothing(value)) found.set(key, { topic, fact, value });
    }
  }
  return [...found.values()];
}

const all = amounts();

/** The askings that somebody may well have who tells just that; the usual one in any case. */
function askingsFor({ topic, fact }: Amount): readonly (string | undefined)[] {
  const implied = Object.entries(topic.askings ?? {}).filter(([, { impliedBy = [] }]) =>
    impliedBy.includes(fact),
  );
  return [undefined, ...implied.map(([id]) => id)];
}

const nothings =
  /(?<![\d.,–-])0 (?:lb|A|Ah|W|kW|kWh|h|d|Btu|Btu\/h|gal|mi|USD|in|ft|psi)\b|\bno (?:pounds|amps|amp-hours|watts|kilowatts|hours|days|Btu|gallons|miles|dollars|inches|feet)\b/;

const saidIn = (topic: Topic, asked: Asked, asking: string | undefined): string =>
  (['ticket', 'spoken'] as const).map((name) => formOf(name, topic, asked, { asking })).join('\n');

test('amounts of every topic are told', () => {
  expect(new Set(all.map(({ topic }) => topic.id)).size).toBe(Object.keys(topics).length);
  expect(all.length).toBeGreaterThan(300);
});

describe.each(Object.values(topics))('$id, one amount told alone', (topic) => {
  const mine = all.filter((each) => each.topic.id === topic.id);

  test('no limit of which nothing is used makes a verdict clean', () => {
    const clean = mine.filter(({ fact, value }) => {
      const asked: Asked = { facts: { [fact]: value }, asOf };
      const { outcome, limits, findings } = answerNow(topic, asked);
      const compared = limits.filter(({ state }) => state !== 'not-asked');
      const isIdle = compared.every(({ used }) => used.lo === 0 && used.hi === 0);
      const isSettled = findings.some(({ level }) => level !== 'not-asked');
      return outcome === topic.outcomes.ok.id && isIdle && !isSettled;
    });
    expect(clean.map(({ fact }) => fact)).toEqual([]);
  });

  test('no zero is said as what was asked', () => {
    const said = mine.flatMap((each) =>
      askingsFor(each).flatMap((asking) => {
        const asked: Asked = { facts: { [each.fact]: each.value }, asOf };
        const nothing = nothings.exec(saidIn(topic, asked, asking));
        return nothing ? [`${each.fact}, ${asking ?? 'usual'}: “${nothing[0]}”`] : [];
      }),
    );
    expect(said).toEqual([]);
  });
});

test('nothing is said to burn well that nobody said burns; and too cold is too cold for all', () => {
  const gas = Object.values(topics).find(({ id }) => id === 'gas-supply');
  if (!gas) throw new Error('There is no gas supply.');
  const heard = (cold: string): string =>
    saidIn(gas, { facts: { 'outside.temperature': cold }, asOf }, 'starves');
  expect(heard('20 °F')).not.toMatch(/boils off enough/);
  expect(heard('-30 °F')).toMatch(/too much for gas/);
});
