import { expect, test } from 'vitest';
import { answerNow } from '../../engine/answer/answer';
import type { FactsGiven } from '../../engine/check/given';
import { towFit } from './index';

const rig: FactsGiven = {
  'vehicle.gcwr': '12,000 lb',
  'vehicle.curbWeight': '5,000 lb',
  'trailer.dryWeight': '5,600 lb',
  'trailer.cargo': [],
};
const levelOf = (more: FactsGiven) =>
  answerNow(towFit, { facts: { ...rig, ...more }, asOf: '2026-11-01' }).findings.find(
    ({ id }) => id === 'engine-untold',
  )?.level;

/** Thin air takes its share of an engine that nobody named: only up there, and only then. */
test.each<readonly [FactsGiven, boolean]>([
  [{}, false],
  [{ 'trip.altitude': '0 ft' }, false],
  [{ 'trip.altitude': 'unknown' }, false],
  [{ 'trip.altitude': '6,000 ft' }, true],
  [{ 'trip.altitude': '6,000 ft', 'vehicle.engine': 'naturally-aspirated' }, false],
  [{ 'trip.altitude': '6,000 ft', 'vehicle.engine': 'turbocharged' }, false],
])('%o', (more, isAsked) => {
  expect(levelOf(more) !== 'not-asked').toBe(isAsked);
});
