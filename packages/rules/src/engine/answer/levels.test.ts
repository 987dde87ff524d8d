import { describe, expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { FactsGiven } from '../check/given';
import type { Level, State, Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';
import { answerNow } from './answer';
import { levelOf, overall } from './levels';

const holding = (certain: readonly string[], possible: readonly string[]) => ({
  certain: new Set(certain.map((level) => `limit.x.${level}`)),
  possible: new Set([...certain, ...possible].map((level) => `limit.x.${level}`)),
});

describe('the level of a limit or finding, from what holds for sure and what may', () => {
  test.each<[readonly string[], readonly string[], Level]>([
    [[], [], 'ok'],
    [['stop'], [], 'stop'],
    [[], ['stop'], 'unknown'],
    [['care'], [], 'care'],
    [[], ['care'], 'care'],
    [[], ['if'], 'if'],
    [[], ['unknown'], 'unknown'],
    [['care'], ['if'], 'if'],
    [['care', 'if'], ['unknown'], 'unknown'],
    [['if'], ['stop'], 'unknown'],
    [['stop', 'care'], ['unknown'], 'stop'],
  ])('surely %j, perhaps %j: %s', (certain, possible, level) => {
    expect(levelOf('limit.x', holding(certain, possible))).toBe(level);
  });

  test('a stop that may be counts as the finding says, unless something graver may be', () => {
    expect(levelOf('limit.x', holding([], ['stop']), { stopOpen: 'if' })).toBe('if');
    expect(levelOf('limit.x', holding(['care'], ['stop']), { stopOpen: 'if' })).toBe('if');
    expect(levelOf('limit.x', holding([], ['stop', 'unknown']), { stopOpen: 'care' })).toBe(
      'unknown',
    );
    expect(levelOf('limit.x', holding(['stop'], []), { stopOpen: 'care' })).toBe('stop');
  });

  test('with another way of using the rig it stops only where it would that way, too', () => {
    expect(levelOf('limit.x', holding(['stop'], []), { relieved: true })).toBe('unknown');
    expect(levelOf('limit.x', holding(['stop'], ['firm']), { relieved: true })).toBe('unknown');
    expect(levelOf('limit.x', holding(['stop', 'firm'], []), { relieved: true })).toBe('stop');
  });
});

describe('the gravest decides', () => {
  test.each<[readonly State[], Level]>([
    [[], 'unknown'],
    [['not-asked', 'not-asked'], 'unknown'],
    [['ok', 'not-asked'], 'ok'],
    [['ok', 'care'], 'care'],
    [['if', 'care'], 'if'],
    [['unknown', 'if', 'care'], 'unknown'],
    [['unknown', 'stop', 'ok'], 'stop'],
  ])('%j: %s', (states, level) => {
    expect(overall(states)).toBe(level);
  });
});

/** The shelf with one finding more, which is asked in three ways at once. */
const asked: Topic = defineTopic<Topic>({
  ...shelf,
  formulas: {
    ...shelf.formulas,
    'shelf.isWide': formula('shelf.span > shelf.wide', 'yes-no'),
  },
  parameters: {
    ...shelf.parameters,
    'shelf.wide': {
      label: 'Wide',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 30 }],
      source,
    },
  },
  findings: {
    ...shelf.findings,
    lid: {
      label: 'Lid',
      askedBy: ['box.lid', 'box.weight'],
      askedByKnown: ['shelf.rating', 'shelf.share'],
      askedWhen: 'shelf.isWide',
      stop: { when: "shelf.kind == 'pine'", wrong: 'It bends.' },
      otherwise: 'It holds.',
      source,
    },
  },
});

const whole: FactsGiven = {
  'shelf.kind': 'pine',
  'shelf.rating': '400 lb',
  'shelf.share': '10 %',
  'shelf.span': '40 in',
  'box.weight': '20 lb',
  'box.lid': '1 lb',
};

describe('what is asked at all', () => {
  const levelWith = (more: FactsGiven, without: readonly string[] = []) => {
    const facts = Object.fromEntries(
      Object.entries({ ...whole, ...more }).filter(([id]) => !without.includes(id)),
    );
    const { findings } = answerNow(asked, { facts, asOf: '2026-11-01' });
    return findings.find(({ id }) => id === 'lid')?.level;
  };

  test('any of what asks it, each of what must be known, and where it may hold', () => {
    expect(levelWith({})).toBe('stop');
    expect(levelWith({}, ['box.lid'])).toBe('stop');
    expect(levelWith({}, ['box.lid', 'box.weight'])).toBe('not-asked');
    expect(levelWith({ 'shelf.share': 'unknown' })).toBe('not-asked');
    expect(levelWith({}, ['shelf.rating'])).toBe('not-asked');
    expect(levelWith({ 'shelf.span': '20 in' })).toBe('not-asked');
    // While it is not sure that it is asked, its stop is none.
    expect(levelWith({ 'shelf.span': '20–40 in' })).toBe('unknown');
    expect(levelWith({ 'shelf.kind': 'oak' })).toBe('ok');
  });
});
