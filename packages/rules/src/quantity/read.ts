import { aboutShare, loosely } from './loosely';
import { findUnit, type Unit } from './units';

/**
 * A quantity as a person writes it.
 *
 *     5,500 lb      from = to = 5500
 *     5,500–5,700 lb          from 5500 to 5700
 *     560 ± 20 lb             from = to = 560, within 20
 *     6'7"  6 ft 7 in         79 in
 *     2 5/16 in   1⅞ in       2.3125 in, 1.875 in
 *     about 500 lb            from = to = 500, within 25
 *     at least 800 lb         from 800 to Infinity
 *     10 cu ft  10 cubic feet  from = to = 10, in ft³
 */
export type Written = {
  readonly from: number;
  readonly to: number;
  /** What stands after ±, or is meant by “about”, in `unit`. */
  readonly within?: number;
  /** “About” was said, and nothing nearer. */
  readonly about?: true;
  /** Absent for a bare number. */
  readonly unit?: Unit;
  /** What one step of the last written digit is worth, in `unit`. */
  readonly step: number;
  /** A point in it may stand between thousands. */
  readonly unclear?: true;
};

/** Why a text is not a quantity. `found` is the part that could not be read. */
export type Misread = {
  readonly code: 'not-a-quantity' | 'no-such-unit' | 'two-units' | 'back-to-front';
  readonly found: string;
};

const longest = 120;

const fractionCharacters: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

const digits = '(?:\\d{1,3}(?:[,\\u00a0\\u2009\\u202f ]\\d{3})+(?!\\d)|\\d+)';
const fraction = '(?:[ -]?\\d{1,3}/\\d{1,3}|[ \\u2009\\u202f]?[½⅓⅔¼¾⅛⅜⅝⅞])';
const number = `[-−+]?(?:${digits}${fraction}|${digits}(?:\\.\\d+)?|\\.\\d+|\\d{1,3}/\\d{1,3}|[½⅓⅔¼¾⅛⅜⅝⅞])`;
// In “-2 to -1 ft” the word between the ends is no unit.
const word = '(?:[scSC][quQU][a-z]*[. ]*)?°?[A-Za-zΩ%$#"\'′″]+[²³23]?°?';
const unit = `(?:(?!(?:to|through)\\b)(?:1/)?${word}(?:[/·]${word})*\\.?|°)`;
const feetAndInches = `(${number})\\s*(?:'|′|ft\\.?|foot|feet)\\s*(${number})\\s*(?:"|″|''|in\\.?|inch|inches)`;

const footPattern = new RegExp(`^${feetAndInches}$`, 'i');
const onePattern = new RegExp(`^(\\$?)(${number})\\s*(${unit})?$`);
const rangePattern = new RegExp(
  `^(\\$?)(${number})\\s*(${unit})?\\s*(?:–|—|-|to|through)\\s*\\$?(${number})\\s*(${unit})?$`,
);
const splitWithin = /^(.+?)\s*(?:±|\+\/-|\+-)\s*(.+)$/;

function readNumber(text: string): { value: number; step: number } {
  const clean = text
    .replace(/[,\u00a0\u2009\u202f]/g, '')
    .replace('−', '-')
    .replace(/^\+/, '');
  const sign = clean.startsWith('-') ? -1 : 1;
  const bare = sign < 0 ? clean.slice(1) : clean;
  const mixed = /^(?:(\d[\d ]*?)[ -]?)??(?:(\d{1,3})\/(\d{1,3})|([½⅓⅔¼¾⅛⅜⅝⅞]))$/.exec(bare);
  if (mixed) {
    const [, whole = '0', top, bottom, character] = mixed;
    const part = character ? (fractionCharacters[character] ?? 0) : Number(top) / Number(bottom);
    const step = character ? 1 / 8 : 1 / Number(bottom);
    return { value: sign * (Number(whole.replace(/ /g, '')) + part), step };
  }
  const plain = bare.replace(/ /g, '');
  const decimals = /\.(\d+)$/.exec(plain)?.[1]?.length ?? 0;
  return { value: sign * Number(plain), step: 10 ** -decimals };
}

/** Where thousands and decimals are both usual, and a point may be meant for either. */
const countedInThousands = new Set(['kg', 'lb', 'L', 'gal']);

/**
 * Much of the world writes a point between thousands: `2.150 kg` is two tons there and two
 * kilograms here. What follows one to three digits, none of them a leading nought, is unclear.
 */
function isUnclear(digitsText: string, found: Unit | undefined): boolean {
  return (
    found !== undefined &&
    countedInThousands.has(found.symbol) &&
    /^[-−+]?[1-9]\d{0,2}\.\d{3}$/.test(digitsText)
  );
}

function symbolOf(word: string): string {
  if (word === '′') return "'";
  // A word cut short may end in a point.
  return word === '″' || word === "''" ? '"' : word.replace(/\.$/, '');
}

function readUnit(dollar: string, word: string | undefined): Unit | undefined | Misread {
  if (dollar !== '' && word === undefined) return findUnit('USD');
  if (word === undefined) return undefined;
  const found = findUnit(symbolOf(word));
  return found ?? { code: 'no-such-unit', found: word };
}

const isMisread = (value: object | undefined): value is Misread =>
  value !== undefined && 'code' in value;

function readOne(text: string): Written | Misread {
  const feet = footPattern.exec(text);
  if (feet) {
    const [, first = '', second = ''] = feet;
    const whole = readNumber(first);
    const rest = readNumber(second);
    const value = whole.value * 12 + (whole.value < 0 ? -rest.value : rest.value);
    const inches = findUnit('in');
    return { from: value, to: value, step: rest.step, ...(inches && { unit: inches }) };
  }
  const one = onePattern.exec(text);
  if (one) {
    const [, dollar = '', digitsText = '', word] = one;
    const found = readUnit(dollar, word);
    if (isMisread(found)) return found;
    const { value, step } = readNumber(digitsText);
    const unclear = isUnclear(digitsText, found) && { unclear: true as const };
    return { from: value, to: value, step, ...(found && { unit: found }), ...unclear };
  }
  const range = rangePattern.exec(text);
  if (!range) return readFeetRange(text) ?? { code: 'not-a-quantity', found: text };
  const [, dollar = '', low = '', lowWord, high = '', highWord] = range;
  const lowUnit = readUnit(dollar, lowWord);
  const highUnit = readUnit(dollar, highWord);
  if (isMisread(lowUnit)) return lowUnit;
  if (isMisread(highUnit)) return highUnit;
  if (lowUnit && highUnit && lowUnit !== highUnit) return { code: 'two-units', found: text };
  const shared = highUnit ?? lowUnit;
  const from = readNumber(low);
  const to = readNumber(high);
  if (from.value > to.value) return { code: 'back-to-front', found: text };
  const step = Math.min(from.step, to.step);
  const unclear = [low, high].some((end) => isUnclear(end, shared)) && { unclear: true as const };
  return { from: from.value, to: to.value, step, ...(shared && { unit: shared }), ...unclear };
}

const feetRange = new RegExp(`^(${number}.*?)\\s*(?:–|—|to)\\s*(${number}.*)$`);

/** Two lengths in feet and inches, which no single pattern above takes. */
function readFeetRange(text: string): Written | undefined | Misread {
  const [, low, high] = feetRange.exec(text) ?? [];
  if (low === undefined || high === undefined) return undefined;
  if (!footPattern.test(low) || !footPattern.test(high)) return undefined;
  const from = readOne(low);
  const to = readOne(high);
  if (isMisread(from) || isMisread(to)) return undefined;
  if (from.from > to.from) return { code: 'back-to-front', found: text };
  return { ...to, from: from.from };
}

/** Reads a written quantity; never throws. Text longer than 120 characters is not one. */
export function readQuantity(text: string): Written | Misread {
  const trimmed = text.trim();
  const refused: Misread = { code: 'not-a-quantity', found: trimmed.slice(0, 40) };
  if (trimmed === '' || trimmed.length > longest) return refused;
  const { text: exact, about, bound } = loosely(trimmed);
  const read = readExactly(exact, refused);
  if (isMisread(read)) return read;
  if (bound) {
    if (read.within !== undefined || read.from !== read.to) return refused;
    const within = about ? spreadOf(read) : 0;
    return bound === 'least'
      ? { ...read, from: read.from - within, to: Infinity }
      : { ...read, from: -Infinity, to: read.to + within };
  }
  if (!about || read.within !== undefined) return read;
  return { ...read, within: spreadOf(read), about: true };
}

/** What “about” means either way: five percent; of nothing, what its last digit leaves open. */
const spreadOf = ({ from, to, step }: Written): number =>
  aboutShare * Math.max(Math.abs(from), Math.abs(to)) || step / 2;

function readExactly(trimmed: string, refused: Misread): Written | Misread {
  const split = splitWithin.exec(trimmed);
  if (!split) return checked(readOne(trimmed), refused);
  const [, middleText = '', withinText = ''] = split;
  const middle = readOne(middleText);
  const within = readOne(withinText);
  if (isMisread(middle)) return middle;
  if (isMisread(within)) return within;
  if (within.from !== within.to || within.from < 0) return refused;
  if (middle.unit && within.unit && middle.unit !== within.unit) {
    return { code: 'two-units', found: trimmed };
  }
  const shared = within.unit ?? middle.unit;
  // A ± of thousandths says that the number before it has thousandths too.
  const { unclear: alone, ...clear } = middle;
  const isDecimal = within.step < 0.01;
  const inThousands = alone ?? isUnclear(middleText.trim(), shared);
  const unclear = !isDecimal && inThousands && { unclear: true as const };
  const given = shared && { unit: shared };
  return checked({ ...clear, within: within.from, ...given, ...unclear }, refused);
}

/** A number too large to hold, or 1/0, is no quantity. */
function checked(read: Written | Misread, refused: Misread): Written | Misread {
  if (isMisread(read)) return read;
  return Number.isFinite(read.from) && Number.isFinite(read.to) ? read : refused;
}

export function wasMisread(read: Written | Misread): read is Misread {
  return isMisread(read);
}
