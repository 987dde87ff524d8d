import { expect, test } from 'vitest';
import { isAsked, recordsOf } from '../state/questions';
import { formFor, withForm } from './form-for';

const [first, second] = recordsOf(
  ['What pressure?', 'Can I tow it?'].map((text) => ({
    ...{ channel: '', asker: '', askedOn: '', text },
  })),
  1,
);
if (!first || !second) throw new Error('Two messages make two records.');
const question = { text: 'What pressure?' };

test('a form that was chosen belongs to its question alone', () => {
  const now = withForm(first, question, 'letter');
  expect(formFor(now, question)).toBe('letter');
  expect(formFor(now, { text: 'And how often?' })).toBeUndefined();
  expect(formFor(second, question)).toBeUndefined();
  expect(isAsked(now)).toBe(true);
  expect(isAsked({ ...now, forms: { a: 1 } })).toBe(false);
});

test('what was chosen counts before the form of words of one’s own', () => {
  const worded = { ...first, wordings: { [`post ${question.text}`]: 'Sixty-five.' } };
  expect(formFor(worded, question)).toBe('post');
  expect(formFor(withForm(worded, question, 'short'), question)).toBe('short');
  expect(formFor({ ...worded, forms: { [question.text]: 'no form' } }, question)).toBe('post');
});
