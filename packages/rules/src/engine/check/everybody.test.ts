import { describe, expect, test } from 'vitest';
import type { ForEverybody, Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { defineTopic } from './define';
import { sayProblem } from './messages';
import { checkTopic } from './topic';

const any: ForEverybody = {
  rule: 'A shelf holds what it is made for.',
  because: 'Wood gives way.',
  look: ['shelf.rating', 'shelf.kind'],
  given: { 'box.weight': '40 lb', 'box.lid': '= load.total' },
  clauses: {
    'shelf.rating': 'the shelf says {value}',
    'shelf.kind': { oak: 'it is of oak', pine: 'it is of pine' },
    'shelf.braced': { yes: 'it is braced', no: 'it is not' },
  },
  worked: { says: '{load.total} are on it.', given: { 'box.weight': '40 lb' } },
  fromTold: [{ says: '{load.total} it is.', given: { 'box.weight': '10 lb' } }],
  otherwise: 'Leave it empty.',
};

const told = (more: object): string => {
  const topic: Topic = defineTopic<Topic>({ ...shelf, everybody: { any: { ...any, ...more } } });
  return checkTopic(topic).map(sayProblem).join('\n');
};

test('what is right is not told', () => {
  expect(told({})).toBe('');
});

describe('what would take a branch or a sentence away is told', () => {
  test.each<[string, object, RegExp]>([
    [
      'a fact that is presumed',
      { given: { 'box.wieght': '40 lb' } },
      /any given: it names “box.wieght”, which is no fact; .*Did you mean `box.weight`/,
    ],
    [
      'an option that is presumed',
      { given: { 'shelf.kind': 'ash' } },
      /any given shelf.kind`: “ash” is not one of oak, pine/,
    ],
    ['a unit', { given: { 'box.weight': '40 in' } }, /any given box.weight`: “40 in” is not/],
    [
      'a result that something follows from',
      { given: { 'box.weight': '= load.totl' } },
      /any given box.weight: there is no “load.totl”.*Did you mean `load.total`/,
    ],
    [
      'a fact of a clause',
      { clauses: { 'shelf.knd': { oak: 'of oak' } } },
      /clauses: it names “shelf.knd”, which is no fact; .*Did you mean `shelf.kind`/,
    ],
    [
      'an option of a clause',
      { clauses: { 'shelf.kind': { oka: 'of oak' } } },
      /clauses: “oka” is no option of shelf.kind; .*Did you mean `oak`/,
    ],
    [
      'a yes or no of a clause',
      { clauses: { 'shelf.braced': { yep: 'braced' } } },
      /“yep” is no option of shelf.braced/,
    ],
    [
      'a clause of a figure without it',
      { clauses: { 'shelf.rating': 'the shelf is rated' } },
      /clause of shelf.rating has no “\{value\}”/,
    ],
    [
      'options of a figure',
      { clauses: { 'shelf.rating': { high: 'strong' } } },
      /clause of shelf.rating has no “\{value\}”/,
    ],
    [
      'a fact of a worked figure',
      { worked: { says: '{load.total}', given: { 'box.wight': '1 lb' } } },
      /any worked: it names “box.wight”, which is no fact/,
    ],
    [
      'a worked figure that nothing gives',
      { worked: { says: '{load.total} of {shelf.rating}', given: { 'box.weight': '1 lb' } } },
      /any worked: it is never said, since “\{shelf.rating\}” does not follow/,
    ],
    [
      'a value of what is made of what was told',
      { fromTold: [{ says: '{load.total}', given: { 'box.weight': 'heavy' } }] },
      /any fromTold 1 box.weight`: “heavy” cannot be read/,
    ],
  ])('%s', (_, more, message) => {
    expect(told(more)).toMatch(message);
  });
});
