/**
 * Models and options against what stands outside the project.
 *
 * - Counting: sequences of the On-Line Encyclopedia of Integer Sequences (published; terms from
 *   memory, each also found here by a recurrence or by trying).
 * - Which orders can be built and what each must hold: logic-solver, a general satisfiability solver
 *   (MiniSat compiled to JavaScript), asked with the lines of the order sheet read from the seeds.
 * - How many builds there are: every combination of a small floor plan's options tried.
 * - What a build does to the rig: tow fit itself with the same options typed in by hand.
 */
import { optionsFit, towFit } from '@tarebook/rules';
import { answerNow, type FactsGiven } from '@tarebook/rules/engine';
import fc from 'fast-check';
import Logic from 'logic-solver';
import { describe, expect, test } from 'vitest';
import { buildsOf, isBuilt } from '../../packages/rules/src/engine/catalogue/builds';
import { type Clause, countWays } from '../../packages/rules/src/engine/catalogue/count';
import { seedRows } from '../run/catalogue.mjs';
import { keepsRules, planIds, rules, type Sheet, sheetOf, years } from './order-sheet';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const { yard } = optionsFit.catalogues;
const judge = (facts: FactsGiven) => answerNow(optionsFit, { facts, asOf: '2026-11-01' });

describe('counting ways', () => {
  test('no two neighbors of n in a row: Fibonacci numbers (OEIS A000045)', () => {
    let [before, now] = [1n, 2n];
    for (let n = 1; n <= 60; n += 1) {
      const clauses = Array.from({ length: n - 1 }, (_, i): Clause => [-(i + 1), -(i + 2)]);
      expect(countWays(n, clauses)).toBe(now);
      [before, now] = [now, before + now];
    }
  });

  test('no two neighbors of n in a ring: Lucas numbers (OEIS A000032)', () => {
    const lucas = [4n, 7n, 11n, 18n, 29n, 47n, 76n, 123n, 199n, 322n];
    for (const [i, expected] of lucas.entries()) {
      const n = i + 3;
      const clauses = Array.from({ length: n }, (_, k): Clause => [-(k + 1), -(((k + 1) % n) + 1)]);
      expect(countWays(n, clauses)).toBe(expected);
    }
  });

  test('n queens that do not attack one another: OEIS A000170', () => {
    const known = { 4: 2n, 5: 10n, 6: 4n, 7: 40n, 8: 92n };
    for (const [size, expected] of Object.entries(known)) {
      const n = Number(size);
      const at = (row: number, column: number) => row * n + column + 1;
      const cells = Array.from({ length: n * n }, (_, i) => [Math.floor(i / n), i % n] as const);
      const attack = cells.flatMap(([r, c], i) =>
        cells
          .slice(i + 1)
          .filter(([s, d]) => r === s || c === d || Math.abs(r - s) === Math.abs(c - d))
          .map(([s, d]): Clause => [-at(r, c), -at(s, d)]),
      );
      const rows = Array.from({ length: n }, (_, r) =>
        Array.from({ length: n }, (_, c) => at(r, c)),
      );
      expect(countWays(n * n, [...rows, ...attack])).toBe(expected);
    }
  });
});

/** The order sheet as propositions: what is not offered is false, what is standard is true. */
function solverFor({ standard, optional }: Sheet, wanted: readonly string[]) {
  const solver = new Logic.Solver();
  const offered = [...standard, ...optional];
  for (const { id = '' } of seedRows('options')) {
    if (standard.includes(id)) solver.require(id);
    else if (!optional.includes(id)) solver.forbid(id);
  }
  for (const { kind, option, others } of rules) {
    const here = others.filter((other) => offered.includes(other));
    if (kind === 'one-of') {
      if (here.length > 0) solver.require(Logic.exactlyOne(...here));
    } else if (kind === 'requires') {
      solver.require(Logic.implies(option, Logic.or(...others)));
    } else {
      for (const other of others) solver.require(Logic.implies(option, Logic.not(other)));
    }
  }
  solver.require(...wanted);
  return solver;
}

const optionIds = Object.keys(yard.options);
const order = fc.record({
  model: fc.constantFrom(...planIds),
  year: fc.constantFrom(...years),
  wanted: fc.uniqueArray(fc.constantFrom(...optionIds), { maxLength: 6 }),
});

test('an order can be built exactly when the solver finds a build, and must hold what it must', () => {
  let built = 0;
  fc.assert(
    fc.property(order, ({ model, year, wanted }) => {
      const sheet = sheetOf(model, year);
      const builds = buildsOf(yard, { model, year, wanted, unwanted: [] });
      expect(builds.sold).toBe(sheet !== undefined);
      if (!sheet) return;
      const solver = solverFor(sheet, wanted);
      const possible = solver.solve() !== null;
      expect(builds.count > 0n).toBe(possible);
      if (!possible) return;
      built += 1;
      for (const option of sheet.optional) {
        const never = solver.solveAssuming(Logic.not(option)) === null;
        expect(isBuilt(builds, option) === 'yes', option).toBe(never);
      }
    }),
    { numRuns: 60, seed },
  );
  expect(built).toBeGreaterThan(5);
});

describe.each([
  { model: 'rushlight-8', tried: years },
  { model: 'hurdle-9-folding', tried: ['2023', '2024'] },
])('$model', ({ model, tried }) => {
  test('has as many builds as there are combinations that keep every line of the sheet', () => {
    for (const year of tried) {
      const sheet = sheetOf(model, year);
      let ways = 0;
      for (let set = 0; sheet && set < 2 ** sheet.optional.length; set += 1) {
        const chosen = sheet.optional.filter((_, i) => (set >> i) & 1);
        if (keepsRules(new Set([...sheet.standard, ...chosen]), sheet)) ways += 1;
      }
      const { values } = judge({ 'plan.name': model, 'plan.year': year });
      expect(values['plan.builds'].lo, year).toBe(ways);
    }
  });
});

test('the rig is judged as by tow fit with the same options typed in', () => {
  const load: FactsGiven = {
    'vehicle.maxTrailerWeight': '7,500 lb',
    'vehicle.maxTongueCarried': '700 lb',
    'vehicle.placardPayload': '1,300 lb',
    'vehicle.gcwr': '13,000 lb',
    'vehicle.curbWeight': '5,100 lb',
    'hitch.hardwareWeight': '60 lb',
    'trailer.freshWater': '20 gal',
    'trailer.freshWaterAhead': '3 ft',
    'load.occupants': [{ weight: '310 lb' }],
    'trailer.cargo': [{ weight: '220 lb', ahead: '-2 ft' }],
  };
  // Osier 22 Bunks of 2026, places in feet from seeds/floor-plans.csv: nose 13.5, front 6.5, rear −6.
  const typed = answerNow(towFit, {
    asOf: '2026-11-01',
    facts: {
      ...load,
      'trailer.dryWeight': '5,010 lb',
      'trailer.dryTongueWeight': '560 lb',
      'trailer.gvwr': '6,000 lb',
      'trailer.ballToAxle': '15.5 ft',
      'trailer.propane': '60 lb',
      'trailer.options': [
        { weight: '105 lb', ahead: '13.5 ft' },
        { weight: '36 lb', ahead: '6.5 ft' },
        { weight: '94 lb', ahead: '0 ft' },
        { weight: '30 lb', ahead: '0 ft' },
        { weight: '110 lb', ahead: '6.5 ft' },
        { weight: '86 lb', ahead: '-6 ft' },
      ],
    },
  });
  const ordered = judge({
    ...load,
    'plan.name': 'osier-22-bunks',
    'plan.year': '2026',
    'wish.lithiumBank': 'yes',
    'wish.inverter': 'yes',
    'wish.compressorRefrigerator': 'yes',
    'wish.instantWaterHeater': 'yes',
    'wish.sofaBed': 'yes',
    'wish.powerStabilizers': 'yes',
    'wish.slateDecor': 'yes',
  });
  for (const name of [
    'trailer.loaded',
    'tongue.loaded',
    'payload.used',
    'combined.gross',
  ] as const) {
    expect(ordered.values[name], name).toEqual(typed.values[name]);
  }
  for (const { id, state, used, limit } of ordered.limits) {
    expect(typed.limits.find((each) => each.id === id)).toMatchObject({ state, used, limit });
  }
});
