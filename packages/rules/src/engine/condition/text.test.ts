import { expect, test } from 'vitest';
import { conditionFrom } from './text';

test('a condition reads as it is written and comes out as the JSON that a rules engine takes', () => {
  expect(conditionFrom("a.share < a.least && (b.kind == 'oak' || !c.braced) && d.told")).toEqual({
    all: [
      { fact: 'a.share', operator: 'lessThan', value: { fact: 'a.least' } },
      {
        any: [
          { fact: 'b.kind', operator: 'equal', value: 'oak' },
          { fact: 'c.braced', operator: 'equal', value: 'no' },
        ],
      },
      { fact: 'd.told', operator: 'equal', value: 'yes' },
    ],
  });
});

test('one comparison stands in a group of its own, as the engine wants it', () => {
  expect(conditionFrom('a.b >= c.d')).toEqual({
    all: [{ fact: 'a.b', operator: 'greaterThanInclusive', value: { fact: 'c.d' } }],
  });
});

test.each([
  ['a.share < 5', 'reckoned-in-condition'],
  ['a.b + c.d > e.f', 'reckoned-in-condition'],
  ['a.b + c.d', 'not-a-condition'],
  ['!(a.b && c.d)', 'reckoned-in-condition'],
])('%s is refused: a condition compares what has a name', (text, code) => {
  expect(() => conditionFrom(text)).toThrow(expect.objectContaining({ message: text, code }));
});

test('one of several words is asked in one comparison, certain whichever it is', () => {
  expect(conditionFrom("a.kind == 'oak' || a.kind == 'ash' || b.told")).toEqual({
    any: [
      { fact: 'a.kind', operator: 'in', value: ['oak', 'ash'] },
      { fact: 'b.told', operator: 'equal', value: 'yes' },
    ],
  });
});
