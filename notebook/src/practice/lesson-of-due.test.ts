import { expect, test } from 'vitest';
import { lessonOfDue } from './lesson-of-due';

test('a lesson of what comes back walks each case once, for whoever missed any of them', () => {
  const of = { topic: 'tow-fit', name: 'x', title: 'X', exercise: 'predict', due: 0 } as const;
  const { items, learners, name } = lessonOfDue(
    [
      { ...of, learner: 'Ada' },
      { ...of, learner: 'Ben' },
      { ...of, learner: 'Ada', name: 'y', title: 'Y', exercise: 'spot' },
    ],
    0,
  );
  expect(items.map(({ title, exercise }) => [title, exercise])).toEqual([
    ['X', undefined],
    ['Y', 'spot'],
  ]);
  expect(learners).toBe('Ada\nBen');
  expect(name).toBe('What comes back, 1970-01-01');
});
