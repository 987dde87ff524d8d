import { describe, expect, test } from 'vitest';
import type { Formula, Simulation, Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';
import { defineTopic } from './define';
import { sayProblem } from './messages';
import { checkTopic } from './topic';

const told = (
  is: string,
  more: Partial<Formula> = {},
  parameters: Topic['parameters'] = {},
): string => {
  const topic: Topic = defineTopic<Topic>({
    ...shelf,
    parameters: { ...shelf.parameters, ...parameters },
    formulas: { ...shelf.formulas, 'shelf.tried': { ...formula(is), ...more } },
  });
  return checkTopic(topic).map(sayProblem).join('\n');
};

describe('what says between what it lies needs no more', () => {
  test.each([
    'choose(known(shelf.rating), shelf.rating, between(0, 40 * box.weight))',
    'choose(known(shelf.rating), shelf.rating, unlimited)',
    'choose(known(shelf.rating), shelf.rating / 2, max(shelf.rating, box.weight))',
    'choose(known(shelf.rating), box.weight, needs(box.weight, shelf.rating))',
    // A limit that nobody told is left out, and what is told only narrows.
    'choose(given(shelf.rating), min(shelf.rating, box.weight), box.weight)',
    // What takes the place of one fact is within what that may be.
    'choose(given(shelf.rating), shelf.rating, box.weight / 2)',
    'choose(!given(shelf.rating), box.weight, shelf.rating)',
  ])('%s', (is) => {
    expect(told(is)).toBe('');
  });

  test('rows are counted, and something is switched on', () => {
    expect(told('sum(choose(known(boxes.place), 1, 0))', { unit: '' })).toBe('');
  });
});

describe('what takes something else for what was not told says within what it stays', () => {
  test('in a row', () => {
    const is = 'sum(boxes.weight * choose(known(boxes.place), boxes.place / shelf.span, 1))';
    expect(told(is)).toMatch(
      /shelf.tried: it takes something else where boxes.place is not told; say `within: \[least, most\]`/,
    );
  });

  test('for a part of what it is reckoned from', () => {
    const is = 'choose(given(shelf.rating), shelf.rating * 2, box.weight)';
    expect(told(is)).toMatch(/where shelf.rating is not told/);
    expect(told(is, { within: ['0', 'unlimited'] })).toBe('');
  });

  test('what stands in for a fact is something that the fact may be', () => {
    const usual = (value: number) => {
      const parameter = {
        label: 'Usual',
        unit: 'lb',
        values: [{ from: '2020-01-01', value }],
        source,
      };
      return told(
        'choose(given(shelf.rating), shelf.rating, shelf.usual)',
        {},
        { 'shelf.usual': parameter },
      );
    };
    expect(usual(200)).toBe('');
    expect(usual(1200)).toMatch(
      /what stands in for shelf.rating is never within 0 to 1000 lb, which that may be/,
    );
  });
});

describe('a declared range is tried', () => {
  const is = 'choose(given(shelf.rating), shelf.rating / 2, box.weight)';

  test('what is taken lies in it', () => {
    expect(told(is, { within: ['2 * box.weight', 'unlimited'] })).toMatch(
      /untold it is taken for [\d.]+ lb to [\d.]+ lb, outside of [\d.]+ lb to Infinity lb/,
    );
  });

  test('and whatever is told later', () => {
    expect(told(is, { within: ['0', '2 * box.weight'] })).toMatch(
      /what is told does not prove that it stays within 0 lb to [\d.]+ lb: with shelf.rating [\d.]+ lb it is/,
    );
  });

  test('one that is anything at all says nothing', () => {
    expect(told(is, { within: ['-unlimited', 'unlimited'] })).toMatch(
      /shelf.tried: it says `within`, and that is anything at all/,
    );
  });

  test('it has the unit of the formula, and names what there is', () => {
    expect(told(is, { within: ['0', 'shelf.span'] })).toMatch(/shelf.tried within: .*joins/);
    expect(told(is, { within: ['0', 'shelf.raiting'] })).toMatch(/there is no “shelf.raiting”/);
  });

  test('it stands where something falls back', () => {
    expect(told('box.weight * 2', { within: ['0', 'unlimited'] })).toMatch(/falls back on nothing/);
  });
});

describe('an assumption may stand in, and is said with the answer', () => {
  const is = 'choose(given(shelf.rating), shelf.rating / 2, box.weight)';
  const saidOf = (assumes: string, when: string, of = is): string =>
    checkTopic({
      ...shelf,
      formulas: {
        ...shelf.formulas,
        'shelf.tried': { ...formula(of), assumes },
        'assumed.strength': { ...formula(when), unit: 'yes-no' },
      },
      assumptions: [
        { when: 'assumed.strength', says: 'The shelf is as strong as the box is heavy.', source },
      ],
    })
      .map(sayProblem)
      .join('\n');

  test('one that holds where the fact is not told', () => {
    expect(saidOf('assumed.strength', '!given(shelf.rating)')).not.toMatch(/shelf.tried/);
  });

  test('and no other', () => {
    expect(saidOf('assumed.strength', 'given(shelf.rating)')).toMatch(
      /“assumed.strength” never holds where shelf.rating is not told/,
    );
    expect(saidOf('assumed.nothing', '!given(shelf.rating)')).toMatch(
      /no assumption is said of “assumed.nothing”/,
    );
    expect(saidOf('assumed.strength', '!given(shelf.rating)', 'box.weight * 2')).toMatch(
      /says `assumes` and falls back on nothing/,
    );
  });

  test('a fact whose silence is said stands for itself alone', () => {
    const boxes = 'choose(given(boxes), sum(boxes.weight), box.weight)';
    expect(saidOf('boxes', '!given(shelf.rating)', boxes)).not.toMatch(/shelf.tried/);
    expect(saidOf('boxes', '!given(shelf.rating)')).toMatch(
      /what is taken where shelf.rating is not told is not what is said of boxes/,
    );
  });
});

describe('what a simulation reckons is looked at as well', () => {
  const falling = 'choose(given(shelf.rating), shelf.rating / 2, box.weight)';
  const day = (within?: readonly [string, string]): Simulation => ({
    label: 'A day',
    steps: 3,
    states: {
      'day.left': {
        label: 'Left',
        unit: 'lb',
        start: 'box.weight',
        next: 'day.left - day.taken',
        source,
      },
    },
    values: {
      'day.taken': { label: 'Taken', unit: 'lb', is: falling, ...(within && { within }), source },
    },
    source,
  });
  const toldOf = (simulation: Simulation): string =>
    checkTopic({
      ...shelf,
      formulas: { ...shelf.formulas, 'shelf.left': formula('lastOf(day, day.left)') },
      simulations: { day: simulation },
    })
      .map(sayProblem)
      .join('\n');

  test('it says within what it stays, and that is tried at every step', () => {
    expect(toldOf(day())).toMatch(/simulations day day.taken: .* where shelf.rating is not told/);
    expect(toldOf(day(['0', 'unlimited']))).not.toMatch(/day.taken/);
    expect(toldOf(day(['0', 'box.weight / 2']))).toMatch(/day.taken: untold it is taken for/);
  });

  test('what a state begins with, and what it becomes', () => {
    const states = (start: string, next: string): Simulation => ({
      ...day(['0', 'unlimited']),
      states: { 'day.left': { label: 'Left', unit: 'lb', start, next, source } },
    });
    expect(toldOf(states(falling, 'day.left - day.taken'))).toMatch(/day.left: .* is not told/);
    expect(toldOf(states('box.weight', `day.left - ${falling} - day.taken`))).toMatch(
      /day.left: .* is not told/,
    );
  });
});
