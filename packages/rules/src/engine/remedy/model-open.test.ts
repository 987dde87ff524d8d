import { expect, test } from 'vitest';
import { optionsFit } from '../../topics/options-fit/index';
import { answerNow } from '../answer/answer';
import { remedies } from './remedies';

const asOf = '2026-11-01';

test.each([
  { 'plan.year': '2026', 'trailer.cargo': [{ weight: '9,000 lb' }] },
  { 'plan.year': '2026', 'vehicle.maxTrailerWeight': '400 lb' },
  { 'plan.year': '2026', 'vehicle.maxTrailerWeight': '3,000 lb' },
  { 'plan.year': '2026' },
  { 'plan.name': 'osier-19', 'wish.roofRack': 'yes', 'wish.spareOnBumper': 'yes' },
])('a change is held against what the answer says, whichever model is meant: %j', (facts) => {
  const { outcome } = answerNow(optionsFit, { facts, asOf });
  expect(remedies(optionsFit, { facts, asOf }).outcome).toBe(outcome);
});
