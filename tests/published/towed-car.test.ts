import { towedCar } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { lusolve, matrix } from 'mathjs';
import { expect, test } from 'vitest';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const judge = (facts: FactsGiven) => answerNow(towedCar, { facts, asOf: '2026-11-01' });
const whole = (min: number, max: number) => fc.integer({ min, max });
const levelOf = (facts: FactsGiven, id: string) =>
  judge(facts).findings.find((each) => each.id === id)?.level;

/**
 * Published: statics of rigid bodies, the two equations solved by mathjs, a general library: what
 * hangs on the ball behind the rear axle is carried by both axles, and moments about the front are
 * zero. The front gives up what the rear takes beyond it.
 */
test('the rear axle is that of forces and moments in balance', () => {
  fc.assert(
    fc.property(
      whole(150, 320),
      whole(60, 160),
      whole(6000, 16_000),
      whole(0, 900),
      (w, b, rear, tongue) => {
        const front = 7000;
        const solved = lusolve(
          [
            [1, 1],
            [0, w],
          ],
          [front + rear + tongue, rear * w + tongue * (w + b)],
        );
        const [, onRear] = matrix(solved).toArray().flat(2).map(Number);
        const { values } = judge({
          'towed.manner': 'trailer',
          'motorhome.rearWeighed': `${rear} lb`,
          'vehicle.wheelbase': `${w} in`,
          'vehicle.overhang': `${b} in`,
          'towed.tongue': `${tongue} lb`,
        });
        expect(values['motorhome.rear'].lo).toBeCloseTo(onRear ?? Number.NaN, 4);
      },
    ),
    { numRuns: 200, seed },
  );
});

/**
 * Published: 49 CFR 390.5, the gross combination weight rating is what the maker states for the loaded
 * combination: towed to the very pound that it leaves is within it, a pound more is over.
 */
test('the combined rating is kept at the very pound, and no further', () => {
  fc.assert(
    fc.property(whole(15_000, 24_000), whole(1000, 6000), (weighed, left) => {
      const state = (car: number) =>
        judge({
          'vehicle.gcwr': `${weighed + left} lb`,
          'motorhome.weighed': `${weighed} lb`,
          'towed.weight': `${car} lb`,
          'towed.manner': 'four-down',
        }).limits.find(({ id }) => id === 'combined')?.state;
      expect([state(left), state(left + 1)]).toEqual(['care', 'stop']);
    }),
    { numRuns: 100, seed },
  );
});

/**
 * Published: 49 CFR 567.4, the gross rating on the label is the motorhome’s as it stands loaded, with
 * what rests on its ball: at the very pound it is within it, a pound more is over.
 */
test('a weighed motorhome and the tongue keep to its own gross rating at the very pound', () => {
  fc.assert(
    fc.property(whole(12_000, 24_000), whole(0, 900), (weighed, tongue) => {
      const state = (over: number, manner: string) =>
        judge({
          'vehicle.gvwr': `${weighed + tongue - over} lb`,
          'motorhome.weighed': `${weighed} lb`,
          'towed.manner': manner,
          'towed.tongue': `${tongue} lb`,
        }).limits.find(({ id }) => id === 'gross')?.state;
      expect([state(0, 'trailer'), state(1, 'trailer'), state(1, 'dolly')]).toEqual([
        'care',
        'stop',
        'stop',
      ]);
      // On its own wheels the car rests nothing on the ball.
      if (tongue > 1) expect(state(1, 'four-down')).not.toBe('stop');
    }),
    { numRuns: 100, seed },
  );
});

/** Published for commerce: 49 CFR 393.42, brakes over 3,000 lb; below it, from memory, state by state. */
test.each([
  [3001, 'stop'],
  [3000, 'if'],
  [1001, 'if'],
  [1000, 'care'],
])('%d lb without a brake: %s', (car, level) => {
  const facts = {
    'towed.manner': 'four-down',
    'towed.brake': 'no',
    'towed.weight': `${car} lb`,
  } satisfies FactsGiven;
  expect(levelOf(facts, 'brake')).toBe(level);
});

/** Common practice: within three inches, and never up toward the motorhome. */
test.each([
  ['0 in', 'ok'],
  ['0.1 in', 'stop'],
  ['-3 in', 'ok'],
  ['-3.1 in', 'stop'],
])('a bar that rises %s is %s', (rise, level) => {
  expect(levelOf({ 'towed.manner': 'four-down', 'towBar.rise': rise }, 'bar-level')).toBe(level);
});

test('no fact tells the kind of gearbox; the car’s manual decides alone', () => {
  const asked = Object.entries(towedCar.facts).flatMap(([id, { label, kind, ...more }]) => [
    id,
    label,
    ...('options' in more ? more.options : [kind]),
  ]);
  expect(asked.filter((each) => /gearbox|automatic|stick|transmission/i.test(each))).toEqual([]);
  const car = { 'towed.manner': 'four-down' } as const;
  expect(levelOf(car, 'four-down')).toBe('if');
  expect(levelOf({ ...car, 'towed.fourDown': 'no' }, 'four-down')).toBe('stop');
  expect(levelOf({ ...car, 'towed.fourDown': 'yes' }, 'four-down')).toBe('ok');
});
