/** The first letter small, unless the word is an abbreviation such as GVWR. */
export const lowered = (label: string): string =>
  /^\p{Lu}{2}/u.test(label) ? label : label.charAt(0).toLowerCase() + label.slice(1);

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** “a”, “a and b”, “a, b and c” */
export function listed(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}
