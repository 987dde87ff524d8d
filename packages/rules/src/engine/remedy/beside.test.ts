import { expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { remedies } from './remedies';

const asOf = '2026-11-01';
const box = shelf.limits['all-boxes'];
if (!box) throw new Error('The shelf has lost its limit.');
const { source } = box;

/** The shelf, from which boxes can be taken. */
const lighter: Topic = defineTopic<Topic>({
  ...shelf,
  changes: [
    {
      kind: 'less',
      fact: 'box.weight',
      step: 1,
      says: 'Take {amount} out of the box.',
      asks: 1,
      source,
    },
  ],
});

/** Another question about the same box: whether enough stands in it to hold the tent down. */
const ballast: Topic = defineTopic<Topic>({
  ...shelf,
  id: 'ballast',
  title: 'Ballast',
  limits: {},
  parameters: {
    ...shelf.parameters,
    'ballast.least': {
      label: 'Least ballast',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 105 }],
      source,
    },
  },
  findings: {
    'too-light': {
      label: 'Ballast',
      askedBy: ['box.weight'],
      stop: { when: 'box.weight < ballast.least', wrong: 'The tent flies off.' },
      otherwise: 'It holds the tent.',
      source,
    },
  },
});

const facts = { 'shelf.kind': 'oak', 'shelf.rating': '100 lb', 'box.weight': '112 lb' };

test('a change that makes another question’s answer worse is not offered, and it is told why', () => {
  const alone = remedies(lighter, { facts, asOf });
  expect(alone.remedies.length).toBeGreaterThan(0);
  const both = remedies(lighter, { facts, asOf }, [lighter, ballast]);
  expect(both.remedies).toEqual([]);
  expect(both.noHelp.map(({ says }) => says).join(' ')).toContain('Ballast (Ballast)');
});

test('a topic that asks for none of the facts has no say', () => {
  const other: Topic = defineTopic<Topic>({ ...ballast, facts: {}, findings: {} });
  const found = remedies(lighter, { facts, asOf }, [other]);
  expect(found.remedies).toEqual(remedies(lighter, { facts, asOf }).remedies);
});
