import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Load, RigFigure } from './figure';
import { arrowScale, levels, planOf } from './rig-plan';
import { rigSays, scaleSays, whole } from './rig-words';

const seed = Number(process.env.TAREBOOK_SEED ?? 1);

const load = (label: string, used?: number, limit?: number): Load => ({
  label,
  used: used === undefined ? undefined : { lo: used, hi: used, unit: 'lb' },
  limit: limit === undefined ? undefined : { lo: limit, hi: limit, unit: 'lb' },
  state: 'ok',
});

const rig = (over: Partial<RigFigure> = {}): RigFigure => ({
  kind: 'rig',
  vehicle: 'pickup',
  trailer: 'box',
  trailerAxles: 2,
  wheelbase: 145,
  overhang: 50,
  ballToAxle: 204,
  front: load('Front axle', 3_000, 3_700),
  rear: load('Rear axle', 3_900, 3_900),
  ball: load('Ball', 760, 900),
  axles: load('Trailer axles', 5_600),
  bars: 'none',
  ...over,
});

describe('the rig', () => {
  test('axles and ball stand as far apart as was measured, whatever the measures', () => {
    const measure = fc.double({ min: 40, max: 400, noNaN: true });
    fc.assert(
      fc.property(measure, measure, measure, (wheelbase, overhang, ballToAxle) => {
        const plan = planOf(rig({ wheelbase, overhang, ballToAxle }));
        expect(plan.rear).toBeCloseTo(wheelbase, 9);
        expect(plan.ball - plan.rear).toBeCloseTo(overhang, 9);
        expect(plan.axles - plan.ball).toBeCloseTo(ballToAxle, 9);
        expect(plan.unknown).toEqual([]);
        expect(plan.end).toBeGreaterThan(plan.axles);
        expect(plan.tail).toBeGreaterThan(plan.rear);
      }),
      { seed },
    );
  });

  test('a distance nobody knows is named, and the drawing is said not to be to scale', () => {
    const plan = planOf(rig({ overhang: undefined, ballToAxle: undefined }));
    expect(scaleSays(plan)).toBe(
      'Not to scale: rear axle to ball and ball to trailer axles are not known.',
    );
    expect(scaleSays(planOf(rig()))).toBe('Drawn to scale.');
  });

  test('arrows are as long as their loads, on one scale, ratings too', () => {
    const long = arrowScale(rig(), 80);
    expect(long(5_600)).toBeCloseTo(80, 9);
    expect(long(2_800)).toBeCloseTo(40, 9);
    expect(long(0)).toBe(0);
  });

  test('labels that would run into each other stand on different lines', () => {
    expect(
      levels([
        { x: 50, width: 80 },
        { x: 100, width: 80 },
        { x: 300, width: 80 },
      ]),
    ).toEqual([0, 1, 0]);
  });

  test('the words say every load with its rating, and what nobody knows', () => {
    const says = rigSays(rig({ front: load('Front axle') }), planOf(rig()), 'us');
    expect(says).toContain('Front axle not known.');
    expect(says).toContain('Rear axle 3,900 lb of 3,900 lb.');
    expect(says).toContain('Trailer axles 5,600 lb.');
  });

  test('figures in a drawing are whole, ranges stay ranges, metric is metric', () => {
    expect(whole({ lo: 461.6, hi: 484.2, unit: 'lb' }, 'us')).toBe('462–484 lb');
    expect(whole({ lo: 1_000, hi: 1_000, unit: 'lb' }, 'metric')).toBe('454 kg');
  });
});
