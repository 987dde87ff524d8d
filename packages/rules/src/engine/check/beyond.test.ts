import { describe, expect, test } from 'vitest';
import type { Decision, Simulation, Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';
import { findingOf } from '../define/topic';
import { defineTopic } from './define';
import { sayProblem } from './messages';
import { checkTopic } from './topic';

const told = (topic: Topic): string => checkTopic(topic).map(sayProblem).join('\n');

const wood: Decision = {
  label: 'Wood',
  hit: 'unique',
  on: ['shelf.kind', 'shelf.braced'],
  rows: [
    { when: ['oak', '-'], gives: 'good' },
    { when: ['pine', 'yes'], gives: 'good' },
    { when: ['pine', 'no'], gives: 'bad' },
  ],
  results: {
    good: { label: 'Good', says: 'It is good.', level: 'ok' },
    bad: { label: 'Bad', says: 'It is bad.', level: 'stop' },
  },
  source,
};

const deciding = (decision: Decision): Topic =>
  defineTopic<Topic>({
    ...shelf,
    decisions: { 'wood.grade': decision },
    findings: { ...shelf.findings, 'wood-grade': findingOf('wood.grade', decision) },
  });

test('a sound decision has nothing told against it', () => {
  expect(told(deciding(wood))).toBe('');
});

const [oak, braced, bare] = wood.rows;
if (!oak || !braced || !bare) throw new Error('The table is not as these tests have it.');

describe('a decision table is refused', () => {
  test.each<readonly [string, Partial<Decision>, RegExp]>([
    ['that leaves a combination out', { rows: [oak, bare] }, /no row fits pine, yes/],
    [
      'whose rows overlap under unique',
      { rows: [...wood.rows, { when: ['-', 'yes'], gives: 'good' }] },
      /overlaps another|never reached/,
    ],
    [
      'with a row in the shadow of another',
      { hit: 'first', rows: [...wood.rows, { when: ['oak', 'yes'], gives: 'bad' }] },
      /row 4 is never reached/,
    ],
    ['that looks at a number', { on: ['shelf.rating', 'shelf.braced'] }, /looks at “shelf.rating”/],
    [
      'with a word that is no option',
      { rows: [{ when: ['elm', '-'], gives: 'good' }, ...wood.rows] },
      /says “elm” under shelf.kind/,
    ],
    [
      'with too few entries in a row',
      { rows: [{ when: ['oak'], gives: 'good' }, braced, bare] },
      /1 entries/,
    ],
    [
      'that comes to a result it lacks',
      { rows: [{ ...oak, gives: 'fine' }, braced, bare] },
      /“fine”/,
    ],
    [
      'with a result no row comes to',
      { rows: [oak, braced, { ...bare, gives: 'good' }] },
      /no row comes to “bad”/,
    ],
  ])('%s', (_, change, message) => {
    expect(told(deciding({ ...wood, ...change }))).toMatch(message);
  });
});

const day: Simulation = {
  label: 'Day',
  steps: 24,
  states: {
    'day.load': {
      label: 'Load',
      unit: 'lb',
      start: 'box.weight',
      next: 'day.load - day.lost',
      source,
    },
  },
  values: { 'day.lost': { label: 'Lost', unit: 'lb', is: 'day.load * shelf.share', source } },
  source,
};

const simulating = (simulation: Simulation): Topic =>
  defineTopic<Topic>({
    ...shelf,
    simulations: { day: simulation },
    formulas: { ...shelf.formulas, 'end.load': formula('lastOf(day, day.load)') },
  });

test('a sound simulation has nothing told against it', () => {
  expect(told(simulating(day))).toBe('');
});

describe('a simulation is refused', () => {
  const load = day.states['day.load'];
  if (!load) throw new Error('The simulation is not as these tests have it.');
  test.each<readonly [string, Partial<Simulation>, RegExp]>([
    [
      'whose step clashes in units',
      { states: { 'day.load': { ...load, next: 'day.load + shelf.span' } } },
      /joins weight with length/,
    ],
    [
      'over a list that is none',
      { steps: 'shelf.kind' },
      /simulations day steps: it names “shelf.kind”, which is no list/,
    ],
    [
      'that reads itself from outside',
      { states: { 'day.load': { ...load, start: 'end.load' } } },
      /circle/,
    ],
    [
      'whose values are not under its name',
      { values: { 'night.lost': { label: 'x', unit: 'lb', is: 'box.weight', source } } },
      /begin its name with “day\.”/,
    ],
  ])('%s', (_, change, message) => {
    expect(told(simulating({ ...day, ...change }))).toMatch(message);
  });
});

test('a table of words must have a number for every option of the choice', () => {
  const topic: Topic = defineTopic<Topic>({
    ...shelf,
    wordTables: { strength: { label: 'Strength', valueUnit: 'lb', values: { oak: 9 }, source } },
    formulas: { ...shelf.formulas, 'kind.holds': formula('pick(strength, shelf.kind)') },
  });
  expect(told(topic)).toMatch(/nothing for “pine”/);
});

test('what is chosen, and what it weighs, must be named values', () => {
  const item = { label: 'Box', amounts: { weight: 'no.such' }, because: 'It is asked.', source };
  const topic: Topic = defineTopic<Topic>({
    ...shelf,
    selections: {
      kit: {
        label: 'Kit',
        amounts: { weight: 'lb' },
        items: { box: { ...item, when: 'shelf.kind' } },
        source,
      },
    },
  });
  expect(told(topic)).toMatch(
    /selections kit.box when: it names “shelf.kind”, which is no yes\/no/,
  );
  expect(told(topic)).toMatch(/selections kit.box: there is no “no.such”/);
});

test('a ranking compares values of one unit', () => {
  const of = {
    load: { by: 'load.total', says: 'the load' },
    span: { by: 'shelf.span', says: 'the span' },
  };
  const topic: Topic = defineTopic<Topic>({
    ...shelf,
    rankings: { most: { label: 'Most', first: 'most', of, source } },
  });
  expect(told(topic)).toMatch(/compares lb, in/);
});
