import { expect, test } from 'vitest';
import {
  isLesson,
  type Lesson,
  lessonFile,
  minutesOf,
  moved,
  newLesson,
  readLessonFile,
  readMinutes,
  toggled,
} from './lesson';

const item = (name: string, minutes = 8) => {
  return { topic: 'tow-fit', name, title: name, minutes, note: '' };
};
const lesson: Lesson = {
  ...newLesson(1e12),
  name: 'Week 1',
  learners: 'Ada\nBen',
  items: [item('one'), item('two', 12), item('three')],
};
const names = ({ items }: Lesson) => items.map(({ name }) => name);

test('cases go in at the end, out where they stand, and move without one being lost', () => {
  expect(names(toggled(lesson, item('four')))).toEqual(['one', 'two', 'three', 'four']);
  expect(names(toggled(lesson, item('two')))).toEqual(['one', 'three']);
  expect(names(moved(lesson, 2, 0))).toEqual(['three', 'one', 'two']);
  expect(moved(lesson, 0, 3)).toBe(lesson);
  expect(moved(lesson, 0, -1)).toBe(lesson);
  expect(minutesOf(lesson)).toBe(28);
});

test('minutes are whole and within a day’s work; anything else is told with what would be right', () => {
  expect(readMinutes(' 12 ')).toBe(12);
  for (const wrong of ['', '0', '1.5', '241', 'ten', '-3']) {
    expect(readMinutes(wrong)).toContain('write a whole number from 1 to 240');
  }
});

test('a lesson is passed on with the cases of one’s own that it walks, and without anybody’s name', () => {
  const own = { topic: 'tow-fit', name: 'two', text: '---\ntitle: two\n---\n', at: 1 };
  const file = lessonFile(lesson, [own, { ...own, name: 'other' }]);
  expect(JSON.stringify(file)).not.toContain('Ada');
  expect(file.cases).toEqual([own]);
  expect(readLessonFile('week.json', JSON.stringify(file))).toEqual(file);
});

test('a file that is no lesson is told in one sentence, and a damaged one is not taken in by half', () => {
  const file = lessonFile(lesson, []);
  for (const [text, says] of [
    ['{', 'cannot be read as JSON'],
    ['null', 'is no lesson'],
    ['{"kind":"tarebook-everything"}', 'under “Open such a file”'],
    [JSON.stringify({ ...file, version: 2 }), 'version 2'],
    [JSON.stringify({ ...file, lesson: { ...lesson, items: [{}] } }), 'nothing of it was taken in'],
    [JSON.stringify({ ...file, cases: [1] }), 'nothing of it was taken in'],
  ] as const) {
    expect(readLessonFile('week.json', text)).toContain(says);
  }
  expect(isLesson({ ...lesson, items: undefined })).toBe(false);
});
