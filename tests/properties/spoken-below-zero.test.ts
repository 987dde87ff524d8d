import { topics } from '@tarebook/rules';
import { answerNow, type FactsGiven, formOf, InputError, type Topic } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { randomFrom, seed } from '../untold/rigs';

const asOf = '2026-11-01';
const documents = 8;

/** The forms that are made at once. */
const said = ['ticket', 'spoken'] as const;

/** What may well be below nothing: temperatures, and what a claim gains, which may be a loss. */
const mayBeBelow = /°|degree|USD|dollars/;

/** A quantity that begins below nothing, with its unit, as answers write it. */
const belowZero =
  /(?<![\d\w.,–])(?:−|minus )\d[\d.,]*(?:(?:[–-]| to )(?:−|minus )?\d[\d.,]*)? ?[a-zA-Z%°]+/g;

/** A little of a topic, some of it vaguely; most of the rest unknown or silent. */
function littleTold(topic: Topic, random: () => number): FactsGiven {
  const ids = Object.keys(topic.facts);
  const told: Record<string, FactsGiven[string]> = {};
  for (let i = 0; i < 6; i += 1) {
    const id = ids[Math.floor(random() * ids.length)] ?? '';
    const fact = topic.facts[id];
    if (!fact) continue;
    if (random() < 0.3) {
      told[id] = 'unknown';
    } else if (fact.kind === 'quantity') {
      // What is asked with a minus on purpose, as a place behind an axle, is told without one.
      const least = Math.max(0, fact.least);
      const at = least + random() * 0.3 * (fact.most - least);
      const value = fact.counted || fact.unit === '' ? Math.ceil(at) : Number(at.toPrecision(2));
      told[id] = { lo: value, hi: fact.exact ? value : value * 1.1, unit: fact.unit };
    } else if (fact.kind === 'choice') {
      told[id] = fact.options[Math.floor(random() * fact.options.length)] ?? 'unknown';
    } else if (fact.kind === 'yes-no') {
      told[id] = random() < 0.5 ? 'yes' : 'no';
    }
  }
  return told;
}

function spokenOf(topic: Topic, facts: FactsGiven, random: () => number): string {
  try {
    answerNow(topic, { facts, asOf });
  } catch (problem) {
    if (problem instanceof InputError) return '';
    throw problem;
  }
  const asked = Object.keys(topic.askings ?? {});
  const asking = asked[Math.floor(random() * asked.length)];
  return said.map((name) => formOf(name, topic, { facts, asOf }, { asking })).join('\n');
}

/** A whole yard of models is counted through anew for each question. */
const quick = Object.values(topics).filter(({ catalogues }) => catalogues === undefined);

describe.each(quick.map((topic) => [topic.id, topic] as const))('%s', (id, topic) => {
  test('says no quantity that begins below nothing', () => {
    const random = randomFrom(seed + id.length);
    const found: string[] = [];
    for (let i = 0; i < documents; i += 1) {
      const facts = littleTold(topic, random);
      const text = spokenOf(topic, facts, random);
      for (const [each] of text.matchAll(belowZero)) {
        if (mayBeBelow.test(each)) continue;
        const at = text.indexOf(each);
        found.push(`${text.slice(Math.max(0, at - 60), at + 40)} ← ${JSON.stringify(facts)}`);
      }
    }
    expect(found).toEqual([]);
  });
});

test('the largest trailer is none at the least, and is said only where there is some for sure', () => {
  const topic = topics['tow-fit'];
  if (!topic) throw new Error('tow-fit');
  const facts = {
    'vehicle.placardPayload': 'unknown',
    'vehicle.maxTrailerWeight': '5,100 lb',
    'vehicle.maxTongueCarried': '510 lb',
    'load.occupants': [{ weight: '640 lb' }],
    'trailer.dryWeight': '3,300 lb',
    'trailer.measuredTongueWeight': '390 lb',
  };
  expect(answerNow(topic, { facts, asOf }).values['largest.trailer']?.lo).toBe(0);
  const text = said
    .map((name) => formOf(name, topic, { facts, asOf }, { asking: 'how-heavy' }))
    .join('\n');
  expect(text).not.toMatch(/−\d|Loaded it may weigh/);
});
