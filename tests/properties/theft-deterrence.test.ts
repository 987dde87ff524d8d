import { theftDeterrence } from '@tarebook/rules';
import { answerNow, checkTopic, type FactsGiven, sayProblem } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(theftDeterrence, { facts, asOf: '2026-11-01' });

const places = ['storage-lot', 'driveway', 'street', 'campsite', 'rest-stop'];
const stays = [1, 30];
const worths = [10_000, 60_000];
const held = [
  'nothing',
  'coupler',
  'coupler-and-wheel',
  'coupler-and-both-wheels',
  'anchored',
  'hitched',
];
const free = { 'exit.blocked': 'no', 'gas.shutIn': 'no' };
const noticed = ['nothing', 'listed', 'listed-and-watched', 'tracked'];
const asked = ['nothing', 'coupler-lock', 'two-devices', 'tracker'];
const exposures = ['low', 'raised', 'high'];

const stands = (place: string, days: number, worth: number): FactsGiven => ({
  'place.kind': place,
  'parked.days': `${days} d`,
  'rig.value': `${worth} USD`,
});
const exposureOf = (place: string, days: number, worth: number): number =>
  exposures.indexOf(
    judge(stands(place, days, worth)).choices['theft.exposure']?.among.join() ?? '',
  );

test('no row of its tables is left out, overlaps or stands in another’s shadow', () => {
  expect(checkTopic(theftDeterrence).map(sayProblem)).toEqual([]);
});

describe.each(places)('%s', (place) => {
  test('every combination of choices comes to one answer and to a list', () => {
    for (const days of stays) {
      for (const worth of worths) {
        for (const hold of held) {
          for (const notice of noticed) {
            for (const asks of asked) {
              const { choices, outcome, values } = judge({
                ...stands(place, days, worth),
                ...free,
                'guard.held': hold,
                'guard.noticed': notice,
                'policy.asks': asks,
              });
              for (const { among } of Object.values(choices)) expect(among).toHaveLength(1);
              expect(['well-guarded', 'guard-it-better']).toContain(outcome);
              expect(values['measures.cost']?.lo).toBeGreaterThan(0);
            }
          }
        }
      }
    }
  });

  test('longer or worth more is never less exposed, and never has the shorter list', () => {
    const cost = (days: number, worth: number) =>
      judge(stands(place, days, worth)).values['measures.cost']?.lo ?? -1;
    for (const [days, worth] of [
      [1, 60_000],
      [30, 10_000],
      [30, 60_000],
    ] as const) {
      expect(exposureOf(place, days, worth)).toBeGreaterThanOrEqual(exposureOf(place, 1, 10_000));
      expect(cost(days, worth)).toBeGreaterThanOrEqual(cost(1, 10_000));
    }
  });

  test('bare and unlisted is well guarded nowhere', () => {
    const bare = { 'guard.held': 'nothing', 'guard.noticed': 'nothing' };
    for (const days of stays) {
      expect(judge({ ...stands(place, days, 10_000), ...free, ...bare }).outcome).toBe(
        'guard-it-better',
      );
    }
  });
});

const dangers = [
  'exit.blocked',
  'chains.replaced',
  'lock.onTheRoad',
  'gas.shutIn',
  'trap.set',
  'thief.followed',
];

describe.each(dangers)('%s', (danger) => {
  test('is stop, however well it is guarded, and unknown is never well', () => {
    for (const place of places) {
      for (const hold of held) {
        const well = {
          ...stands(place, 1, 10_000),
          'guard.doors': 'yes',
          'guard.hidden': 'yes',
          'guard.held': hold,
          'guard.noticed': 'tracked',
        };
        expect(judge({ ...well, [danger]: 'yes' }).outcome).toBe('not-so');
        expect(judge({ ...well, [danger]: 'unknown' }).outcome).toBe('cannot-say');
      }
    }
  });
});

test('more reports a day never make a tracker last longer', () => {
  const reports = fc.integer({ min: 0, max: 1000 });
  const milliamperes = fc.integer({ min: 1, max: 5_000 }).map((n) => n / 1000);
  fc.assert(
    fc.property(reports, reports, milliamperes, (a, b, asleep) => {
      const lasts = (count: number) =>
        judge({
          'tracker.battery': '5,000 mAh',
          'tracker.sleeping': `${asleep} mA`,
          'tracker.report': '0.8 mAh',
          'tracker.reports': String(count),
        }).values['tracker.lasts']?.lo ?? -1;
      expect(lasts(Math.max(a, b))).toBeLessThanOrEqual(lasts(Math.min(a, b)));
    }),
    { numRuns: 100, seed },
  );
});

test('an unknown place leaves open what it would have to be held by, and is never well guarded', () => {
  const facts = { 'place.kind': 'unknown', 'parked.days': '30 d', 'guard.held': 'coupler' };
  const { choices, outcome } = judge({ ...facts, 'rig.value': '60,000 USD' });
  expect(choices['theft.exposure']?.among.length).toBeGreaterThan(1);
  expect(outcome).not.toBe('well-guarded');
});

test('no measure is called for that cannot be had where it stands', () => {
  const chosen = (place: string, item: string) =>
    judge({ ...stands(place, 30, 60_000) })
      .selections.flatMap(({ items }) => items)
      .find(({ id }) => id === item)?.chosen;
  for (const place of ['street', 'campsite', 'rest-stop']) {
    expect(chosen(place, 'anchor')).toBe('no');
    expect(chosen(place, 'light')).toBe('no');
  }
  expect(chosen('street', 'secondWheel')).toBe('yes');
  expect(chosen('storage-lot', 'alarm')).toBe('no');
  expect(chosen('storage-lot', 'anchor')).toBe('yes');
});

test('nobody asked about ways out or the gas locker: a proviso, never a clean answer', () => {
  const well = { 'guard.held': 'anchored', 'guard.noticed': 'tracked' };
  for (const place of places) {
    expect(judge({ ...stands(place, 30, 60_000), ...well }).outcome).toBe('may-stand-so-if');
    const clean = judge({ ...stands(place, 30, 60_000), ...well, ...free }).outcome;
    expect(['well-guarded', 'guard-it-better']).toContain(clean);
  }
});

test('the gap between loan and value stands in the sentence, whatever else is to be said', () => {
  const worth = fc.integer({ min: 5, max: 60 }).map((thousands) => thousands * 1000);
  const over = fc.integer({ min: 1, max: 20 }).map((thousands) => thousands * 1000);
  fc.assert(
    fc.property(worth, over, fc.constantFrom(...places), (value, more, place) => {
      const facts = {
        ...stands(place, 30, value),
        'guard.held': 'nothing',
        'guard.noticed': 'nothing',
        'policy.asks': 'two-devices',
        'loan.owed': `${value + more} USD`,
      };
      const gap = more.toLocaleString('en-US');
      expect(judge(facts).sentence).toContain(gap);
      expect(judge({ ...facts, 'policy.basis': 'actual' }).sentence).toContain(gap);
    }),
    { numRuns: 30, seed },
  );
});
