import { expect, test } from 'vitest';
import { optionsFit } from '../../topics/options-fit/index';
import { answerNow } from './answer';

const judge = (facts: Record<string, string>) =>
  answerNow(optionsFit, { facts: { 'plan.year': '2026', ...facts }, asOf: '2026-11-01' });

test('the weight of one model is never held against the rating of another', () => {
  const rating = judge({}).limits.find(({ id }) => id === 'trailer-gross');
  expect(rating?.state).toBe('ok');
  expect(rating?.headroom.lo).toBeGreaterThanOrEqual(0);
});

test('what is too heavy whichever model is meant is too heavy', () => {
  const { outcome, limits } = judge({ 'vehicle.maxTrailerWeight': '400 lb' });
  expect(outcome).toBe('not-as-wanted');
  expect(limits.find(({ id }) => id === 'trailer-weight')?.state).toBe('stop');
});

test('what only some models keep is open', () => {
  const { outcome, limits } = judge({ 'vehicle.maxTrailerWeight': '3,000 lb' });
  expect(outcome).toBe('cannot-say');
  expect(limits.find(({ id }) => id === 'trailer-weight')?.state).toBe('unknown');
});

test('what stands against an order is named in the sentence', () => {
  const wishes = { 'wish.roofRack': 'yes', 'wish.spareOnBumper': 'yes' };
  const { sentence } = judge({ 'plan.name': 'osier-19', ...wishes });
  expect(sentence).toContain('roof rack and spare tire on the rear');
});
