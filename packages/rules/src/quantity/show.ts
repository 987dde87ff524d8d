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
export function showParts(range: Interval, symbol: string, system: UnitSystem = 'us'): Shown {
  const target = shownUnit(symbol, system);
  const from = unitOf(symbol === '' ? '1' : symbol);
  const to = unitOf(target === '' ? '1' : target);
  const word = wordFor(range, from);
  if (word !== undefined) return { number: word, unit: '' };
  const places = decimals[target] ?? 1;
  const end = (value: number) => showNumber(convert(value, from, to), places);
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

/** "4,335.1 lb", "4,950–5,050 lb", "620 lb or more", "unknown", "no end in sight". */
export function show(range: Interval, symbol: string, system: UnitSystem = 'us'): string {
  const { number, unit } = showParts(range, symbol, system);
  if (unit === '') return number;
  const open = / or (more|less)$/.exec(number);
  if (open) return `${number.slice(0, open.index)} ${unit}${open[0]}`;
  return `${number} ${unit}`;
}
