import { sway, towFit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { lusolve, matrix } from 'mathjs';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(sway, { facts, asOf: '2026-11-01' });
const whole = (min: number, max: number) => fc.integer({ min, max });
const rows = fc.array(fc.record({ weight: whole(0, 400), ahead: whole(-16, 16) }), {
  minLength: 1,
  maxLength: 6,
});
const rig = (dry: number, tongue: number, arm: number, load: readonly Row[], length = 28) => ({
  'trailer.dryWeight': `${dry} lb`,
  'trailer.dryTongueWeight': `${tongue} lb`,
  'trailer.ballToAxle': `${arm} ft`,
  'trailer.length': `${length} ft`,
  'trailer.cargo': load.map((each) => ({ weight: `${each.weight} lb`, ahead: `${each.ahead} ft` })),
});
type Row = { readonly weight: number; readonly ahead: number };

/**
 * Published: statics of rigid bodies, the two equations solved by mathjs, a general library. Ball and
 * axles carry what the trailer weighs, and moments about the axles are zero.
 */
test('the share on the ball is that of forces and moments in balance', () => {
  fc.assert(
    fc.property(whole(3000, 8000), whole(300, 1000), whole(12, 20), rows, (dry, own, arm, load) => {
      const weight = dry + load.reduce((sum, each) => sum + each.weight, 0);
      const moment = own * arm + load.reduce((sum, each) => sum + each.weight * each.ahead, 0);
      const equations = [
        [1, 1],
        [arm, 0],
      ];
      const [ball] = matrix(lusolve(equations, [weight, moment]))
        .toArray()
        .flat(2)
        .map(Number);
      const { values } = judge(rig(dry, own, arm, load));
      expect(values['tongue.loaded'].lo).toBeCloseTo(ball ?? Number.NaN, 4);
      expect(values['tongue.share'].lo).toBeCloseTo((ball ?? Number.NaN) / weight, 6);
    }),
    { numRuns: 200, seed },
  );
});

/**
 * Published: the moment of inertia of a body is the sum of its parts’, each its weight times the
 * square of its way from the axis (any textbook of mechanics). An even bar cut into a thousand slices
 * comes to a twelfth of weight times length squared; that an empty trailer is like one is an estimate.
 */
test('the resistance to turning is the sum over slices and over what is loaded', () => {
  fc.assert(
    fc.property(whole(3000, 8000), whole(16, 36), rows, (dry, length, load) => {
      const body = length - 3.5;
      const slices = Array.from({ length: 1000 }, (_, i) => body * ((i + 0.5) / 1000 - 0.5));
      const empty = slices.reduce((sum, at) => sum + (dry / 1000) * at * at, 0);
      const added = load.reduce((sum, each) => sum + each.weight * each.ahead ** 2, 0);
      const { values } = judge(rig(dry, 500, 15, load, length));
      expect(values['yaw.empty'].lo / empty).toBeCloseTo(1, 4);
      expect(values['yaw.added'].lo).toBeCloseTo(added, 4);
    }),
    { numRuns: 100, seed },
  );
});

/** By hand: wherever in the body it rides, what nobody placed was counted as riding there too. */
test('what nobody placed may add whatever it would add anywhere in the body', () => {
  fc.assert(
    fc.property(
      whole(16, 36),
      fc.double({ min: 0.5, max: 0.6, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.boolean(),
      (length, back, at, isTold) => {
        const body = length - 3.5;
        const ahead = body * back - body * at;
        const added = (place: object) =>
          judge({
            ...{ 'trailer.dryWeight': '5,000 lb', 'trailer.length': `${length} ft` },
            ...(isTold && { 'trailer.ballToAxle': `${3.5 + body * back} ft` }),
            'trailer.cargo': [{ weight: '300 lb', ...place }],
          }).values['yaw.added'];
        const anywhere = added({});
        expect(anywhere.lo).toBe(0);
        expect(anywhere.hi).toBeGreaterThanOrEqual(added({ ahead: `${ahead} ft` }).hi - 1e-6);
      },
    ),
    { numRuns: 200, seed },
  );
});

test('two equal loads fore and aft leave the share’s pounds and are seen all the same', () => {
  fc.assert(
    fc.property(whole(1, 400), whole(1, 16), (weight, ahead) => {
      const pair = [
        { weight, ahead },
        { weight, ahead: -ahead },
      ];
      const [bare, both] = [
        rig(5000, 620, 16, [{ weight: 0, ahead: 1 }]),
        rig(5000, 620, 16, pair),
      ];
      expect(judge(both).values['tongue.loaded'].lo).toBeCloseTo(620, 6);
      expect(judge(both).values['yaw.added'].lo).toBeGreaterThan(
        judge(bare).values['yaw.added'].lo,
      );
    }),
    { numRuns: 50, seed },
  );
});

/** Common practice, no standard: 110 in of wheelbase carry 20 ft of trailer, 4 in each further foot. */
test.each([
  [110, 20],
  [114, 21],
  [130, 25],
  [158, 32],
])('a wheelbase of %d in carries %d ft by the rule of thumb', (wheelbase, feet) => {
  const { values } = judge({ 'vehicle.wheelbase': `${wheelbase} in` });
  expect(values['length.carried'].lo).toBeCloseTo(feet, 9);
});

/** One rig, one verdict: what tow fit finds of the tongue is found here, and leads here. */
test('a tongue too light in tow fit leads to sway, where the same is found', () => {
  const facts = {
    'trailer.dryWeight': '4,000 lb',
    'trailer.measuredTongueWeight': '240 lb',
  } satisfies FactsGiven;
  const found = answerNow(towFit, { facts }).findings.find(({ id }) => id === 'tongue-share');
  const here = judge(facts).findings.find(({ id }) => id === 'tongue-share');
  expect([found?.level, found?.see?.topic]).toEqual(['stop', 'sway']);
  expect([here?.level, here?.says, here?.see]).toEqual(['stop', found?.says, undefined]);
});
