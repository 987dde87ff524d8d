import { sameDimension } from './dimension';
import type { Interval } from './interval';
import { convert, type Unit, unitOf } from './units';

export type UnitSystem = 'us' | 'metric';

/** Which metric unit stands for a US one, and how many decimals a person wants to see of each. */
const metricFor: Readonly<Record<string, string>> = {
  lb: 'kg',
  in: 'mm',
  ft: 'm',
  'ft²': 'm²',
  mi: 'km',
  gal: 'L',
  mph: 'km/h',
  psi: 'kPa',
  '°F': '°C',
  'F°': 'C°',
  lb·ft: 'kg·m',
  'lb/gal': 'kg/L',
  'mΩ/ft': 'mΩ/m',
  lbf: 'N',
  'kWh/mi': 'kWh/km',
};

const decimals: Readonly<Record<string, number>> = {
  lb: 1,
  kg: 1,
  in: 2,
  mm: 0,
  ft: 1,
  m: 2,
  'ft²': 1,
  'm²': 2,
  gal: 1,
  L: 1,
  '%': 1,
  '1': 4,
  '': 3,
  'lb/gal': 2,
  'kg/L': 2,
  USD: 0,
  V: 2,
  mA: 3,
  W: 0,
  Wh: 0,
  'Btu/h': 0,
  Btu: 0,
  psi: 0,
  kPa: 0,
  '°F': 0,
  '°C': 0,
  'Btu/ft³/°F': 3,
  'Btu/h/ft²/°F': 2,
  'F°': 0,
  'C°': 0,
  mph: 0,
  'km/h': 0,
  'lb/ft³': 4,
  'kg/m³': 3,
  'mΩ/ft': 4,
  'mΩ/m': 3,
  lbf: 0,
  N: 0,
  'kWh/mi': 2,
  'kWh/km': 3,
  '°C/m': 4,
};

const formats = new Map<number, Intl.NumberFormat>();

/** A number with thousands separators and a true minus, to so many decimals at the most. */
export function showNumber(value: number, places: number): string {
  let format = formats.get(places);
  if (!format) {
    format = new Intl.NumberFormat('en-US', { maximumFractionDigits: places });
    formats.set(places, format);
  }
  // Twelve digits are kept, so that one amount reckoned in two ways is not rounded to two.
  const text = format.format(Number(value.toPrecision(12)));
  return text === '-0' ? '0' : text.replace('-', '−');
}

/** The unit a value is shown in, for a system of units. Shares are shown in percent. */
export function shownUnit(symbol: string, system: UnitSystem): string {
  if (symbol === '1') return '%';
  return system === 'metric' ? (metricFor[symbol] ?? symbol) : symbol;
}

const eighths = ['', '⅛', '', '⅜', '', '⅝', '', '⅞'] as const;

/** “1⅞” and “2 5/16”: inches on which two decimals would be off, as the tape and the trade have them. */
function inFraction(inches: number): string | undefined {
  const sixteenths = Math.abs(inches) * 16;
  const count = Math.round(sixteenths);
  if (count % 4 === 0 || Math.abs(sixteenths - count) > 1e-6) return undefined;
  const part = count % 16;
  const whole = (count - part) / 16;
  const sign = inches < 0 ? '−' : '';
  const before = whole === 0 ? '' : showNumber(whole, 0);
  if (part % 2 === 0) return `${sign}${before}${eighths[part / 2]}`;
  return `${sign}${before}${before === '' ? '' : ' '}${part}/16`;
}

/** How many decimals: of a rate as small as 0.0024 V/°F as many as leave two digits of it. */
function placesFor(value: number, unit: string): number {
  const declared = decimals[unit];
  if (declared !== undefined) return declared;
  const size = Math.abs(value);
  if (!unit.includes('/') || size >= 0.1 || size < 1e-6) return 1;
  return 1 - Math.floor(Math.log10(size));
}

type ShowEnd = (value: number, unit: string) => string;

const showEnd: ShowEnd = (value, unit) => {
  const fraction = unit === 'in' ? inFraction(value) : undefined;
  return fraction ?? showNumber(value, placesFor(value, unit));
};

/** From where on a tenth of a pound or kilogram tells a person at a scale nothing. */
const heavy = 100;
const wide = 10;

const roundedFrom =
  (least: number): ShowEnd =>
  (value, unit) =>
    (unit === 'lb' || unit === 'kg') && Math.abs(value) >= least
      ? showNumber(value, 0)
      : showEnd(value, unit);

export type Shown = { readonly number: string; readonly unit: string };

const isTime = ({ dimension }: Unit): boolean => sameDimension(dimension, unitOf('h').dimension);
const isTemperature = ({ dimension }: Unit): boolean =>
  sameDimension(dimension, unitOf('°F').dimension);

/** What is no number: without an end, or with no end that says anything. */
function wordFor({ lo, hi }: Interval, unit: Unit): string | undefined {
  if (lo === hi) {
    if (Number.isFinite(lo)) return undefined;
    return isTime(unit) ? 'no end in sight' : 'no limit';
  }
  // Nothing but a temperature goes below zero of itself, so “0 lb or more” tells nobody anything.
  const least = isTemperature(unit) ? -Infinity : 0;
  return hi === Infinity && (lo === -Infinity || lo === least) ? 'unknown' : undefined;
}

/** A range of values split into number and unit, for a page that sets them apart. */
export function showParts(
  range: Interval,
  symbol: string,
  system: UnitSystem = 'us',
  ended: ShowEnd = showEnd,
): Shown {
  const target = shownUnit(symbol, system);
  const from = unitOf(symbol === '' ? '1' : symbol);
  const to = unitOf(target === '' ? '1' : target);
  const word = wordFor(range, from);
  if (word !== undefined) return { number: word, unit: '' };
  const end = (value: number) => ended(convert(value, from, to), target);
  const { lo, hi } = range;
  const unit = target;
  if (lo === hi) return { number: end(lo), unit };
  if (Number.isFinite(lo) && Number.isFinite(hi)) {
    const [low, high] = [end(lo), end(hi)];
    return { number: low === high ? low : `${low}–${high}`, unit };
  }
  if (Number.isFinite(lo)) return { number: `${end(lo)} or more`, unit };
  return { number: `${end(hi)} or less`, unit };
}

function inOneText({ number, unit }: Shown): string {
  if (unit === '') return number;
  const open = / or (more|less)$/.exec(number);
  if (open) return `${number.slice(0, open.index)} ${unit}${open[0]}`;
  return `${number} ${unit}`;
}

/** "4,335.1 lb", "4,950–5,050 lb", "620 lb or more", "unknown", "no end in sight". */
export const show = (range: Interval, symbol: string, system: UnitSystem = 'us'): string =>
  inOneText(showParts(range, symbol, system));

/** A weight without its tenths, for sentences and tables: "4,335 lb", but "48.5 lb". */
export const showRound = (range: Interval, symbol: string, system: UnitSystem = 'us'): string =>
  inOneText(showParts(range, symbol, system, roundedFrom(heavy)));

/** What is left or too much, in parts: 52 and lb, but 6.9, for there a tenth may decide. */
export const marginParts = (range: Interval, symbol: string, system: UnitSystem = 'us'): Shown =>
  showParts(range, symbol, system, roundedFrom(wide));

/** The same in one text: "52 lb", "6.9 lb". */
export const showMargin = (range: Interval, symbol: string, system: UnitSystem = 'us'): string =>
  inOneText(marginParts(range, symbol, system));

/** Whether two sides of a limit may be told without tenths, and still differ by what is between them. */
export const isFarApart = ({ lo, hi }: Interval): boolean =>
  [lo, hi].every((end) => Math.abs(end) >= wide);
