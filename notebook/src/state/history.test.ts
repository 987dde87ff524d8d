import { expect, test } from 'vitest';
import { begin, canRedo, canUndo, change, current, redo, undo } from './history';

test('typing in one field is taken back in one step, and comes again', () => {
  let h = begin('a');
  h = change(h, 'ab', 'payload', 1000);
  h = change(h, 'abc', 'payload', 1300);
  expect(h.texts).toEqual(['a', 'abc']);
  h = undo(h);
  expect(current(h)).toBe('a');
  expect(canUndo(h)).toBe(false);
  expect(canRedo(h)).toBe(true);
  expect(current(redo(h))).toBe('abc');
});

test('another field, or a pause, is another step', () => {
  let h = change(begin('a'), 'ab', 'payload', 1000);
  h = change(h, 'abc', 'tongue', 1100);
  h = change(h, 'abcd', 'tongue', 9000);
  expect(h.texts).toEqual(['a', 'ab', 'abc', 'abcd']);
});

test('a change after undo drops what had been taken back', () => {
  let h = change(change(begin('a'), 'b', 'x', 0), 'c', 'y', 0);
  h = change(undo(h), 'd', 'z', 0);
  expect(h.texts).toEqual(['a', 'b', 'd']);
  expect(canRedo(h)).toBe(false);
});
