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
  h: 1,
  d: 1,
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
  // Most numbers are short and whole, and need neither.
  if (Number.isInteger(value) && value >= 0 && value < 1000) return String(value);
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

/**
 * How many decimals: of what is as small as 0.0024 V/°F, or as 0.03 A that empty a battery all the
 * same, as many as leave two digits of it.
 */
function placesFor(value: number, unit: string): number {
  const size = Math.abs(value);
  const isPlain = size >= 0.1 || size < 1e-6;
  return decimals[unit] ?? (isPlain ? 1 : 1 - Math.floor(Math.log10(size)));
}

/** One end of a range as it is to be written: in its own unit, to so many decimals. */
export type End = {
  readonly value: number;
  readonly places: number;
  /** Inches on which two decimals would be off: how many sixteenths, without the sign. */
  readonly sixteenths?: number;
};

/** How closely an end is told; *aloud* is *round* for whoever only hears it. */
export type Closeness = 'exact' | 'round' | 'margin' | 'aloud';

/** From where on a tenth of a pound or kilogram tells a person at a scale nothing. */
const heavy: Readonly<Record<Closeness, number>> = {
  exact: Infinity,
  round: 100,
  margin: 10,
  aloud: 100,
};

/** From where on nobody hears a decimal: “294 amps”, “26 hours”; half an hour of twelve is heard, and a share of a tenth keeps its own. */
const wholeAloud: Readonly<Record<string, number>> = {
  A: 10,
  Ah: 10,
  h: 20,
  d: 20,
  mi: 20,
  km: 20,
  gal: 20,
  L: 20,
  '%': 25,
};

function endOf(value: number, unit: string, close: Closeness, of = Infinity): End {
  const size = Math.abs(value);
  const isWeight = unit === 'lb' || unit === 'kg';
  // Ten pounds, so that the sides of a limit and what lies between them lose their tenths alike.
  const heavyFrom = unit === 'kg' && close === 'margin' ? 4.5359 : heavy[close];
  const wholeFrom = close === 'aloud' ? wholeAloud[unit] : undefined;
  const isWhole = size >= (isWeight ? heavyFrom : (wholeFrom ?? Infinity));
  const places = isWhole ? 0 : placesFor(value, unit);
  const sixteenths = Math.round(size * 16);
  const isOff = sixteenths % 4 !== 0 && Math.abs(size * 16 - sixteenths) <= 1e-6;
  if (unit === 'in' && isOff) return { value, places, sixteenths };
  const told = (side: number): number => {
    const scale = isWeight && Math.abs(side) < heavy.round ? 10 : 10 ** places;
    // Twelve digits are kept here, too.
    return Math.round(Number((side * scale).toPrecision(12))) / scale;
  };
  const between = told(of) - told(of - value);
  // Without a greater side, or with one that is no number, it is told by itself.
  return { value: Number.isNaN(between) ? value : between, places };
}

/**
 * What there is to be said of a range, in the unit it is shown in: a language makes words of it.
 * Nothing is said of what is unknown, has no limit, or has no end in time.
 */
export type Figures =
  | { readonly kind: 'unknown' | 'no-limit' | 'no-end' }
  | { readonly kind: 'one' | 'at-least' | 'at-most'; readonly end: End; readonly unit: string }
  | { readonly kind: 'range'; readonly low: End; readonly high: End; readonly unit: string };

const isTime = ({ dimension }: Unit): boolean => sameDimension(dimension, unitOf('h').dimension);
const isTemperature = ({ dimension }: Unit): boolean =>
  sameDimension(dimension, unitOf('°F').dimension);

/** What is no number: without an end, or with no end that says anything. */
function nothingToSay({ lo, hi }: Interval, unit: Unit): Figures | undefined {
  if (lo === hi) {
    if (Number.isFinite(lo)) return undefined;
    return { kind: isTime(unit) ? 'no-end' : 'no-limit' };
  }
  // Nothing but a temperature goes below zero of itself, so “0 lb or more” tells nobody anything.
  const least = isTemperature(unit) ? -Infinity : 0;
  const isUnknown = hi === Infinity && (lo === -Infinity || lo === least);
  return isUnknown ? { kind: 'unknown' } : undefined;
}

/**
 * A range; of what lies between two sides, also the greater of them. It is told as what is between
 * them as they are told: of 500, 401.5 leave 98.5, and 402 leave 98.
 */
export type Between = Interval & { readonly of?: Interval };

export function figuresOf(
  range: Between,
  symbol: string,
  system: UnitSystem = 'us',
  close: Closeness = 'exact',
): Figures {
  const { lo, hi, of } = range;
  const unit = shownUnit(symbol, system);
  const from = unitOf(symbol === '' ? '1' : symbol);
  const to = unitOf(unit === '' ? '1' : unit);
  const nothing = nothingToSay(range, from);
  if (nothing) return nothing;
  const end = (side: 'lo' | 'hi') =>
    endOf(convert(range[side], from, to), unit, close, of && convert(of[side], from, to));
  if (lo === hi) return { kind: 'one', end: end('hi'), unit };
  if (!Number.isFinite(hi)) return { kind: 'at-least', end: end('lo'), unit };
  if (!Number.isFinite(lo)) return { kind: 'at-most', end: end('hi'), unit };
  const [low, high] = [end('lo'), end('hi')];
  const isOne = showEnd(low) === showEnd(high);
  return isOne ? { kind: 'one', end: low, unit } : { kind: 'range', low, high, unit };
}

const eighths = ['', '⅛', '', '⅜', '', '⅝', '', '⅞'] as const;

/** “1⅞” and “2 5/16”: inches as the tape and the trade have them. */
function inFraction(count: number, isBelow: boolean): string {
  const part = count % 16;
  const whole = (count - part) / 16;
  const sign = isBelow ? '−' : '';
  const before = whole === 0 ? '' : showNumber(whole, 0);
  if (part % 2 === 0) return `${sign}${before}${eighths[part / 2]}`;
  return `${sign}${before}${before === '' ? '' : ' '}${part}/16`;
}

/** One end without its unit. */
export const showEnd = ({ value, places, sixteenths }: End): string =>
  sixteenths === undefined ? showNumber(value, places) : inFraction(sixteenths, value < 0);

const nothings = {
  unknown: 'unknown',
  'no-limit': 'no limit',
  'no-end': 'no end in sight',
} as const;

/** Number and unit, and what is said after the unit. */
function pieces(figures: Figures): readonly [number: string, unit: string, after: string] {
  switch (figures.kind) {
    case 'one':
      return [showEnd(figures.end), figures.unit, ''];
    case 'at-least':
      return [showEnd(figures.end), figures.unit, ' or more'];
    case 'at-most':
      return [showEnd(figures.end), figures.unit, ' or less'];
    case 'range':
      return [`${showEnd(figures.low)}–${showEnd(figures.high)}`, figures.unit, ''];
    default:
      return [nothings[figures.kind], '', ''];
  }
}

/** Figures as they are written: "4,950–5,050 lb", "620 lb or more". */
export function showFigures(figures: Figures, space = ' '): string {
  const [number, unit, after] = pieces(figures);
  return `${number}${unit === '' ? '' : space}${unit}${after}`;
}

export type Shown = { readonly number: string; readonly unit: string };

function parted(figures: Figures): Shown {
  const [number, unit, after] = pieces(figures);
  return { number: `${number}${after}`, unit };
}

/** A range of values split into number and unit, for a page that sets them apart. */
export const showParts = (range: Interval, symbol: string, system: UnitSystem = 'us'): Shown =>
  parted(figuresOf(range, symbol, system));

/** What is left of something or too much for it, in parts: 52 and lb, but 6.9, for there a tenth may decide. */
export const marginParts = (range: Between, symbol: string, system: UnitSystem = 'us'): Shown =>
  parted(figuresOf(range, symbol, system, 'margin'));

/** "4,335.1 lb", "4,950–5,050 lb", "620 lb or more", "unknown", "no end in sight". */
export const show = (range: Interval, symbol: string, system: UnitSystem = 'us'): string =>
  showFigures(figuresOf(range, symbol, system));

/** A weight without its tenths, for sentences and tables: "4,335 lb", but "48.5 lb". */
export const showRound = (range: Interval, symbol: string, system: UnitSystem = 'us'): string =>
  showFigures(figuresOf(range, symbol, system, 'round'));

/** The same of what is left or too much: "52 lb", "6.9 lb". */
export const showMargin = (range: Between, symbol: string, system: UnitSystem = 'us'): string =>
  showFigures(figuresOf(range, symbol, system, 'margin'));

/** Whether two sides of a limit may be told without tenths, and still differ by what is between them. */
export const isFarApart = ({ lo, hi }: Interval): boolean =>
  [lo, hi].every((end) => Math.abs(end) >= heavy.margin);
