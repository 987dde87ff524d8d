import { expect, test } from 'vitest';
import { recordsOf } from '../state/questions';
import type { Left } from './events';
import { afterLeaving } from './leaving';

const text = 'What ball do I need? And are you open on Sunday?';
const [asked] = recordsOf([{ channel: '', asker: '', askedOn: '', text }], 1);
if (!asked) throw new Error('One message makes one record.');
const questions = ['What ball do I need?', 'And are you open on Sunday?'];
const left = (question: string, more: Partial<Left> = {}): Left => ({
  ...{ asked, question, form: 'post', text: 'Two inches.', answered: undefined, isCopied: true },
  ...more,
});
const after = (of: Left, now = asked) => afterLeaving(now, of, questions, '2026-11-30');

test('a message is done once all of its questions are answered, and not before', () => {
  const once = after(left('What ball do I need?'));
  expect(once).toMatchObject({ done: 0, sent: ['What ball do I need?'] });
  const whole = after(left('And are you open on Sunday?'), once);
  expect(whole?.done).toBeGreaterThan(0);
  expect(whole?.sent).toEqual(questions);
});

test('what a person has yet to copy by hand has not left', () => {
  expect(after(left('What ball do I need?', { isCopied: false }))).toBe(undefined);
});

test('a first reply leaves everything as it was, and what is asked back is waited for', () => {
  expect(after(left(text, { form: 'first reply' }))).toBe(undefined);
  const waits = after(left('What ball do I need?', { form: 'askBack' }));
  expect(waits).toMatchObject({ done: 0, waits: 'an answer (asked back on 2026-11-30)' });
});
