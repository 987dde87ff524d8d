import { answerNow, hitchSetup, towFit } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { restating } from './restated';

const asOf = '2026-11-01';

test('inches in fractions are millimetres as a whole', () => {
  const metric = restating(answerNow(hitchSetup, { facts: {}, asOf }), 'metric');
  expect(metric('a ball of 1⅞ in and one of 2 5/16 in, 1/16 in apart')).toBe(
    'a ball of 48 mm and one of 59 mm, 2 mm apart',
  );
});

test('a weight told without its tenths is the kilograms that it was', () => {
  const facts = {
    'vehicle.maxTrailerWeight': '3000 kg',
    'vehicle.maxTongueCarried': '300 kg',
    'vehicle.placardPayload': '800 kg',
    'vehicle.gvwr': '3200 kg',
    'trailer.dryWeight': '2500 kg',
    'trailer.gvwr': '3000 kg',
    'trailer.measuredTongueWeight': '280 kg',
    'hitch.distribution': 'no',
    'vehicle.brakeController': 'yes',
    'vehicle.sevenWay': 'yes',
    'trailer.electricBrakes': 'yes',
  };
  const answer = answerNow(towFit, { facts, asOf });
  expect(answer.sentence).toContain('left of 661 lb');
  expect(restating(answer, 'metric')(answer.sentence)).toContain('left of 300 kg');
});
