import { quickly, topics } from '@tarebook/rules';
import { coldWeather } from '@tarebook/rules/cold-weather';
import { type Asked, type FactGiven, formOf, type Topic } from '@tarebook/rules/engine';
import { houseBattery } from '@tarebook/rules/house-battery';
import { describe, expect, test } from 'vitest';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';

/**
 * One fact told alone, every option of every choice and every amount of the filed cases: that a danger
 * is not there, or that nothing is asked for, makes no verdict clean.
 */
const asOf = '2026-11-01';

/** Facts that answer their topic by themselves, each with its reason. */
const enough: Readonly<Record<string, string>> = {
  'options-fit plan.name': 'a floor plan is all that has to be known to say what can be ordered',
  'cold-weather outside.temperature': 'above freezing nothing freezes, whatever else is so',
};

type Told = { readonly topic: Topic; readonly fact: string; readonly value: FactGiven };

function told(): readonly Told[] {
  const found = new Map<string, Told>();
  const add = (each: Told): void => {
    found.set(`${each.topic.id} ${each.fact} ${JSON.stringify(each.value)}`, each);
  };
  for (const topic of Object.values(topics)) {
    for (const [fact, { kind, ...more }] of Object.entries(topic.facts)) {
      const options = kind === 'yes-no' ? ['yes', 'no'] : 'options' in more ? more.options : [];
      for (const value of options) add({ topic, fact, value });
    }
  }
  for (const { text } of markdownBelow(casesFolder, refusedFolder)) {
    const { front, facts, troubles } = readFiled(text);
    const topic = Object.values(topics).find(({ id }) => id === front.topic);
    if (!topic || troubles.length > 0) continue;
    for (const [fact, value] of Object.entries(facts)) add({ topic, fact, value });
  }
  return [...found.values()];
}

const all = told();

const clean = Object.values(topics).flatMap((topic: Topic) => {
  const judged = quickly(topic, { asOf });
  return all.filter(
    (each) => each.topic === topic && judged({ [each.fact]: each.value }).level === 'ok',
  );
});

test('choices and amounts of every topic are told', () => {
  expect(new Set(all.map(({ topic }) => topic.id)).size).toBe(Object.keys(topics).length);
  expect(all.length).toBeGreaterThan(1500);
});

describe.each(Object.values(topics))('$id', (topic) => {
  test('no single fact makes the verdict clean, but those that answer it', () => {
    const mine = clean.filter((each) => each.topic === topic);
    const names = mine.map(({ fact }) => `${topic.id} ${fact}`);
    expect(names.filter((name) => !Object.hasOwn(enough, name))).toEqual([]);
  });
});

test('those that answer it still do', () => {
  const names = new Set(clean.map(({ topic, fact }) => `${topic.id} ${fact}`));
  expect([...names].sort()).toEqual(Object.keys(enough).sort());
});

describe('where a verdict stands and what was asked has no answer', () => {
  const spoken = (topic: Topic, facts: Asked['facts'], asking: string): string =>
    formOf('spoken', topic, { facts, asOf }, { asking });

  test('it is said what must be known first', () => {
    const facts = { 'battery.chemistry': 'gel', 'monitor.stateOfCharge': '95 %' };
    const said = spoken(houseBattery, { ...facts, 'storage.draw': '0.03 A' }, 'stored');
    expect(said).toMatch(/^For that, .+ must be known first\. .*The battery setup will do\./);
  });

  test('nothing is the need of nobody: no supply is enough for it', () => {
    const facts = { 'outside.temperature': '40 °F', 'battery.capacity': '100 Ah' };
    const said = spoken(coldWeather, facts, 'battery');
    expect(said).not.toMatch(/is enough|no amp-hours/);
  });
});
