import {
  findUnit,
  readQuantity,
  shownUnit,
  type UnitSystem,
  wasMisread,
} from '@tarebook/rules/quantity';

/**
 * A cell of a case as it stands in its field: what was typed, and the unit beside it.
 *
 *     4,900–5,100 lb   ►   [4,900–5,100] lb          6 ft 7 in   ►   [6 ft 7 in] in
 *     unknown          ►   [           ] lb
 */
export type Entry = { readonly typed: string; readonly unit: string };

/** What people write for “nobody knows”. */
const notKnown = new Set([
  '',
  '?',
  '-',
  'unknown',
  'not known',
  'don’t know',
  "don't know",
  'dunno',
]);

const isNotKnown = (text: string): boolean => notKnown.has(text.trim().toLowerCase());

/** The end of a text that is a unit, and what stands before it. */
const endsInUnit = /^(.*?[\d½⅓⅔¼¾⅛⅜⅝⅞])\s*([\p{L}°%$"'′″].*)$/su;

/** @param unit the unit of the fact, '' for a count */
export function entryOf(text: string, unit: string): Entry {
  if (isNotKnown(text)) return { typed: '', unit };
  const read = readQuantity(text);
  if (unit === '' || wasMisread(read) || !read.unit) return { typed: text, unit };
  const { symbol } = read.unit;
  const [, before = '', word = ''] = endsInUnit.exec(text) ?? [];
  const bare = readQuantity(before);
  const whole = findUnit(word)?.symbol === symbol && !wasMisread(bare) && !bare.unit;
  return { typed: whole ? before : text, unit: symbol };
}

/** What the case says when this is typed beside that unit: a bare number takes it. */
export function textOf({ typed, unit }: Entry): string {
  const text = typed.trim();
  if (isNotKnown(text)) return 'unknown';
  if (unit === '') return text;
  const read = readQuantity(text);
  if (wasMisread(read)) return /\p{L}/u.test(text) ? text : `${text} ${unit}`;
  return read.unit ? text : `${text} ${unit}`;
}

/** What else a length, a power, a time or an amount is commonly given in. */
const alsoIn: Readonly<Record<string, readonly string[]>> = {
  in: ['ft', 'cm'],
  ft: ['in'],
  h: ['min', 'd'],
  W: ['kW'],
  Wh: ['kWh'],
  Ah: ['mAh'],
  psi: ['bar'],
};

/** The units that a field offers, the one in use first; none for a count. */
export function unitsFor(unit: string, now: string): readonly string[] {
  if (unit === '') return [];
  return [...new Set([now, unit, shownUnit(unit, 'metric'), ...(alsoIn[unit] ?? [])])];
}

/** The unit in which a blank field begins. */
export const firstUnit = (unit: string, system: UnitSystem): string =>
  unit === '' || system === 'us' ? unit : shownUnit(unit, system);

/** How far from what is said “about” reaches: a house choice, the same for everything. */
const aboutShare = 0.05;

/** “about 3,900”: with a twentieth of it on either side; a text that is no one number stays. */
export function aboutText(typed: string): string {
  const read = readQuantity(typed);
  if (wasMisread(read) || read.from !== read.to || read.within !== undefined) return typed;
  const within = Number((Math.abs(read.from) * aboutShare).toPrecision(3));
  const unit = read.unit ? ` ${read.unit.symbol}` : '';
  const number = unit === '' ? typed.trim() : entryOf(typed, read.unit?.symbol ?? '').typed;
  return `${number} ± ${within}${unit}`;
}
