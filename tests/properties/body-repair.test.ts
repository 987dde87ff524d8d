import { bodyRepair } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const run = { numRuns: 100, seed };
const judge = (facts: FactsGiven) => answerNow(bodyRepair, { facts, asOf: '2026-11-01' });

const damage = fc.record({
  side: fc.integer({ min: 0, max: 8 }),
  roof: fc.integer({ min: 0, max: 8 }),
  corner: fc.integer({ min: 0, max: 4 }),
  seal: fc.integer({ min: 0, max: 100 }),
  built: fc.constantFrom('riveted-segments', 'laminated-wall', 'molded-shell', 'unknown'),
  signs: fc.constantFrom('none-seen', 'stains', 'soft', 'unknown'),
});
type Damage = {
  readonly side: number;
  readonly roof: number;
  readonly corner: number;
  readonly seal: number;
  readonly built: string;
  readonly signs: string;
};
const policy = fc.record({
  deductible: fc.integer({ min: 0, max: 5_000 }),
  premium: fc.integer({ min: 0, max: 4_000 }),
});

const told = (d: Damage): FactsGiven => ({
  'segments.side': String(d.side),
  'segments.roof': String(d.roof),
  'segments.corner': String(d.corner),
  'seal.length': `${d.seal} ft`,
  'wall.built': d.built,
  'water.signs': d.signs,
});
const insured = (p: { deductible: number; premium: number }): FactsGiven => ({
  'damage.cause': 'collision',
  'policy.deductible': `${p.deductible} USD`,
  'policy.premium': `${p.premium} USD/yr`,
});
const costOf = (facts: FactsGiven) => judge(facts).values['cost.range'] ?? { lo: NaN, hi: NaN };
const adviceOf = (facts: FactsGiven) => judge(facts).choices['claim.advice']?.among ?? [];

test('one more segment never makes it cheaper, and the least never passes the most', () => {
  fc.assert(
    fc.property(damage, (d) => {
      const before = costOf(told(d));
      const after = costOf(told({ ...d, side: d.side + 1 }));
      expect(after.lo).toBeGreaterThanOrEqual(before.lo);
      expect(after.hi).toBeGreaterThanOrEqual(before.hi);
      expect(before.lo).toBeLessThanOrEqual(before.hi);
    }),
    run,
  );
});

test('what is not known lies within what it may be', () => {
  fc.assert(
    fc.property(damage, (d) => {
      const open = costOf(told({ ...d, built: 'unknown', signs: 'unknown' }));
      const known = costOf(told(d));
      expect(known.lo).toBeGreaterThanOrEqual(open.lo);
      expect(known.hi).toBeLessThanOrEqual(open.hi);
    }),
    run,
  );
});

test('a higher deductible never turns “pay” into “claim”', () => {
  fc.assert(
    fc.property(damage, policy, fc.integer({ min: 1, max: 5_000 }), (d, p, more) => {
      const advice = (deductible: number) =>
        adviceOf({ ...told(d), ...insured({ ...p, deductible }) });
      if (advice(p.deductible).join() === 'pay') {
        expect(advice(p.deductible + more)).toEqual(['pay']);
      }
    }),
    run,
  );
});

test('claim is said only where it saves for sure, and pay only where it never does', () => {
  fc.assert(
    fc.property(damage, policy, (d, p) => {
      const { values, choices } = judge({ ...told(d), ...insured(p) });
      const gain = values['claim.gain'];
      const among = choices['claim.advice']?.among.join();
      if (among === 'claim') expect(gain?.lo).toBeGreaterThan(0);
      if (among === 'pay') expect(gain?.hi).toBeLessThanOrEqual(0);
    }),
    run,
  );
});

test('what is hurt, wet or not photographed is never milder than “not yet”', () => {
  const dangers: readonly FactsGiven[] = [
    { 'structure.hurt': 'yes' },
    { 'services.hurt': 'yes' },
    { 'photos.taken': 'no' },
    { 'wood.moisture': '25 %' },
  ];
  fc.assert(
    fc.property(damage, policy, fc.constantFrom(...dangers), (d, p, danger) => {
      expect(judge({ ...told(d), ...insured(p), ...danger }).outcome).toBe('not-yet');
    }),
    run,
  );
});

test('whatever is asked of the carrying parts, not knowing is never well', () => {
  for (const fact of ['structure.hurt', 'services.hurt', 'wood.moisture']) {
    expect(judge({ [fact]: 'unknown', 'photos.taken': 'yes' }).outcome).toBe('cannot-say');
  }
});

const priced: FactsGiven = { 'shop.quote': '2,000 USD', 'water.signs': 'none-seen' };
const looked: FactsGiven = { 'structure.hurt': 'no', 'services.hurt': 'no' };

test('after a collision, sudden water or a cause nobody knows, frame and services block until looked at', () => {
  for (const cause of ['collision', 'other-party', 'sudden-water', 'unknown', undefined]) {
    const facts = { ...priced, ...(cause && { 'damage.cause': cause }) };
    expect(judge(facts).outcome).toBe('cannot-say');
    for (const fact of ['structure.hurt', 'services.hurt']) {
      expect(judge({ ...facts, ...looked, [fact]: 'unknown' }).outcome).toBe('cannot-say');
      const { [fact]: _, ...half } = looked;
      expect(judge({ ...facts, ...half }).outcome).toBe('cannot-say');
    }
    expect(judge({ ...facts, ...looked }).outcome).not.toBe('cannot-say');
  }
  for (const cause of ['weather', 'slow-leak']) {
    expect(judge({ ...priced, 'damage.cause': cause }).outcome).toBe('may-go-to-a-shop-if');
  }
});

test('without segments or a quote there is no estimate, and a quote alone meets no empty book', () => {
  const bare = judge({ ...looked, 'damage.cause': 'collision', 'shop.rate': '120 USD/h' });
  expect(bare.outcome).toBe('cannot-say');
  expect(bare.values['cost.range']?.hi).toBe(Infinity);
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 50_000 }), (quote) => {
      const { findings } = judge({ ...looked, 'shop.quote': `${quote} USD` });
      expect(findings.find(({ id }) => id === 'quote-apart')?.level).toBe('ok');
    }),
    run,
  );
});

test('a quote told as a range is what counts, and one nobody knows only widens the book', () => {
  fc.assert(
    fc.property(damage, fc.integer({ min: 1, max: 60_000 }), (d, quote) => {
      const facts = { ...told({ ...d, side: d.side + 1 }), 'water.signs': 'none-seen' };
      const told3 = costOf({ ...facts, 'shop.quote': `${quote}–${3 * quote} USD` });
      expect(told3.lo).toBeCloseTo(quote, 4);
      expect(told3.hi).toBeCloseTo(3 * quote * 1.1, 4);
      const [book, open] = [costOf(facts), costOf({ ...facts, 'shop.quote': 'unknown' })];
      expect(open.lo).toBeCloseTo(book.lo, 4);
      expect(open.hi).toBeGreaterThanOrEqual(book.hi);
    }),
    run,
  );
});

test('undecided says its range, its break-even and what it may cost or save', () => {
  const facts = {
    ...looked,
    'damage.cause': 'collision',
    'shop.quote': '2,250 USD',
    'water.signs': 'none-seen',
    'policy.deductible': '1,000 USD',
    'policy.premium': '1,500 USD/yr',
  };
  const { findings } = judge(facts);
  const says = findings.find(({ id }) => id === 'claim')?.says ?? '';
  for (const figure of ['2,250–2,475', '1,450–3,250', '1,000', '1,025'])
    expect(says).toContain(figure);
});
