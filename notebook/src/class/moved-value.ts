/** A number as it is written in English: commas only between groups of three. */
const bare = /^(?:\d{1,3}(?:,\d{3})+|\d+)(?:\.\d+)?$|^\.\d+$/;

/**
 * A value as somebody typed it, to be written into a case. A bare number has the unit that is asked
 * for, and keeps every digit; whatever else is typed goes to who reads cases, and is refused aloud.
 */
export function asMoved(typed: string, unit: string): string {
  if (unit === '' || !bare.test(typed)) return typed;
  const [whole = '', ...part] = typed.replaceAll(',', '').split('.');
  const grouped = whole.replace(/\B(?=(?:\d{3})+$)/g, ',');
  return `${[grouped === '' ? '0' : grouped, ...part].join('.')} ${unit}`;
}
