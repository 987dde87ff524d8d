import { type Dimension, joined, plain } from './dimension';

/**
 * Units, with exact factors to the base lb · in · s · A · °F · USD.
 *
 * Factors: NIST SP 811, appendix B.8: 1 lb = 0.45359237 kg, 1 in = 25.4 mm, 1 gal (US) = 231 in³
 * = 3.785411784 L, standard gravity 9.80665 m/s², 1 Btu (IT) = 1,055.05585262 J; all exact. A year is the mean Gregorian one, 365.2425 days.
 * An inch of water is the conventional 249.08891 Pa (as UCUM has it), not the 60 °F one.
 */
export type Unit = {
  readonly symbol: string;
  readonly dimension: Dimension;
  /** How many base units one of it is. */
  readonly factor: number;
  /** What is added after the factor; only °C has one, against the base °F. */
  readonly offset: number;
};

const kg = 1 / 0.45359237;
const m = 1 / 0.0254;
const litre = 231 / 3.785411784;
const watt = kg * m * m;
const pascal = kg / m;
const gravity = 9.80665 * m;

type Row = readonly [symbol: string, factor: number, dimension: Dimension, names: string];

const mass: Dimension = [1, 0, 0, 0, 0, 0];
const length: Dimension = [0, 1, 0, 0, 0, 0];
const area: Dimension = [0, 2, 0, 0, 0, 0];
const volume: Dimension = [0, 3, 0, 0, 0, 0];
const time: Dimension = [0, 0, 1, 0, 0, 0];
const speed: Dimension = [0, 1, -1, 0, 0, 0];
const power: Dimension = [1, 2, -3, 0, 0, 0];
const energy: Dimension = [1, 2, -2, 0, 0, 0];
const pressure: Dimension = [1, -1, -2, 0, 0, 0];
const force: Dimension = [1, 1, -2, 0, 0, 0];

/** The words after the dimension are other spellings, compared without regard to case. */
const rows: readonly Row[] = [
  ['1', 1, plain, ''],
  ['%', 0.01, plain, 'percent'],
  ['°', Math.PI / 180, plain, 'deg degree degrees'],
  ['lb', 1, mass, 'lbs pound pounds #'],
  ['oz', 1 / 16, mass, 'ounce ounces'],
  ['kg', kg, mass, 'kgs kilogram kilograms kilo kilos'],
  ['g', kg / 1000, mass, 'gram grams'],
  ['t', kg * 1000, mass, 'tonne tonnes'],
  ['in', 1, length, 'inch inches "'],
  ['ft', 12, length, "foot feet '"],
  ['yd', 36, length, 'yard yards'],
  ['mi', 63360, length, 'mile miles'],
  ['mm', m / 1000, length, 'millimetre millimetres millimeter millimeters'],
  ['cm', m / 100, length, 'centimetre centimetres centimeter centimeters'],
  ['m', m, length, 'metre metres meter meters'],
  ['km', m * 1000, length, 'kilometre kilometres kilometer kilometers'],
  ['in²', 1, area, 'in2 sqin'],
  ['ft²', 144, area, 'ft2 sqf'],
  ['m²', m * m, area, 'm2 sqm'],
  ['gal', 231, volume, 'gallon gallons gals'],
  ['qt', 231 / 4, volume, 'quart quarts'],
  ['L', litre, volume, 'litre litres liter liters'],
  ['ft³', 1728, volume, 'ft3 cuf'],
  ['m³', m * m * m, volume, 'm3 cum'],
  ['s', 1, time, 'sec second seconds'],
  ['min', 60, time, 'minute minutes'],
  ['h', 3600, time, 'hr hrs hour hours'],
  ['d', 86400, time, 'day days'],
  ['wk', 604800, time, 'week weeks'],
  ['yr', 31556952, time, 'year years'],
  ['mph', 63360 / 3600, speed, ''],
  ['km/h', (m * 1000) / 3600, speed, 'kmh kph'],
  ['m/s', m, speed, ''],
  ['mpg', 63360 / 231, [0, -2, 0, 0, 0, 0], ''],
  ['lbf', gravity, force, ''],
  ['N', kg * m, force, 'newton newtons'],
  ['A', 1, [0, 0, 0, 1, 0, 0], 'amp amps ampere amperes'],
  ['mA', 0.001, [0, 0, 0, 1, 0, 0], 'milliamp milliamps milliampere milliamperes'],
  ['Ah', 3600, [0, 0, 1, 1, 0, 0], ''],
  ['mAh', 3.6, [0, 0, 1, 1, 0, 0], ''],
  ['V', watt, [1, 2, -3, -1, 0, 0], 'volt volts'],
  ['Ω', watt, [1, 2, -3, -2, 0, 0], 'ohm ohms'],
  ['mΩ', watt / 1000, [1, 2, -3, -2, 0, 0], 'mohm milliohm milliohms'],
  ['W', watt, power, 'watt watts'],
  ['kW', watt * 1000, power, ''],
  ['Wh', watt * 3600, energy, ''],
  ['kWh', watt * 3600000, energy, ''],
  ['hp', watt * 745.6998715822702, power, 'horsepower'],
  ['Btu', watt * 1055.05585262, energy, ''],
  ['Btu/h', (watt * 1055.05585262) / 3600, power, ''],
  ['psi', gravity, pressure, ''],
  ['kPa', pascal * 1000, pressure, ''],
  ['bar', pascal * 100000, pressure, ''],
  ['inWC', pascal * 249.08891, pressure, ''],
  ['°F', 1, [0, 0, 0, 0, 1, 0], 'f fahrenheit'],
  ['°C', 1.8, [0, 0, 0, 0, 1, 0], 'c celsius'],
  // Differences of temperature: no zero to be shifted.
  ['F°', 1, [0, 0, 0, 0, 1, 0], ''],
  ['C°', 1.8, [0, 0, 0, 0, 1, 0], ''],
  ['USD', 1, [0, 0, 0, 0, 0, 1], '$ dollar dollars'],
  ['% per 1,000 ft', 0.01 / 12000, [0, -1, 0, 0, 0, 0], ''],
];

const bySpelling = new Map<string, Unit>();
for (const [symbol, factor, dimension, names] of rows) {
  const unit: Unit = { symbol, factor, dimension, offset: symbol === '°C' ? 32 : 0 };
  for (const name of [symbol, ...names.split(' ')]) {
    if (name !== '') bySpelling.set(name.toLowerCase(), unit);
  }
}

export const unitSymbols: readonly string[] = rows.map(([symbol]) => symbol);

const compound = new Map<string, Unit>();

/**
 * The unit of a symbol or another spelling of it; also products and quotients such as `lb·ft` and
 * `lb/gal`. Undefined when there is no such unit.
 */
export function findUnit(text: string): Unit | undefined {
  // “cu ft” and “cubic feet” are written as one word here.
  const word = text
    .trim()
    .toLowerCase()
    .replace(/^(sq|cu)(uare|bic)?[. ]*(f|m(?=e|$))\w*/, '$1$3');
  const simple = bySpelling.get(word);
  if (simple) return simple;
  const kept = compound.get(text);
  if (kept) return kept;
  const parts = text.split(/([·/])/);
  if (parts.length < 3) return undefined;
  let factor = 1;
  let dimension = plain;
  let sign: 1 | -1 = 1;
  for (const part of parts) {
    if (part === '·') sign = 1;
    else if (part === '/') sign = -1;
    else {
      const unit = bySpelling.get(part.trim().toLowerCase());
      if (!unit) return undefined;
      factor = sign === 1 ? factor * unit.factor : factor / unit.factor;
      dimension = joined(dimension, unit.dimension, sign);
    }
  }
  const unit: Unit = { symbol: text, factor, dimension, offset: 0 };
  compound.set(text, unit);
  return unit;
}

/** The unit of a symbol that is known to exist, as in a rule set that was checked. */
export function unitOf(symbol: string): Unit {
  const unit = findUnit(symbol);
  if (!unit) throw new Error(`There is no unit “${symbol}”.`);
  return unit;
}

export function toBase(value: number, unit: Unit): number {
  return value * unit.factor + unit.offset;
}

export function fromBase(value: number, unit: Unit): number {
  return (value - unit.offset) / unit.factor;
}

/** One number from one unit to another of the same dimension, in one step where they are the same. */
export function convert(value: number, from: Unit, to: Unit): number {
  return from === to ? value : fromBase(toBase(value, from), to);
}
