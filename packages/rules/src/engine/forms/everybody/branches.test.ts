import { describe, expect, test } from 'vitest';
import { defineTopic } from '../../check/define';
import type { Fact, Topic } from '../../define/shapes';
import { formula, shelf, source } from '../../define/small-topic.fixture';
import { answerEverybody } from './everybody';

const words = { ask: 'How much?', where: 'on the label' };
const label: Fact = {
  ...words,
  ...{ kind: 'quantity', label: 'Payload', unit: 'lb', least: 0, most: 3000 },
};
const state: Fact = { ...words, kind: 'choice', label: 'State', options: ['dry', 'green'] };
const count: Fact = {
  ...words,
  ...{ kind: 'quantity', label: 'Bundles', unit: '', least: 0, most: 100 },
};

/** Bundles of firewood in the bed of a truck: green ones weigh more, and are a care by themselves. */
const firewood: Topic = defineTopic<Topic>({
  ...shelf,
  id: 'firewood',
  facts: { 'vehicle.payload': label, 'wood.state': state, 'wood.count': count },
  parameters: {
    'wood.dry': {
      label: 'A dry bundle',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 66.5 }],
      source,
    },
    'wood.green': {
      label: 'A green one',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 77 }],
      source,
    },
    'margin.shelf': {
      label: 'Margin',
      unit: '%',
      values: [{ from: '2020-01-01', value: 8 }],
      source,
    },
  },
  tables: {},
  formulas: {
    'wood.weight': formula("wood.count * choose(wood.state == 'green', wood.green, wood.dry)"),
  },
  limits: {
    payload: {
      label: 'Payload',
      short: 'the payload',
      used: 'wood.weight',
      limit: 'vehicle.payload',
      margin: 'margin.shelf',
      source,
    },
  },
  findings: {
    green: {
      label: 'Green wood',
      askedBy: ['wood.state'],
      care: { when: "wood.state == 'green'", wrong: 'It is green.' },
      otherwise: 'It is dry.',
      source,
    },
  },
  headline: ['wood.weight'],
  everybody: {
    any: {
      rule: 'What is in the bed counts, and green wood is heavier than dry wood, by a fifth or so.',
      because: 'Water weighs.',
      look: ['vehicle.payload', 'wood.state'],
      given: { 'wood.count': '20' },
      givenSays: 'for twenty bundles',
      otherwise: 'If you do not know, leave some of them at home and come twice.',
    },
  },
});

const told = (look: readonly string[]) => {
  const any = firewood.everybody?.any;
  if (!any) throw new Error('There is nothing for everybody.');
  const topic = defineTopic<Topic>({ ...firewood, everybody: { any: { ...any, look } } });
  return answerEverybody(topic, { facts: {}, asOf: '2026-11-01' });
};

describe.each([
  ['the figure first', ['vehicle.payload', 'wood.state']],
  ['the kind first', ['wood.state', 'vehicle.payload']],
])('%s', (_, look) => {
  test('whatever goes ahead is said with the stop that is next to it', () => {
    const { branches } = told(look);
    expect(branches.length).toBeLessThanOrEqual(4);
    const goes = branches.filter(({ outcome }) => outcome !== 'breaks');
    const stops = branches.filter(({ outcome }) => outcome === 'breaks');
    expect(goes.length).toBeGreaterThan(0);
    expect(stops.length).toBeGreaterThan(0);
    // 1,400 lb hold twenty dry bundles, and no twenty green ones: whoever hears of the one hears of both.
    for (const { when } of goes) {
      if (when['wood.state'] !== 'dry') continue;
      expect(stops.some((stop) => stop.when['wood.state'] === 'green')).toBe(true);
    }
  });

  test('a reason is said for certain only where it holds over all of a branch', () => {
    const { branches } = told(look);
    for (const { when, says } of branches) {
      const range = String(when['vehicle.payload'] ?? '');
      // Twenty dry bundles are close to their end up to 1,445 lb, twenty green ones up to 1,673 lb.
      if (/comes close/.test(says)) expect(range).not.toMatch(/^at least/);
    }
  });
});
