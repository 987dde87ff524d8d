import { retrofit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(retrofit, { facts, asOf: '2026-11-01' });
const levelOf = (facts: FactsGiven, id: string) =>
  judge(facts).findings.find((each) => each.id === id)?.level;

const touched = ['gas', 'mains', 'structure', 'roof', 'twelveVolt', 'plumbing'] as const;
type Touched = (typeof touched)[number];
const hands = ['not-chosen', 'owner', 'dealer', 'licensed-trade'];

/** What each kind touches, told apart from the topic. */
const kinds: Readonly<Record<string, readonly Touched[]>> = {
  'bidet-seat': ['plumbing'],
  television: [],
  'air-conditioner': ['mains', 'structure', 'roof'],
  'bicycle-rack': ['structure'],
  'solar-panel': ['roof', 'twelveVolt'],
  battery: ['twelveVolt'],
  inverter: ['mains', 'twelveVolt'],
  'gas-appliance': ['gas'],
  other: [],
};

const subsets = Array.from({ length: 2 ** touched.length }, (_, bits) =>
  touched.filter((_, i) => (bits >> i) % 2 === 1),
);
const told = (kind: string, touches: readonly Touched[], planned: string): FactsGiven => ({
  'addon.kind': kind,
  'fitting.planned': planned,
  ...Object.fromEntries(
    touched.map((each) => [`touches.${each}`, touches.includes(each) ? 'yes' : 'no']),
  ),
});

describe('who may fit it', () => {
  test('every combination of what it touches and who fits it yields one answer', () => {
    for (const touches of subsets) {
      for (const planned of hands) {
        const { choices, outcome } = judge(told('other', touches, planned));
        expect(choices['fitting.judged']?.among).toHaveLength(1);
        expect(outcome).not.toBe('cannot-say');
      }
    }
  });

  test('gas, 120 volts and structure by the owner’s hands are never milder than stop', () => {
    for (const [kind, own] of Object.entries(kinds)) {
      // Of a kind that is not known every subset; of the others nothing more, and each thing more.
      const more = kind === 'other' ? subsets : subsets.filter(({ length }) => length < 2);
      for (const touches of more) {
        const all = new Set([...own, ...touches]);
        const licensed = all.has('gas') || all.has('mains');
        const level = (planned: string) => levelOf(told(kind, touches, planned), 'fitting');
        if (licensed || all.has('structure')) expect(level('owner')).toBe('stop');
        else expect(level('owner')).not.toBe('stop');
        if (licensed) {
          // Nobody is chosen yet: a proviso, and never anything milder.
          expect(level('not-chosen')).toBe('if');
          expect(level('dealer')).toBe('care');
        }
        expect(level('licensed-trade')).toBe('ok');
      }
    }
  });

  test('what is said of a kind cannot talk away what that kind touches', () => {
    for (const [kind, own] of Object.entries(kinds)) {
      const none = levelOf(told(kind, [], 'owner'), 'fitting');
      expect(levelOf(told(kind, own, 'owner'), 'fitting')).toBe(none);
    }
  });

  test('not knowing what it touches is never all right for the owner', () => {
    for (const fact of ['gas', 'mains', 'structure']) {
      const facts = { ...told('other', [], 'owner'), [`touches.${fact}`]: 'unknown' };
      expect(judge(facts).outcome).toBe('cannot-say');
    }
    expect(judge({ 'fitting.planned': 'owner' }).outcome).toBe('cannot-say');
    expect(judge({ 'addon.kind': 'other' }).outcome).toBe('cannot-say');
  });
});

test('a bumper or ladder without a rating carries nothing, whatever hangs there', () => {
  const places = ['floor', 'wall', 'roof', 'frame', 'a-frame', 'receiver', 'bumper', 'ladder'];
  for (const kind of ['bicycle-rack', 'television', 'other']) {
    for (const heldBy of places) {
      for (const rating of [undefined, 'unknown', '500 lb']) {
        const facts = {
          ...told(kind, [], 'licensed-trade'),
          'addon.heldBy': heldBy,
          'addon.weight': '20 lb',
          ...(rating && { 'mount.rating': rating }),
        };
        const bare = rating !== '500 lb' && (heldBy === 'bumper' || heldBy === 'ladder');
        if (bare) expect(judge(facts).outcome).toBe('not-to-be-added-so');
        else expect(levelOf(facts, 'unrated')).not.toBe('stop');
      }
    }
  }
});

const pounds = fc.integer({ min: 1, max: 400 });
const feet = fc.integer({ min: -20, max: 20 });
const rig = (weight: number, ahead: number): FactsGiven => ({
  ...told('other', [], 'owner'),
  'addon.weight': `${weight} lb`,
  'addon.ahead': `${ahead} ft`,
  'trailer.dryWeight': '5,000 lb',
  'trailer.gvwr': '5,400 lb',
  'trailer.axles': '2',
  'trailer.gawr': '2,500 lb',
  'trailer.measuredTongueWeight': '600 lb',
  'trailer.ballToAxle': '17 ft',
});

test('an added weight goes to the ball and the axles, and nowhere else', () => {
  fc.assert(
    fc.property(pounds, feet, (weight, ahead) => {
      const { values } = judge(rig(weight, ahead));
      const sum = values['tongue.after'].lo + values['axles.after'].lo;
      expect(sum).toBeCloseTo(5000 + weight, 6);
      expect(values['trailer.after'].lo).toBeCloseTo(5000 + weight, 6);
      expect(Math.sign(values['added.tongue'].lo)).toBe(Math.sign(ahead));
    }),
    { numRuns: 30, seed },
  );
});

const order = [
  'can-be-added',
  'can-be-added-with-care',
  'can-be-added-if',
  'cannot-say',
  'not-to-be-added-so',
];

test('behind the axles, more weight or a longer arm never makes it better', () => {
  const back = fc.integer({ min: 0, max: 15 });
  fc.assert(
    fc.property(pounds, back, fc.integer({ min: 0, max: 100 }), (weight, behind, more) => {
      const worse = (w: number, b: number) => order.indexOf(judge(rig(w, -b)).outcome);
      expect(worse(weight + more, behind)).toBeGreaterThanOrEqual(worse(weight, behind));
      expect(worse(weight, behind + more / 25)).toBeGreaterThanOrEqual(worse(weight, behind));
    }),
    { numRuns: 30, seed },
  );
});

test('a load that moves never counts less than one that stands still', () => {
  fc.assert(
    fc.property(pounds, pounds, (weight, carries) => {
      const load = (moves: string) =>
        judge({
          'addon.weight': `${weight} lb`,
          'addon.carries': `${carries} lb`,
          'addon.heldBy': 'frame',
          'addon.moves': moves,
        }).values['mount.load'];
      expect(load('yes').lo).toBeGreaterThan(load('no').lo);
      expect(load('no').lo).toBeCloseTo(weight + carries, 9);
    }),
    { numRuns: 20, seed },
  );
});

test('more watts, hours or gallons never make battery or tanks last longer', () => {
  const small = fc.integer({ min: 0, max: 10 });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 300 }), small, small, (watts, hours, more) => {
      const days = (power: number, time: number, water: number) =>
        judge({
          'addon.power': `${power} W`,
          'addon.hours': `${time} h`,
          'addon.runsOn': 'inverter',
          'battery.chemistry': 'agm',
          'battery.capacity': '200 Ah',
          'battery.dayDrawn': '20 Ah',
          'addon.waterDaily': `${water} gal/d`,
          'addon.drainsTo': 'gray',
          'water.freshTank': '40 gal',
          'water.grayTank': '30 gal',
          'water.daily': '8 gal/d',
        }).values;
      const now = days(watts, hours, hours);
      for (const then of [days(watts + more, hours, hours), days(watts, hours + more, hours)]) {
        expect(then['energy.days'].lo).toBeLessThanOrEqual(now['energy.days'].lo + 1e-9);
      }
      const wetter = days(watts, hours, hours + more);
      for (const tank of ['fresh.daysAfter', 'gray.daysAfter'] as const) {
        expect(wetter[tank].lo).toBeLessThanOrEqual(now[tank].lo + 1e-9);
      }
    }),
    { numRuns: 12, seed },
  );
});

test('a rating nobody knows never lets it be added', () => {
  for (const fact of ['trailer.gvwr', 'trailer.dryWeight', 'addon.weight']) {
    const { outcome } = judge({ ...rig(40, 2), [fact]: 'unknown' });
    expect(['cannot-say', 'not-to-be-added-so']).toContain(outcome);
  }
});

test('pounds and feet or kilograms and meters: the verdict is the same', () => {
  fc.assert(
    fc.property(pounds, feet, (weight, ahead) => {
      const [kg, meters] = [weight * 0.45359237, ahead * 0.3048];
      const metric = {
        ...rig(weight, ahead),
        'addon.weight': { lo: kg, hi: kg, unit: 'kg' },
        'addon.ahead': { lo: meters, hi: meters, unit: 'm' },
      };
      expect(judge(metric).outcome).toBe(judge(rig(weight, ahead)).outcome);
    }),
    { numRuns: 30, seed },
  );
});

describe('what runs on 120 volts', () => {
  const plugged: readonly FactsGiven[] = [
    { 'addon.kind': 'bidet-seat', 'addon.power': '1,200 W' },
    { 'addon.kind': 'bidet-seat', 'addon.runsOn': 'shore-power' },
    { 'addon.kind': 'television', 'addon.runsOn': 'inverter' },
    { ...told('other', [], 'owner'), 'addon.runsOn': 'shore-power', 'addon.power': '60 W' },
    { ...told('other', [], 'owner'), 'addon.power': '500 W' },
  ];

  test('is never added before a protected outlet is told of, nor by the owner where there is none', () => {
    for (const facts of plugged) {
      expect(judge(facts).outcome).toBe('cannot-say');
      expect(judge({ ...facts, 'outlet.protected': 'unknown' }).outcome).toBe('cannot-say');
      const none = { ...facts, 'outlet.protected': 'no', 'fitting.planned': 'owner' };
      expect(judge(none).outcome).toBe('not-to-be-added-so');
      const there = judge({ ...facts, 'outlet.protected': 'yes' });
      expect(there.outcome).toBe('can-be-added-if');
    }
  });

  test('shows no 12-volt current unless it hangs on an inverter', () => {
    for (const facts of plugged.filter((each) => each['addon.runsOn'] !== 'inverter')) {
      expect(judge(facts).values['chain.current']).toMatchObject({ lo: 0, hi: 0 });
    }
  });

  test('a seat nobody has asked about may have a cord', () => {
    expect(levelOf({ 'addon.kind': 'bidet-seat' }, 'outlet')).toBe('unknown');
    expect(levelOf({ 'addon.kind': 'bidet-seat', 'addon.runsOn': 'nothing' }, 'outlet')).toBe('ok');
  });
});

test('a share that was wrong before is told so, and is no stop by a few pounds or by many', () => {
  const before = fc.integer({ min: 200, max: 480 });
  fc.assert(
    fc.property(before, fc.integer({ min: 1, max: 24 }), (tongue, weight) => {
      const facts = { ...rig(weight, -15), 'trailer.measuredTongueWeight': `${tongue} lb` };
      const found = judge(facts).findings.find(({ id }) => id === 'tongue-lightened');
      expect(found?.level).toBe('care');
      expect(found?.wrong).toMatch(/^Already before it/);
    }),
    { numRuns: 30, seed },
  );
});

test('what hangs behind without a place never gets better than with any place it may have', () => {
  const hung = (ahead?: number): FactsGiven => {
    const { 'addon.ahead': _, ...rest } = rig(200, 0);
    return {
      ...rest,
      'addon.heldBy': 'receiver',
      'mount.rating': '500 lb',
      ...(ahead !== undefined && { 'addon.ahead': `${ahead} ft` }),
    };
  };
  const least = order.indexOf(judge(hung()).outcome);
  for (const ahead of [-17, -12, -6, 0]) {
    expect(least).toBeGreaterThanOrEqual(
      Math.min(order.indexOf('cannot-say'), order.indexOf(judge(hung(ahead)).outcome)),
    );
  }
});
