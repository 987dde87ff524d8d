import { describe, expect, test } from 'vitest';
import { judged } from './compare';
import type { PlainCase } from './plain-case';

const rig: PlainCase = {
  'vehicle.maxTrailerWeight': 6000,
  'vehicle.maxTongueCarried': 640,
  'vehicle.placardPayload': 1500,
  'vehicle.curbFront': 2400,
  'vehicle.curbRear': 2000,
  'vehicle.wheelbase': 120,
  'vehicle.overhang': 48,
  'trailer.dryWeight': 3600,
  'trailer.dryTongueWeight': 400,
  'trailer.gvwr': 5000,
};

const grade = (steepest: number) =>
  judged({ ...rig, 'trip.steepestGrade': steepest }).findings.find(({ id }) => id === 'grade')
    ?.level;

describe('where a reading could go either way', () => {
  test('a grade is compared as a fraction, to a millionth', () => {
    expect(grade(0.12)).toBe('ok');
    expect(grade(0.1200004)).toBe('ok');
    expect(grade(0.12001)).toBe('care');
  });

  test('an axle’s own curb weight is scaled up and never down, over ranges too', () => {
    const { values } = judged({
      ...rig,
      'vehicle.curbRear': { lo: 1900, hi: 2100 },
      'load.occupants': [],
    });
    // 440 lb of tongue, 48 in behind the rear axle, take 176 lb off the front.
    expect(values['axle.front']).toMatchObject({ lo: 2400 - 176, hi: 2400 - 176 });
  });

  test('there is no largest trailer while the share of the present one is unknown', () => {
    // 640 lb on the ball at the share of an estimate, 400 in 3,600.
    expect(judged(rig).apart.largestTrailer).toMatchObject({ lo: 5760, hi: 5760 });
    const { 'trailer.dryWeight': _, ...silent } = rig;
    expect(judged({ ...silent, 'trailer.propane': 20 }).apart.largestTrailer).toBeNull();
    const measured = { ...silent, 'trailer.measuredTongueWeight': 440 };
    expect(judged(measured).apart.largestTrailer).toBeNull();
    expect(
      judged({ ...rig, 'trailer.dryTongueWeight': 'unknown' }).apart.largestTrailer,
    ).toBeNull();
  });
});
