import { readQuantity, shownUnit, type UnitSystem, wasMisread } from '@tarebook/rules/quantity';
import type { Movable } from './movable';

/** A number as it is written in English, with or without a sign: commas only between groups of three. */
const bare = /^[-+\u2212]?(?:(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?|\.\d+)$/;

/**
 * A value as somebody typed it, to be written into a case. A bare number has the unit that is asked
 * for, and keeps every digit; whatever else is typed goes to who reads cases, and is refused aloud.
 */
export function asMoved(typed: string, unit: string): string {
  if (unit === '' || !bare.test(typed)) return typed;
  const sign = /^[-\u2212]/.test(typed) ? '-' : '';
  const [whole = '', ...part] = typed.replace(/[-+\u2212,]/g, '').split('.');
  const grouped = whole.replace(/\B(?=(?:\d{3})+$)/g, ',');
  return `${sign}${[grouped === '' ? '0' : grouped, ...part].join('.')} ${unit}`;
}

/** The unit of a bare number: the one in which the fact stands in the case, else the one shown to this person. */
export function unitWritten({ value, unit }: Pick<Movable, 'value' | 'unit'>, system: UnitSystem) {
  if (unit === '') return '';
  const read = readQuantity(value);
  return (wasMisread(read) ? undefined : read.unit?.symbol) ?? shownUnit(unit, system);
}
