import { towFit } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { asksOpen } from './either';

const topic: Topic = towFit;
const open = {
  value: '4200 lb',
  among: ['trailer.dryWeight', 'trailer.gvwr'],
};

test('a figure is asked about until somebody says what it is', () => {
  const [asked] = asksOpen(topic, [open], {});
  expect(asked).toMatchObject({
    question: 'Is 4,200 lb the dry weight or the trailer’s GVWR?',
    may: [{ says: 'It is the dry weight' }, { says: 'It is the trailer’s GVWR' }],
    chosen: undefined,
  });
  const [said] = asksOpen(topic, [open], { 'trailer.gvwr': '4200 lb' });
  expect(said?.chosen).toBe('trailer.gvwr');
});

test('what the topic has no word for is not asked by its inner name', () => {
  const [asked] = asksOpen(topic, [{ ...open, among: [...open.among, 'other.inner'] }], {});
  expect(asked?.question).toBe('Is 4,200 lb the dry weight or the trailer’s GVWR?');
  expect(asksOpen(topic, [{ ...open, among: ['other.inner'] }], {})).toEqual([]);
});
