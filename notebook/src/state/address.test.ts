import { expect, test } from 'vitest';
import { caseAddress, readAddress } from './address';

test('every fixed address leads to its page, and any other to the first', () => {
  expect(readAddress('#/case/tow-fit/a-b')).toEqual({
    page: 'case',
    topic: 'tow-fit',
    name: 'a-b',
  });
  expect(readAddress('#/case/note/a-b')).toEqual({ page: 'note', name: 'a-b' });
  expect(readAddress('#/rules/tow-fit')).toEqual({ page: 'topic', topic: 'tow-fit' });
  for (const page of ['today', 'cases', 'class', 'questions', 'yard', 'rules']) {
    expect(readAddress(`#/${page}`)).toEqual({ page });
  }
  for (const strange of ['', '#', '#/nowhere', '#/case/only-topic', '#/%E0%A4%A']) {
    expect(readAddress(strange)).toEqual({ page: 'today' });
  }
});

test('an address survives writing and reading, whatever the name', () => {
  const name = 'mine 1/2 é';
  expect(readAddress(caseAddress('tow-fit', name))).toEqual({
    page: 'case',
    topic: 'tow-fit',
    name,
  });
});
