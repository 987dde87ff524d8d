import { answerNow } from '@tarebook/rules';
import { type FactsGiven, formOf } from '@tarebook/rules/engine';
import { tires } from '@tarebook/rules/tires';
import { evaluate, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const judge = (facts: FactsGiven, asOf = '2026-11-01') => answerNow(tires, { facts, asOf });
const onTrailer: FactsGiven = { 'tire.place': 'trailer', 'tire.kind': 'special-trailer' };
const pounds = (kg: number): number => unit(kg, 'kg').toNumber('lb');

/**
 * Load indices, ISO 4000-1 / ETRTO (published; seen in three lists that agree). The kilograms are
 * made pounds by mathjs, not by the project's own units.
 */
const indices = [
  [0, 45],
  [71, 345],
  [97, 730],
  [100, 800],
  [113, 1150],
  [118, 1320],
  [121, 1450],
  [125, 1650],
] as const;

describe('load index, ISO 4000-1 / ETRTO (published)', () => {
  test.each(indices)('index %d carries %d kg', (index, kg) => {
    const { values } = judge({ ...onTrailer, 'tire.loadIndex': `${index}` });
    expect(values['tire.capacity'].lo).toBeCloseTo(pounds(kg), 5);
    expect(values['tire.capacity'].hi).toBeCloseTo(pounds(kg), 5);
  });

  /**
   * The list is a geometric series, 80 steps to a factor of ten: kg ≈ 45 · 10^(n/80) (from memory).
   * Each row must lie within 3 % of it, so that no row can have slipped.
   */
  test('every row from 0 to 125 lies by the series the list was made from', () => {
    for (let index = 0; index <= 125; index += 1) {
      const { lo } = judge({ ...onTrailer, 'tire.loadIndex': `${index}` }).values['tire.capacity'];
      const series = pounds(evaluate(`45 * 10^(${index} / 80)`));
      expect(Math.abs(lo / series - 1)).toBeLessThan(0.03);
    }
  });

  test('beyond the end of the list nothing is made up', () => {
    const { outcome, values } = judge({
      ...onTrailer,
      'tire.loadIndex': '126',
      'scale.onAxles': '2,000 lb',
      'trailer.axles': '2',
    });
    expect(values['tire.capacity'].hi).toBe(Infinity);
    expect(outcome).toBe('cannot-say');
  });
});

/** Speed symbols in km/h, ISO 4000-1 / ETRTO (N to Y published; A1 to M from memory). */
const symbols = [
  ['A1', 5],
  ['A8', 40],
  ['B', 50],
  ['D', 65],
  ['F', 80],
  ['G', 90],
  ['J', 100],
  ['K', 110],
  ['L', 120],
  ['M', 130],
  ['N', 140],
  ['P', 150],
  ['Q', 160],
  ['R', 170],
  ['S', 180],
  ['T', 190],
  ['U', 200],
  ['H', 210],
  ['V', 240],
  ['W', 270],
  ['Y', 300],
] as const;

test.each(symbols)(
  'speed symbol %s is %d km/h (N to Y published, others from memory)',
  (symbol, kmh) => {
    const { values } = judge({ ...onTrailer, 'tire.speedSymbol': symbol });
    expect(values['speed.allowed'].hi).toBeCloseTo(unit(kmh, 'km/h').toNumber('mile/hour'), 5);
  },
);

/**
 * 49 CFR 571.120 S5.1.2 (published; NHTSA interpretation nht76-1.47): a passenger-car tire on a
 * trailer, truck or multipurpose vehicle counts with its rating divided by 1.10. An axle rated 3,000
 * lb therefore needs two passenger tires of 3,000 × 1.10 ÷ 2 = 1,650 lb each.
 */
describe('passenger-car tires, 49 CFR 571.120 S5.1.2 (published)', () => {
  const rated = (facts: FactsGiven) =>
    judge({ 'tire.kind': 'passenger', ...facts }).values['tire.capacity'].lo;

  test('1,650 lb on a trailer count as 1,500 lb', () => {
    expect(rated({ 'tire.place': 'trailer', 'trailer.tireCapacity': '1,650 lb' })).toBeCloseTo(
      1500,
      6,
    );
  });

  test.each([
    ['passenger-car', 1650],
    ['multipurpose', 1500],
    ['truck', 1500],
  ])('1,650 lb on the rear of a %s count as %d lb', (type, counts) => {
    const facts = {
      'tire.place': 'rear',
      'vehicle.type': type,
      'vehicle.tireCapacityRear': '1,650 lb',
    };
    expect(rated(facts)).toBeCloseTo(counts, 6);
  });

  test('nobody knows the type: the lower figure is among what may be', () => {
    const { lo, hi } = judge({
      'tire.kind': 'passenger',
      'tire.place': 'rear',
      'vehicle.tireCapacityRear': '1,650 lb',
    }).values['tire.capacity'];
    expect([lo, hi]).toEqual([1500, 1650]);
  });
});

/**
 * Moment balance (Giancoli, Physics, 7th ed., statics problem; published with its answer): a trailer
 * of 2,500 kg whose support is 8 m ahead of its tires – 5.5 m and 2.5 m from the center – has 16,844
 * N on its tires and 7,656 N on the support. As the load of one of two tires, both sides alike.
 */
test('tires of the textbook trailer carry 16,844 N together (published)', () => {
  const newtons = (lb: number) => unit(lb, 'lbf').toNumber('N');
  const lbOf = (force: number) => unit(force, 'N').toNumber('lbf');
  const { values } = judge({
    ...onTrailer,
    'trailer.axles': '1',
    // The book takes 9.8 m/s².
    'trailer.dryWeight': `${lbOf(2500 * 9.8)} lb`,
    'trailer.measuredTongueWeight': `${lbOf(7656.25)} lb`,
  });
  expect(newtons(values['axle.trailer'].lo)).toBeCloseTo(16_843.75, 1);
  // Two tires, and up to a twentieth more on the heavier side (a choice of the house).
  expect(newtons(values['tire.load'].lo)).toBeCloseTo(16_843.75 / 2, 1);
  expect(newtons(values['tire.load'].hi)).toBeCloseTo((16_843.75 / 2) * 1.05, 1);
});

/**
 * Week and year of the identification number, 49 CFR 574.5 (published). Days are counted by Date in
 * place of the project's calendar; both take a week to begin at its first day.
 */
test.each([
  [1, 20],
  [26, 21],
  [35, 21],
  [52, 25],
])('week %d of year %d: the age by counting days (published: 49 CFR 574.5)', (week, year) => {
  const facts = { ...onTrailer, 'tire.codeWeek': `${week}`, 'tire.codeYear': `${year}` };
  const made = Date.UTC(2000 + year, 0, 1 + (week - 1) * 7);
  const years = (Date.UTC(2026, 10, 1) - made) / 86_400_000 / 365.2425;
  // Leap days make the two counts differ by a day or two.
  expect(Math.abs(judge(facts).values['tire.age'].lo - years)).toBeLessThan(3 / 365);
});

/**
 * Custom of the trade, not published: a trailer's tire is watched from four years and done at six, a
 * vehicle's from five and at seven. Each at its edge, some weeks to either side.
 */
test.each([
  ['trailer', '22', '49', 'ok'],
  ['trailer', '22', '40', 'care'],
  ['trailer', '20', '49', 'care'],
  ['trailer', '20', '40', 'stop'],
  ['rear', '21', '49', 'ok'],
  ['rear', '21', '40', 'care'],
  ['rear', '19', '49', 'care'],
  ['rear', '19', '40', 'stop'],
])('on the %s, made in 20%s, week %s: %s', (place, year, week, level) => {
  const { findings } = judge({
    'tire.place': place,
    'tire.codeYear': year,
    'tire.codeWeek': week,
  });
  expect(findings.find(({ id }) => id === 'age')?.level).toBe(level);
});

/** A house choice at its edge: index and sidewall may lie one part in a hundred apart. 121 is 3,196.7 lb. */
test.each([
  ['3165 lb', 'ok'],
  ['3163 lb', 'care'],
])('index 121 beside %s on the sidewall: %s', (stated, level) => {
  const { findings } = judge({
    ...onTrailer,
    'tire.loadIndex': '121',
    'trailer.tireCapacity': stated,
  });
  expect(findings.find(({ id }) => id === 'figures')?.level).toBe(level);
});

/** A house choice at its edge: an inch of room around a taller tire is enough, and less is not. */
test.each([
  ['1.5 in', /Rim, pressure and room allow that tire/],
  ['1.45 in', /There is no room for that tire/],
])('%s of room now, for a tire an inch taller', (clearance, says) => {
  const facts: FactsGiven = {
    ...onTrailer,
    'tire.clearance': clearance,
    'tire.diameter': '27 in',
    'upgrade.diameter': '28 in',
    'upgrade.capacity': '3,000 lb',
    'upgrade.maxPressure': '80 psi',
    'upgrade.rimListed': 'yes',
    'wheel.maxPressure': '80 psi',
    'wheel.rating': '3,200 lb',
  };
  const said = formOf('spoken', tires, { facts, asOf: '2026-11-01' }, { asking: 'upgrade' });
  expect(said).toMatch(says);
});
