import { expect, test } from 'vitest';
import { answerNow } from '../answer/answer';
import { defineTopic } from '../check/define';
import { checkTopic } from '../check/topic';
import type { Topic } from '../define/shapes';
import { formula, shelf, source } from '../define/small-topic.fixture';

/** What a code stands for: a table whose key is a plain count. */
const coded: Topic = defineTopic<Topic>({
  ...shelf,
  tables: {
    ...shelf.tables,
    grade: {
      label: 'What each grade carries',
      keyUnit: '',
      valueUnit: 'kg',
      rows: [
        [0, 100],
        [1, 150],
        [2, 400],
      ],
      source,
    },
  },
  formulas: {
    ...shelf.formulas,
    'grade.carries': formula('lookup(grade, whole(count(boxes)))'),
    'grade.between': formula('lookup(grade, count(boxes))'),
  },
});

test('a table may have a count for its key, and its values keep their unit', () => {
  expect(checkTopic(coded)).toEqual([]);
  const facts = { boxes: [{ weight: '1 lb' }] };
  const { values } = answerNow(coded, { facts });
  expect(values['grade.carries']?.lo).toBeCloseTo(150 / 0.45359237, 5);
});

test('a count is no length, and a length no count', () => {
  const made = (is: string): Topic =>
    defineTopic<Topic>({
      ...coded,
      formulas: { ...coded.formulas, 'grade.between': formula(is) },
    });
  expect(checkTopic(made('lookup(grade, shelf.span)'))).not.toEqual([]);
  expect(checkTopic(made('lookup(sag, count(boxes))'))).not.toEqual([]);
});
