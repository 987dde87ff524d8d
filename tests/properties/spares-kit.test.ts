import { sparesKit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const runs = { numRuns: 60, seed };
const judge = (facts: FactsGiven) => answerNow(sparesKit, { facts, asOf: '2026-11-01' });

const rig: FactsGiven = {
  'vehicle.placardPayload': '1,400 lb',
  'trailer.dryWeight': '5,000 lb',
  'trailer.gvwr': '6,200 lb',
  'trailer.measuredTongueWeight': '620 lb',
  'trailer.ballToAxle': '16 ft',
};
const remoteness = ['near-help', 'hours-from-help', 'days-from-help'] as const;
const trip = fc.record({
  'trip.days': fc.integer({ min: 1, max: 60 }).map((days) => `${days} d`),
  'trip.remoteness': fc.constantFrom(...remoteness),
  'trailer.brakeKind': fc.constantFrom('electric', 'hydraulic', 'none'),
  'tire.kind': fc.constantFrom('special-trailer', 'light-truck', 'passenger'),
  'trailer.axles': fc.constantFrom('1', '2', '3'),
  'lift.kind': fc.constantFrom(
    'bottle-jack',
    'scissor-jack',
    'vehicle-jack',
    'drive-up-ramp',
    'none',
  ),
  'kit.extent': fc.constantFrom('full', 'lean'),
  'kit.place': fc.constantFrom('vehicle', 'trailer'),
  'kit.ahead': fc.integer({ min: -12, max: 13 }).map((feet) => `${feet} ft`),
});
const row = fc.integer({ min: 0, max: 300 }).map((lb) => ({ weight: `${lb} lb` }));

test('adding a thing never lightens the kit', () => {
  fc.assert(
    fc.property(trip, fc.array(row, { maxLength: 4 }), row, (asked, rows, more) => {
      const weight = (added: typeof rows) =>
        judge({ ...rig, ...asked, 'kit.added': added }).values['kit.weight'].lo;
      expect(weight([...rows, more])).toBeGreaterThanOrEqual(weight(rows));
    }),
    runs,
  );
});

test('farther from help or longer away never lightens the kit; a lean one is never the heavier', () => {
  fc.assert(
    fc.property(trip, (asked) => {
      const weight = (change: FactsGiven) =>
        judge({ ...rig, ...asked, ...change }).values['kit.weight'].lo;
      const far = remoteness.map((each) => weight({ 'trip.remoteness': each }));
      expect(far).toEqual(far.toSorted((a, b) => a - b));
      expect(weight({ 'trip.days': '90 d' })).toBeGreaterThanOrEqual(weight({}));
      expect(weight({ 'kit.extent': 'lean' })).toBeLessThanOrEqual(weight({}));
    }),
    runs,
  );
});

test('what a lean kit frees is what full and lean differ by', () => {
  fc.assert(
    fc.property(trip, (asked) => {
      const values = (extent: string) => judge({ ...rig, ...asked, 'kit.extent': extent }).values;
      const [full, lean] = [values('full'), values('lean')];
      expect(full['leave.most'].lo).toBeCloseTo(full['kit.weight'].lo - lean['kit.weight'].lo, 6);
      expect(lean['leave.most'].lo).toBe(0);
    }),
    runs,
  );
});

/** 50 lb ÷ 4, 18 lb ÷ 3, 5 lb ÷ 1, 6 lb ÷ 3, 4 lb ÷ 4: by the dealer’s own points. */
test('what to leave at home comes in order, most freed for what is missed first', () => {
  const { rankings } = judge({
    ...rig,
    'trip.days': '14 d',
    'trip.remoteness': 'days-from-help',
    'tire.kind': 'special-trailer',
    'trailer.axles': '2',
  });
  const entries = rankings.find(({ id }) => id === 'leave-first')?.entries ?? [];
  expect(entries.map(({ id, value }) => [id, value.lo])).toEqual([
    ['secondSpare', 12.5],
    ['hub', 6],
    ['grease', 5],
    ['compressor', 2],
    ['bearings', 1],
  ]);
});

test('no pound of the kit is lost: what is not on the ball is on the axles', () => {
  fc.assert(
    fc.property(trip, (asked) => {
      const { values } = judge({ ...rig, ...asked, 'kit.place': 'trailer' });
      const apart = values['kit.onBall'].lo + values['kit.onAxles'].lo;
      expect(apart).toBeCloseTo(values['kit.weight'].lo, 5);
    }),
    runs,
  );
});

test('every combination of device, place and permission is answered, and no dangerous one mildly', () => {
  const kinds = ['bottle-jack', 'scissor-jack', 'vehicle-jack', 'drive-up-ramp', 'none'];
  const points = ['named-by-maker', 'axle', 'torsion-tube', 'elsewhere'];
  for (const kind of kinds) {
    for (const point of points) {
      for (const allowed of ['yes', 'no']) {
        for (const axles of ['1', '2']) {
          const { findings } = judge({
            ...rig,
            'trailer.axles': axles,
            'lift.kind': kind,
            'lift.point': point,
            'ramp.tireAllows': allowed,
            'ramp.trailerAllows': 'yes',
          });
          const level = findings.find(({ id }) => id === 'lifting')?.level;
          const jack = kind !== 'none' && kind !== 'drive-up-ramp';
          const wrong = jack && point !== 'named-by-maker';
          const ramp = kind === 'drive-up-ramp' && (allowed === 'no' || axles === '1');
          expect(level).toBe(wrong || ramp ? 'stop' : jack ? 'ok' : 'care');
        }
      }
    }
  }
});

test('a lifting device of unknown rating never makes the kit ready', () => {
  fc.assert(
    fc.property(trip, (asked) => {
      fc.pre(asked['lift.kind'] !== 'none');
      expect(['cannot-say', 'cannot-come-so']).toContain(judge({ ...rig, ...asked }).outcome);
    }),
    runs,
  );
});

test('on a ramp the tire is set against its whole side, whatever the makers allow', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1000, max: 4000 }),
      fc.constantFrom('yes', 'no'),
      (lb, allows) => {
        const answer = judge({
          ...rig,
          'trailer.axles': '2',
          'trailer.tireCapacity': `${lb} lb`,
          'lift.kind': 'drive-up-ramp',
          'lift.rating': '9,000 lb',
          'kit.place': 'vehicle',
          'ramp.tireAllows': allows,
          'ramp.trailerAllows': 'yes',
        });
        // (5,000 − 620) ÷ 2, and a twentieth for the heavier side.
        const onRamp = (4380 / 2) * 1.05;
        const state = answer.limits.find(({ id }) => id === 'ramp-tire')?.state;
        expect(state).toBe(lb < onRamp ? 'stop' : lb * 0.95 < onRamp ? 'care' : 'ok');
        if (lb < onRamp) expect(answer.outcome).toBe('cannot-come-so');
      },
    ),
    runs,
  );
});
