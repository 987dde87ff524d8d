import { describe, expect, test } from 'vitest';
import { answerNow } from '../answer/answer';
import { defineTopic } from '../check/define';
import type { FactsGiven } from '../check/given';
import type { Fact, Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';

const judged = (topic: Topic, facts: FactsGiven) => answerNow(topic, { facts, asOf: '2026-11-01' });
const asked = (topic: Topic, facts: FactsGiven) =>
  judged(topic, facts).missing.map(({ fact }) => fact);

describe('where a verdict tips, of a shelf of pine that carries half of its rating', () => {
  const pine = { 'shelf.kind': 'pine', 'shelf.rating': '200 lb', 'box.lid': '4 lb' };

  test('above a weight', () => {
    const [first, more] = judged(shelf, { ...pine, 'box.weight': 'unknown' }).missing;
    expect(first).toMatchObject({
      fact: 'box.weight',
      decides: ['limit.all-boxes'],
      tips: { lo: 96, hi: 96, unit: 'lb' },
      side: 'above',
      together: [],
    });
    expect(more).toBeUndefined();
  });

  test('below a rating', () => {
    const facts = { ...pine, 'shelf.rating': 'unknown', 'box.weight': '96 lb' };
    expect(judged(shelf, facts).missing[0]).toMatchObject({
      fact: 'shelf.rating',
      tips: { lo: 200, hi: 200 },
      side: 'below',
    });
  });

  test('by an option', () => {
    const facts = { ...pine, 'shelf.kind': 'unknown', 'box.weight': '150 lb' };
    expect(judged(shelf, facts).missing[0]).toMatchObject({
      fact: 'shelf.kind',
      tips: 'pine',
      side: null,
      settles: 1,
    });
  });

  test('only together with another', () => {
    const facts = { 'shelf.kind': 'pine', 'shelf.rating': 'unknown', 'box.weight': 'unknown' };
    const [a, b] = judged(shelf, facts).missing;
    expect([a?.fact, b?.fact].toSorted()).toEqual(['box.weight', 'shelf.rating']);
    expect(a?.together).toEqual([b?.fact]);
    expect(b?.together).toEqual([a?.fact]);
  });

  test('of a row, the column that is missing', () => {
    const facts = { ...pine, 'box.weight': '50 lb', boxes: [{ weight: 'unknown' }] };
    expect(judged(shelf, facts).missing[0]).toMatchObject({
      fact: 'boxes',
      tips: { lo: 46, hi: 46, unit: 'lb' },
      side: 'above',
    });
  });
});

const yesNo = (label: string): Fact => ({
  kind: 'yes-no',
  label,
  ask: `${label}?`,
  where: 'there',
});
const wall: Fact = {
  ...{ kind: 'choice', label: 'Wall', options: ['brick', 'board'] },
  ...{ ask: 'What is the wall?', where: 'a knock on it' },
};
const board: Fact = {
  ...{ kind: 'quantity', label: 'What a board bears', unit: 'lb', least: 0, most: 500 },
  ...{ ask: 'What does it bear?', where: 'its stamp' },
};

/** A shelf that hangs on a wall, near a lamp that may be live. */
const hung: Topic = defineTopic<Topic>({
  ...shelf,
  facts: {
    ...shelf.facts,
    'wall.kind': wall,
    'wall.bears': board,
    'lamp.isLive': yesNo('Lamp'),
    'shelf.isLevel': yesNo('Level'),
    'shelf.isDry': yesNo('Dry'),
  },
  formulas: {
    ...shelf.formulas,
    'wall.isBoard': formula("given(wall.kind) && wall.kind == 'board'", 'yes-no'),
    'wall.isUntold': formula('!given(wall.kind)', 'yes-no'),
    'level.isUntold': formula('!given(shelf.isLevel)', 'yes-no'),
  },
  limits: {
    ...shelf.limits,
    wall: {
      label: 'Wall',
      short: 'the wall',
      used: 'load.total',
      limit: 'wall.bears',
      askedBy: ['wall.bears'],
      askedWhen: 'wall.isBoard',
      source,
    },
  },
  findings: {
    level: {
      label: 'Level',
      if: { when: 'level.isUntold', wrong: 'Nobody looked.', proviso: 'it is level' },
      otherwise: 'It is level.',
      source,
    },
    wall: {
      label: 'Wall',
      if: { when: 'wall.isUntold', wrong: 'Nobody knocked.', proviso: 'the wall is of brick' },
      otherwise: 'The wall was told.',
      source,
    },
    dry: {
      label: 'Dry',
      askedBy: ['shelf.isDry'],
      askedFirst: true,
      stop: { when: "shelf.isDry == 'no'", wrong: 'It rots.' },
      otherwise: 'It is dry.',
      source,
    },
    lamp: {
      label: 'Lamp',
      askedBy: ['lamp.isLive'],
      first: true,
      stop: { when: "lamp.isLive == 'yes'", wrong: 'It is live.' },
      otherwise: 'It is dead.',
      source,
    },
  },
});

describe('in which turn it is asked', () => {
  const heavy = { 'shelf.kind': 'oak', 'shelf.rating': '200 lb', 'box.weight': 'unknown' };

  test('a proviso comes after what is open', () => {
    expect(asked(hung, heavy)).toEqual(['box.weight', 'wall.kind', 'shelf.isLevel']);
  });

  test('a danger that is open comes first, whether it is also said first or not', () => {
    expect(asked(hung, { ...heavy, 'lamp.isLive': 'unknown' })[0]).toBe('lamp.isLive');
    expect(asked(hung, { ...heavy, 'shelf.isDry': 'unknown' })[0]).toBe('shelf.isDry');
  });

  test('what a told rating waits for comes before what is open, where it is exceeded', () => {
    const told = { ...heavy, boxes: [{ weight: '80 lb' }] };
    expect(asked(hung, { ...told, 'wall.bears': '60 lb' })[0]).toBe('wall.kind');
    expect(asked(hung, { ...told, 'wall.bears': '400 lb' })[0]).toBe('box.weight');
    expect(asked(hung, { ...told, 'wall.bears': 'unknown' })[0]).toBe('box.weight');
  });
});
