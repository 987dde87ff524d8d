import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactCase, openCase, pointOf, randomFrom } from './arbitrary-case';
import { type Ends, within } from './ends';
import type { PlainCase } from './plain-case';
import { plainTowFit } from './plain-tow-fit';

const exactly = (value: number): Ends => ({ lo: value, hi: value });

/** A five-seat crossover and a single-axle trailer, two weeks in the hills. */
const crossover: PlainCase = {
  'vehicle.maxTrailerWeight': 5000,
  'vehicle.maxTongueCarried': 500,
  'vehicle.placardPayload': 1260,
  'vehicle.gvwr': 5820,
  'vehicle.gcwr': 10_400,
  'vehicle.distributionAllowed': 'no',
  'vehicle.towPackageNeeded': 'yes',
  'vehicle.towPackage': 'yes',
  'vehicle.sevenWay': 'yes',
  'vehicle.brakeController': 'yes',
  'trailer.dryWeight': 3900,
  'trailer.gvwr': 5000,
  'trailer.dryTongueWeight': 430,
  'trailer.freshWater': 12,
  'trailer.propane': 40,
  'trailer.brakes': 'electric',
  'hitch.hardwareWeight': 30,
  'load.occupants': [165, 150, 120, 80, 70].map((weight) => ({ weight })),
  'load.cargo': [{ weight: 120 }],
  'trailer.cargo': [140, 95, 60].map((weight) => ({ weight })),
};

/**
 * Levers chosen so that every division comes out whole.
 *
 *     front 2,400   rear 2,000   ball            axle
 *       ├──── 120 in ────┤─ 48 in ─┤──── 16 ft ────┤
 */
const levered: PlainCase = {
  'vehicle.maxTrailerWeight': 8000,
  'vehicle.maxTongueCarried': 900,
  'vehicle.placardPayload': 2000,
  'vehicle.gvwr': 6400,
  'vehicle.curbFront': 2400,
  'vehicle.curbRear': 2000,
  'vehicle.wheelbase': 120,
  'vehicle.overhang': 48,
  'vehicle.gawrFront': 3000,
  'vehicle.gawrRear': 4000,
  'load.occupants': [{ weight: 200, ahead: 60 }],
  'hitch.hardwareWeight': 100,
  'trailer.dryWeight': 4800,
  'trailer.gvwr': 7000,
  'trailer.dryTongueWeight': 500,
  'trailer.ballToAxle': 16,
  'trailer.cargo': [{ weight: 200, ahead: 8 }],
};

const withBars: PlainCase = {
  ...levered,
  'hitch.distribution': 'yes',
  'hitch.restored': 0.5,
};

describe('the second derivation, against numbers worked out by hand', () => {
  test('a crossover fits with care, and payload runs out first', () => {
    const { outcome, binding, values, limits, findings } = plainTowFit(crossover);
    expect(outcome).toBe('fits-with-care');
    expect(binding).toBe('payload');
    expect(values).toMatchObject({
      'trailer.loaded': exactly(4335.08), // 3,900 + 295 + 12 × 8.34 + 40
      'tongue.loaded': exactly(473), // 430 and a tenth
      'payload.used': exactly(1208), // 585 + 120 + 30 + 473
      'vehicle.curb': exactly(4560), // 5,820 − 1,260
      'vehicle.gross': exactly(5768),
      'combined.gross': exactly(9630.08), // 4,560 + 735 + 4,335.08
      'shopping.from': exactly(4166.666667),
      // 11/12 of 5,000 is 4,583.3; the largest that fits is 500 / (430 / 3,900).
      'shopping.to': exactly(4534.883721),
    });
    const states = Object.entries(limits).map(([id, { state }]) => [id, state]);
    expect(Object.fromEntries(states)).toMatchObject({
      payload: 'care', // 1,208 > 0.95 × 1,260
      'vehicle-gross': 'care', // 5,768 > 0.95 × 5,820
      tongue: 'ok', // 473 ≤ 0.95 × 500
      'trailer-weight': 'ok', // 4,335.08 ≤ 0.9 × 5,000
      combined: 'ok', // 9,630.08 ≤ 0.95 × 10,400
      'front-axle': 'not-asked',
    });
    // 13 % of 4,335.08 is 563.6, more than the ball may carry.
    expect(findings['tongue-estimate']).toBe('care');
    expect(findings['tongue-share']).toBe('ok');
    expect(findings['tow-package']).toBe('ok');
  });

  test('five occupants leave 650 lb of 1,400 lb (49 CFR 571.110 S4.3.5)', () => {
    const { values } = plainTowFit({
      'vehicle.placardPayload': 1400,
      'load.occupants': Array.from({ length: 5 }, () => ({ weight: 150 })),
      'trailer.measuredTongueWeight': 0,
    });
    expect(values['payload.available']).toEqual(exactly(1400));
    expect(values['payload.used']).toEqual(exactly(1400 - 650));
  });

  test('moments put the tongue and the people on the axles', () => {
    const { values, limits } = plainTowFit(levered);
    expect(values['tongue.loaded']).toEqual(exactly(600)); // 500 + 200 × 8 / 16
    expect(values['trailer.loaded']).toEqual(exactly(5000));
    expect(values['tongue.share']).toEqual(exactly(0.12));
    expect(values['axle.front']).toEqual(exactly(2400 + 100 - 40 - 240));
    expect(values['axle.rear']).toEqual(exactly(2000 + 100 + 140 + 840));
    expect(values['axle.trailer']).toEqual(exactly(4400));
    expect(values['bars.moment']).toEqual(exactly(0));
    expect(limits['rear-axle']?.state).toBe('ok');
  });

  test('bars give back half of what the tongue took off the front axle', () => {
    const { values } = plainTowFit(withBars);
    expect(values['bars.moment']).toEqual(exactly(960)); // 0.5 × 600 × 4 ft / (1 + 4 / 16)
    expect(values['axle.front']).toEqual(exactly(2220 + 120));
    expect(values['axle.trailer']).toEqual(exactly(4400 + 60)); // 960 / 16 ft
    expect(values['axle.rear']).toEqual(exactly(3080 - 120 - 60));
    expect(values['vehicle.gross']).toEqual(exactly(5300));
  });

  test('a brochure’s curb weight gives way to the label, and the axles are scaled up to it', () => {
    const { values } = plainTowFit({ ...levered, 'vehicle.gvwr': 6840 });
    // 6,840 − 2,000 is a tenth more than 2,400 + 2,000.
    expect(values['vehicle.curb']).toEqual(exactly(4840));
    expect(values['axle.front']).toEqual(exactly(2640 + 100 - 40 - 240));
    expect(values['axle.rear']).toEqual(exactly(2200 + 100 + 140 + 840));
  });

  test('the largest trailer is where the first limit of vehicle and hitch is reached', () => {
    // By the tongue: 900 / 0.12; the tow rating allows 8,000, the rear axle 10,476.
    expect(plainTowFit(levered).largestTrailer).toEqual(exactly(7500));
    // By the rear axle: (3,080 − 2,240) / (0.12 × 1.4).
    const tight = { ...levered, 'vehicle.gawrRear': 3080 };
    expect(plainTowFit(tight).largestTrailer?.lo).toBeCloseTo(840 / 0.168, 5);
    // Bars take (0.5 × 0.4 + 0.5 × 4 / 20) of each tongue pound off it.
    const eased = { ...withBars, 'vehicle.gawrRear': 2900 };
    expect(plainTowFit(eased).largestTrailer?.lo).toBeCloseTo(660 / (0.12 * 1.1), 5);
    // A front axle that is too heavy whatever is towed leaves nothing.
    expect(plainTowFit({ ...tight, 'vehicle.gawrFront': 2000 }).largestTrailer).toBeNull();
    // A share under a tenth counts as a tenth: 900 lb of tongue carry 9,000 lb, the rating 8,000.
    const { 'vehicle.gawrRear': _, ...free } = levered;
    const nose = { ...free, 'trailer.measuredTongueWeight': 100 };
    expect(plainTowFit(nose).largestTrailer).toEqual(exactly(8000));
  });

  test('thin air takes 2 % of the combined rating for each 1,000 ft from an unforced engine', () => {
    const high = { ...crossover, 'trip.altitude': 5000 };
    expect(plainTowFit(high).limits.combined?.limit).toEqual(exactly(9360));
    expect(plainTowFit(high).outcome).toBe('does-not-fit');
    const blown = { ...high, 'vehicle.engine': 'turbocharged' };
    expect(plainTowFit(blown).limits.combined?.limit).toEqual(exactly(10_400));
    const below = { ...crossover, 'trip.altitude': -300 };
    expect(plainTowFit(below).limits.combined?.limit).toEqual(exactly(10_400));
  });

  test('at the limit is within it, and what is missing never becomes “fits”', () => {
    const edge = { ...crossover, 'vehicle.placardPayload': 1208, 'vehicle.gvwr': 6000 };
    expect(plainTowFit(edge).limits.payload?.state).toBe('care');
    const over = { ...edge, 'vehicle.placardPayload': 1207.99999 };
    expect(plainTowFit(over).limits.payload?.state).toBe('stop');
    const { 'vehicle.maxTongueCarried': _, ...silent } = crossover;
    expect(plainTowFit(silent).limits.tongue?.state).toBe('unknown');
    expect(plainTowFit(silent).outcome).toBe('cannot-say');
    expect(plainTowFit(silent).largestTrailer).toBeNull();
  });

  test('two people too many are too many whatever the tongue weighs', () => {
    const crowd = Array.from({ length: 9 }, () => ({ weight: 150 }));
    const { limits, outcome } = plainTowFit({
      ...crossover,
      'trailer.dryTongueWeight': 'unknown',
      'load.occupants': crowd,
    });
    expect(limits.payload?.used).toEqual({ lo: 1500, hi: Infinity });
    expect(limits.payload?.state).toBe('stop');
    expect(outcome).toBe('does-not-fit');
  });

  test('distribution takes nothing off and adds nothing, whatever it restores', () => {
    let told = 0;
    fc.assert(
      fc.property(exactCase(), fc.double({ min: 0, max: 1, noNaN: true }), (plain, restored) => {
        const without = plainTowFit({ ...plain, 'hitch.distribution': 'no' }).values;
        const bars = { ...plain, 'hitch.distribution': 'yes', 'hitch.restored': restored };
        const { values } = plainTowFit({ ...bars, 'vehicle.distributionAllowed': 'yes' });
        const total = (of: typeof values) =>
          ['axle.front', 'axle.rear', 'axle.trailer']
            .map((id) => of[id] ?? exactly(NaN))
            .reduce((sum, { lo, hi }) => sum + (lo === hi ? lo : NaN), 0);
        if (!Number.isFinite(total(without)) || !Number.isFinite(total(values))) return;
        told += 1;
        expect(total(values)).toBeCloseTo(total(without), 4);
        const all = (values['vehicle.gross']?.lo ?? NaN) - (values['tongue.loaded']?.lo ?? NaN);
        expect(total(values)).toBeCloseTo(all + (values['trailer.loaded']?.lo ?? NaN), 4);
      }),
      { numRuns: 2000 },
    );
    expect(told).toBeGreaterThan(200);
  });

  test('every point lies inside the ranges of the case that allows it', () => {
    fc.assert(
      fc.property(openCase(), fc.nat(), (plain, seed) => {
        const wide = plainTowFit(plain);
        const point = plainTowFit(pointOf(plain, randomFrom(seed)));
        for (const [id, value] of Object.entries(point.values)) {
          // The window is capped by the largest trailer only where that is known.
          if (id.startsWith('shopping.')) continue;
          const range = wide.values[id];
          expect(range && within(value, range), `${id} ${JSON.stringify([value, range])}`).toBe(
            true,
          );
        }
        // A rating with bars that nobody knew leaves it open, once it is told, whether there are any.
        if (wide.outcome === 'does-not-fit') {
          expect(['does-not-fit', 'cannot-say']).toContain(point.outcome);
        }
        if (wide.outcome === 'fits') expect(point.outcome).not.toBe('does-not-fit');
      }),
      { numRuns: 3000 },
    );
  });
});
