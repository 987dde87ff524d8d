import { answerNow, coldWeather, gasSupply, houseBattery } from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { evaluate, unit } from 'mathjs';
import { describe, expect, test } from 'vitest';

const judge = (facts: FactsGiven) => answerNow(coldWeather, { facts, asOf: '2026-12-01' });
const valuesOf = (facts: FactsGiven) => judge(facts).values;

const ownNight: FactsGiven = {
  'night.gas': '6 lb',
  'night.hours': '10 h',
  'night.inside': '65 °F',
  'night.outside': '30 °F',
};

/** Q = UA·ΔT, in SI by mathjs; 21,548 Btu/lb from LP-gas property tables (published). */
describe('heat loss', () => {
  test('the same trailer in watts and kelvin: a described shell, by the textbook', () => {
    const values = valuesOf({
      'outside.temperature': '40 °F',
      'body.length': '18 ft',
      'body.insulation': 'usual',
      'windows.area': '40 ft²',
      'windows.glazing': 'single-pane',
    });
    const si = (u: number, air: number): number => {
      const perFoot = unit(u, 'BTU/(hour ft^2 degF)').toNumber('W/(m^2 K)');
      const glass = unit(1.04, 'BTU/(hour ft^2 degF)').toNumber('W/(m^2 K)');
      const foot = 0.3048;
      const surface = 2 * (18 * 8 + 18 * 7 + 8 * 7) * foot ** 2;
      const panes = 40 * foot ** 2;
      // 0.018 Btu/ft³/°F is 1,207 J/m³/K: air of 1.2 kg/m³ and 1,006 J/kg/K (handbook values).
      const volume = 18 * 8 * 7 * foot ** 3;
      const changed = (air * volume * 1.2 * 1006) / 3600;
      return ((surface - panes) * perFoot + panes * glass + changed) * (25 / 1.8);
    };
    const watts = (range: number) => unit(range, 'BTU/hour').toNumber('W');
    expect(watts(values['heat.loss'].lo) / si(0.1, 0.5)).toBeCloseTo(1, 3);
    expect(watts(values['heat.loss'].hi) / si(0.18, 1.5)).toBeCloseTo(1, 3);
  });

  test('an own night repeated takes the very gas it took', () => {
    const values = valuesOf({
      ...ownNight,
      'outside.temperature': '30 °F',
      'furnace.input': '30,000 Btu/h',
      'furnace.hours': '10 h',
    });
    expect(values['furnace.gasNight'].lo).toBeCloseTo(6, 5);
    expect(values['furnace.gasNight'].hi).toBeCloseTo(6, 5);
  });

  test('twice the degrees take twice the gas, by proportion', () => {
    const at = (outside: number) =>
      valuesOf({
        ...ownNight,
        'outside.temperature': `${outside} °F`,
        'furnace.input': '60,000 Btu/h',
        'furnace.hours': '10 h',
      })['furnace.gasNight'].lo;
    expect(at(-5) / at(30)).toBeCloseTo(2, 6);
  });
});

/** Magnus formula with the constants of Alduchov and Eskridge (1996), 17.625 and 243.04 °C (published). */
describe('dew point against the Magnus formula', () => {
  const cases = [40, 50, 60, 68, 75].flatMap((degrees) =>
    [35, 50, 65, 80, 95].map((percent) => [degrees, percent] as const),
  );

  test.each(cases)('%d °F and %d %%: within a degree', (degrees, percent) => {
    const ours = valuesOf({
      'outside.temperature': '25 °F',
      'inside.temperature': `${degrees} °F`,
      'inside.humidity': `${percent} %`,
    })['dew.point'].lo;
    const magnus = evaluate(
      'g = log(rh) + 17.625 * c / (243.04 + c); 243.04 * g / (17.625 - g) * 1.8 + 32',
      { rh: percent / 100, c: (degrees - 32) / 1.8 },
    ).entries[0];
    expect(Math.abs(ours - magnus)).toBeLessThan(1);
  });
});

/**
 * What is borrowed is the very thing: duty reckoned here and told there, gas supply and house battery
 * must come to the same gas, blower, vaporization and battery.
 */
describe('the other topics, told what is reckoned here', () => {
  const shared: FactsGiven = { 'furnace.hours': '11 h', 'furnace.blowerCurrent': '7 A' };
  const cylinder: FactsGiven = {
    'furnace.input': '30,000 Btu/h',
    'cylinder.fill': '20 lb',
    'outside.temperature': '10 °F',
    'trip.nights': '2',
  };
  const battery: FactsGiven = {
    'battery.chemistry': 'flooded',
    'battery.capacity': '100 Ah',
    'battery.temperature': '30 °F',
  };
  const here = judge({ ...ownNight, ...shared, ...cylinder, ...battery }).values;
  const duty = { 'furnace.duty': `${here['furnace.runs'].lo * 100} %` };

  test('gas supply has the same gas and the same vaporization', () => {
    const facts = { ...shared, ...cylinder, ...duty };
    const there = answerNow(gasSupply, { facts, asOf: '2026-12-01' }).values;
    for (const name of [
      'furnace.gasNight',
      'gas.days',
      'gas.counted',
      'vapor.least',
      'vapor.most',
    ] as const) {
      expect(here[name].lo, name).toBeCloseTo(there[name].lo, 3);
      expect(here[name].hi, name).toBeCloseTo(there[name].hi, 3);
    }
  });

  test('the house battery has the same blower and the same usable charge', () => {
    const facts = { ...shared, ...battery, ...duty };
    const there = answerNow(houseBattery, { facts, asOf: '2026-12-01' }).values;
    expect(here['blower.ampHours'].lo).toBeCloseTo(there['blower.ampHours'].lo, 3);
    expect(here['battery.usable'].lo).toBeCloseTo(there['battery.usable'].lo, 6);
  });
});
