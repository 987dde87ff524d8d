import { describe, expect, test } from 'vitest';
import type { Fact } from '../define/shapes';
import { shelf, source } from '../define/small-topic.fixture';
import type { NumberInput } from '../value/values';
import { readFacts } from './facts';
import { sayProblem } from './messages';

const words = { label: 'A box', ask: 'How heavy?', where: 'scale' };
const weight: Fact = { ...words, kind: 'quantity', unit: 'lb', least: 0, most: 500 };
const count: Fact = { ...weight, unit: '', most: 12 };
const charge: Fact = { ...weight, unit: '%', most: 100 };
const list: Fact = {
  ...words,
  kind: 'rows',
  columns: { weight: { label: 'Weight', unit: 'lb', least: 0, most: 500, required: true } },
  silent: { value: 'none', says: 'No boxes.', source },
};
const topic = { ...shelf, facts: { weight, count, charge, list } };

function read(facts: Readonly<Record<string, unknown>>) {
  const { inputs, problems } = readFacts(topic, facts);
  return { inputs, problems, says: problems.map(sayProblem) };
}
function numberOf(fact: string, given: unknown): NumberInput {
  const { inputs, says } = read({ [fact]: given });
  expect(says).toEqual([]);
  const input = inputs.get(fact);
  if (input?.kind !== 'number') throw new Error('no number');
  return input;
}

describe('a number with its unit is accepted as data', () => {
  test.each([
    [{ value: 50, unit: 'lb' }, 50, 50],
    [{ value: 10, unit: 'kg' }, 22.046226, 22.046226],
    [{ lo: 50, hi: 60, unit: 'lb' }, 50, 60],
    [{ lo: 50, hi: null, unit: 'lb' }, 50, 500],
    [{ lo: null, hi: 60, unit: 'lb' }, 0, 60],
  ])('%o', (given, lo, hi) => {
    const input = numberOf('weight', given);
    expect([input.lo, input.hi, input.status, input.open]).toEqual([
      expect.closeTo(lo, 5),
      expect.closeTo(hi, 5),
      'known',
      false,
    ]);
    expect(read({ list: [{ label: 'A box', weight: given }] }).says).toEqual([]);
  });

  test.each([2, { value: 2, unit: '' }, { value: 2, unit: '1' }, '2'])('%o as a count', (given) => {
    expect(numberOf('count', given)).toMatchObject({ lo: 2, hi: 2 });
  });

  test('two open ends are nothing known', () => {
    expect(numberOf('weight', { lo: null, hi: null, unit: 'lb' })).toMatchObject({
      status: 'unknown',
      open: true,
    });
  });

  const wanted =
    'text such as “1,250 lb”, { value, unit } or { lo, hi, unit } with numbers and a unit';
  test.each([
    [50, 'no-unit', '50', 'a number with its unit, such as “1,250 lb”'],
    [{ value: 50, unit: '' }, 'no-unit', '50', 'a number with its unit, such as “1,250 lb”'],
    [{ value: 50, unit: 'gal' }, 'wrong-unit', '50 gal', 'a weight, as “1,250 lb” is'],
    [
      { value: 50, unit: 'pond' },
      'no-such-unit',
      'pond',
      'a number with its unit, such as “1,250 lb”',
    ],
    [
      { lo: 60, hi: 50, unit: 'lb' },
      'back-to-front',
      '60–50 lb',
      'a number with its unit, such as “1,250 lb”',
    ],
    [{ value: 501, unit: 'lb' }, 'out-of-range', '501 lb', '0–500 lb'],
    [{ value: Number.NaN, unit: 'lb' }, 'not-plain', "{ value: NaN, unit: 'lb' }", wanted],
    [{ value: '50', unit: 'lb' }, 'not-plain', "{ value: '50', unit: 'lb' }", wanted],
    [{ value: 50 }, 'not-plain', '{ value: 50 }', wanted],
    [
      { value: 50, lo: 40, hi: 60, unit: 'lb' },
      'not-plain',
      "{ value: 50, lo: 40, hi: 60, unit: 'lb' }",
      wanted,
    ],
    [{ lo: 50, unit: 'lb' }, 'not-plain', "{ lo: 50, unit: 'lb' }", wanted],
    [Infinity, 'not-plain', 'Infinity', wanted],
    [null, 'not-plain', 'null', wanted],
    [true, 'not-plain', 'true', wanted],
    [[], 'not-plain', 'a list', wanted],
  ])('%o is refused with what was found and what would be right', (given, code, found, right) => {
    expect(read({ weight: given }).problems).toEqual([
      expect.objectContaining({ code, fact: 'weight', found, wanted: right }),
    ]);
    expect(read({ list: [{ weight: '1 lb' }, { weight: given }] }).problems).toEqual([
      expect.objectContaining({
        code,
        fact: 'list',
        row: 2,
        column: 'Weight',
        found,
        wanted: right,
      }),
    ]);
  });

  test('a row that is none is told with its number', () => {
    expect(read({ list: [{ weight: '1 lb' }, 7] }).says).toEqual([
      '`list`, row 2: 7 cannot be read; give its cells by column, weight.',
    ]);
    expect(read({ list: { weight: '1 lb' } }).says).toEqual([
      "`list` is a list, and “{ weight: '1 lb' }” is none; give rows with the columns weight.",
    ]);
  });
});

describe('what people say around a number', () => {
  test('about is five percent either way, and never beyond what can be', () => {
    expect(numberOf('weight', 'about 100 lb')).toMatchObject({ lo: 95, hi: 105 });
    expect(numberOf('weight', '~490#')).toMatchObject({ lo: 465.5, hi: 500 });
    const { lo, hi } = numberOf('charge', 'about 98 %');
    expect([lo, hi]).toEqual([expect.closeTo(0.931, 9), 1]);
    expect(read({ weight: 'about 600 lb' }).problems).toMatchObject([{ code: 'out-of-range' }]);
  });

  test('a bound reaches as far as the fact can', () => {
    expect(numberOf('weight', 'at least 80 lb')).toMatchObject({ lo: 80, hi: 500, bound: 'least' });
    expect(numberOf('weight', 'at most 80 lb')).toMatchObject({ lo: 0, hi: 80, bound: 'most' });
    expect(read({ weight: 'at least 501 lb' }).says).toEqual([
      '`weight`: 501 lb is outside what it can be, 0–500 lb.',
    ]);
    expect(read({ weight: 'at most -1 lb' }).problems).toMatchObject([{ code: 'out-of-range' }]);
    expect(read({ weight: 'at least 80' }).problems).toMatchObject([{ code: 'no-unit' }]);
  });
});
