import { describe, expect, test } from 'vitest';
import { FormulaError } from './grammar/problem';
import { namesIn } from './kinds';
import { parseFormula } from './parse';

describe('a formula is read as one of a small closed set of kinds', () => {
  test.each([
    ['2.5', { kind: 'number', value: 2.5 }],
    ["'oak'", { kind: 'word', text: 'oak' }],
    ['shelf.rating', { kind: 'name', id: 'shelf.rating' }],
    ['axle.front.empty', { kind: 'name', id: 'axle.front.empty' }],
    ['unlimited', { kind: 'unlimited' }],
    ['-a.b', { kind: 'negative', of: { kind: 'name', id: 'a.b' } }],
    ['!a.b', { kind: 'not', of: { kind: 'name', id: 'a.b' } }],
    ['given(a.b, c.d)', { kind: 'given', names: ['a.b', 'c.d'] }],
    ['known(a.b)', { kind: 'known', names: ['a.b'] }],
    ['count(boxes)', { kind: 'count', list: 'boxes' }],
    ['needs(1, a.b)', { kind: 'needs', of: { kind: 'number', value: 1 }, names: ['a.b'] }],
  ])('%s', (text, wanted) => {
    expect(parseFormula(text)).toEqual(wanted);
  });

  test('times binds before plus, brackets before both, and minus runs from the left', () => {
    expect(parseFormula('1 + 2 * 3')).toMatchObject({ op: '+', b: { op: '*' } });
    expect(parseFormula('(1 + 2) * 3')).toMatchObject({ op: '*', a: { op: '+' } });
    expect(parseFormula('5 - 2 - 1')).toMatchObject({ op: '-', a: { op: '-' }, b: { value: 1 } });
    expect(parseFormula('8 / 2 / 2')).toMatchObject({ op: '/', a: { op: '/' }, b: { value: 2 } });
    expect(parseFormula('a.b > 1 && c.d < 2 || e.f == 3')).toMatchObject({
      kind: 'either',
      a: { kind: 'both' },
    });
  });

  test('a sum knows the list that it runs over', () => {
    expect(parseFormula('sum(boxes.weight * (1 - boxes.place / shelf.span))')).toMatchObject({
      kind: 'sum',
      list: 'boxes',
    });
  });

  test('the names a formula mentions are told once each, those in functions too', () => {
    const names = namesIn(
      parseFormula('choose(known(a.b), needs(c.d + a.b, e.f), count(boxes) * max(a.b, g.h))'),
    );
    expect([...names].toSorted()).toEqual(['a.b', 'boxes', 'c.d', 'e.f', 'g.h']);
  });
});

describe('what is no formula is refused, and the message names it', () => {
  test.each([
    '',
    '1 +',
    '(1',
    'a.b +* 2',
    'a.b % 2',
    'a.b ** 2',
    'a.b ? 1 : 2',
    'a[0]',
    "a['b']",
    'a.b = 3',
    'true',
    'null',
    'this',
    '[1, 2]',
    '1, 2',
    '1; 2',
    '~a.b',
    '+a.b',
    'sqrt(4)',
    'constructor(1)',
    'a.b(1)',
    'min(1)',
    'choose(a.b, 1)',
    'sum(1)',
    'sum(weight)',
    'sum(a.b, c.d)',
    'count(1)',
    'count(a, b)',
    'given()',
    'given(1)',
    'known(a.b + 1)',
    'needs(a.b)',
    'needs(a.b, 1)',
    'lookup(sag)',
    'between(a.b)',
    'between(a.b, 1, 2)',
    'lookup(1, 2)',
    'a.b === 1',
    'a.b & 1',
    '`text`',
  ])('%s', (text) => {
    expect(() => parseFormula(text)).toThrow(FormulaError);
    expect(() => parseFormula(text)).toThrow(`“${text}”`);
  });
});
