const symbols = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const size = symbols.length;

/**
 * The check character of a text of digits and capital letters, by ISO/IEC 7064, MOD 37,36 (hybrid
 * system): it finds every single wrong character, and nearly every pair that changed places.
 * @throws when the text has another character
 */
export function checkCharacter(text: string): string {
  let rest = size;
  for (const each of text) {
    const value = symbols.indexOf(each);
    if (value < 0) throw new Error(`“${each}” is no digit and no capital letter.`);
    rest = (rest + value) % size || size;
    rest = (rest * 2) % (size + 1);
  }
  return symbols.charAt((size + 1 - rest) % size);
}
