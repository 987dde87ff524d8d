import { optionsFit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { buildsOf, type Order } from '../../packages/rules/src/engine/catalogue/builds';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const { yard } = optionsFit.catalogues;
const options = Object.keys(yard.options);
const judge = (facts: FactsGiven) => answerNow(optionsFit, { facts, asOf: '2026-11-01' });

const order: fc.Arbitrary<Order & { readonly more: string }> = fc
  .record({
    model: fc.constantFrom(...Object.keys(yard.models)),
    year: fc.constantFrom(...yard.years),
    named: fc.uniqueArray(fc.constantFrom(...options), { minLength: 1, maxLength: 6 }),
    cut: fc.nat(5),
  })
  .map(({ model, year, named: [more = '', ...rest], cut }) => ({
    model,
    year,
    more,
    wanted: rest.slice(0, cut),
    unwanted: rest.slice(cut),
  }));

const factsOf = ({ model, year, wanted, unwanted }: Order): FactsGiven => ({
  'plan.name': model,
  'plan.year': year,
  ...Object.fromEntries(wanted.map((option) => [yard.wishes[option], 'yes'])),
  ...Object.fromEntries(unwanted.map((option) => [yard.wishes[option], 'no'])),
});

test('builds with an option and builds without it are all builds', () => {
  fc.assert(
    fc.property(order, ({ more, ...given }) => {
      const all = buildsOf(yard, given);
      if (!all.offered.optional.includes(more)) return;
      const withIt = buildsOf(yard, { ...given, wanted: [...given.wanted, more] });
      const without = buildsOf(yard, { ...given, unwanted: [...given.unwanted, more] });
      expect(withIt.count + without.count).toBe(all.count);
    }),
    { numRuns: 300, seed },
  );
});

test('one wish more never leaves more builds, nor more floor plans, nor a lighter build', () => {
  fc.assert(
    fc.property(order, ({ more, ...given }) => {
      const less = judge(factsOf(given)).values;
      const with_ = judge(factsOf({ ...given, wanted: [...given.wanted, more] })).values;
      expect(with_['build.ways'].lo).toBeLessThanOrEqual(less['build.ways'].lo);
      expect(with_['yard.plans'].lo).toBeLessThanOrEqual(less['yard.plans'].lo);
      if (with_['build.ways'].lo === 0) return;
      expect(with_['build.weight'].lo).toBeGreaterThanOrEqual(less['build.weight'].lo);
    }),
    { numRuns: 25, seed },
  );
});

test('an order that cannot be built never comes out as one that can', () => {
  fc.assert(
    fc.property(order, ({ more, ...given }) => {
      const wanted = [...given.wanted, more];
      const { outcome, values } = judge(factsOf({ ...given, wanted }));
      const can = values['build.ways'].lo > 0;
      expect(outcome === 'not-as-wanted').toBe(!can || judgedByWeight(given, wanted));
    }),
    { numRuns: 25, seed },
  );
});

/** Whether only the weight rules it out: every finding about the order itself is kept. */
function judgedByWeight(given: Order, wanted: readonly string[]): boolean {
  const { findings, limits } = judge(factsOf({ ...given, wanted }));
  const about = ['plan-sold', 'wishes-offered', 'wishes-together'];
  const isKept = findings.every(({ id, level }) => !about.includes(id) || level === 'ok');
  const others = [
    ...limits.map(({ state }) => state),
    ...findings.flatMap(({ id, level }) => (about.includes(id) ? [] : [level])),
  ];
  return isKept && others.includes('stop');
}

test('an unknown wish takes in both ways it may turn out', () => {
  fc.assert(
    fc.property(order, ({ more, ...given }) => {
      const fact = yard.wishes[more] ?? '';
      const at = (word: string) => judge({ ...factsOf(given), [fact]: word }).values;
      const open = at('unknown');
      for (const word of ['yes', 'no']) {
        const settled = at(word);
        for (const name of [
          'build.ways',
          'build.weight',
          'trailer.loaded',
          'tongue.loaded',
        ] as const) {
          expect(open[name].lo).toBeLessThanOrEqual(settled[name].lo + 1e-6);
          expect(open[name].hi).toBeGreaterThanOrEqual(settled[name].hi - 1e-6);
        }
      }
    }),
    { numRuns: 20, seed },
  );
});

/** What a catalogue is asked, each of which is as wide as its orders make it, and no wider. */
const askedOfYard = [
  'wishes.count',
  'wishes.met',
  'wishes.missing',
  'wishes.imposed',
  'build.brought',
  'plan.choices',
  'plan.builds',
  'build.ways',
  'yard.plans',
] as const;

test('what is open is as wide as all it may turn out to be, and no wider', () => {
  const opened = fc.tuple(order, fc.constantFrom('plan.name', 'plan.year'), fc.boolean());
  fc.assert(
    fc.property(opened, ([{ more, ...given }, fact, wish]) => {
      const told = factsOf(given);
      const wished = yard.wishes[more] ?? '';
      const all = fact === 'plan.name' ? Object.keys(yard.models) : yard.years;
      const words = wish ? ['yes', 'no'] : ['yes'];
      const each = all.flatMap((option) =>
        words.map((word) => judge({ ...told, [fact]: option, [wished]: word }).values),
      );
      const open = judge({ ...told, [fact]: 'unknown', [wished]: wish ? 'unknown' : 'yes' }).values;
      for (const name of askedOfYard) {
        expect([name, open[name].lo, open[name].hi]).toEqual([
          name,
          Math.min(...each.map((values) => values[name].lo)),
          Math.max(...each.map((values) => values[name].hi)),
        ]);
      }
    }),
    { numRuns: 12, seed },
  );
});
