/** Two hashes of a text at once, 64 bits together. */
function hashesOf(text: string): readonly [number, number] {
  let [a, b] = [0xdeadbeef, 0x41c6ce57];
  for (let i = 0; i < text.length; i += 1) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x9e3779b1);
    b = Math.imul(b ^ code, 0x5f356495);
  }
  a = Math.imul(a ^ (a >>> 16), 0x85ebca6b) ^ Math.imul(b ^ (b >>> 13), 0xc2b2ae35);
  b = Math.imul(b ^ (b >>> 16), 0x85ebca6b) ^ Math.imul(a ^ (a >>> 13), 0xc2b2ae35);
  return [a >>> 0, b >>> 0];
}

const first = 1 << 10;
/** Names are never closer together than this in their table. */
const fullest = 0.5;

/**
 * Tells of one name after another whether it was there before. Of each only 64 bits are kept, so that a
 * file of a million vehicles takes some mebibytes; among a million the chance that two names are taken
 * for the same is one in some ten millions.
 */
export function namesSeen(): (name: string) => boolean {
  let table = new Uint32Array(first * 2);
  let count = 0;
  /** True where it stood there already. */
  const put = (into: Uint32Array, a: number, b: number): boolean => {
    const places = into.length / 2;
    for (let at = a & (places - 1); ; at = (at + 1) & (places - 1)) {
      const [p, q] = [into[at * 2], into[at * 2 + 1]];
      if (p === a && q === b) return true;
      if (p !== 0 || q !== 0) continue;
      into[at * 2] = a;
      into[at * 2 + 1] = b;
      return false;
    }
  };
  const grow = (): void => {
    const larger = new Uint32Array(table.length * 2);
    for (let at = 0; at < table.length; at += 2) {
      const [a = 0, b = 0] = [table[at], table[at + 1]];
      if (a !== 0 || b !== 0) put(larger, a, b);
    }
    table = larger;
  };
  return (name) => {
    const [a, b] = hashesOf(name);
    // Two zeros are an empty place.
    const isThere = put(table, a, b === 0 ? 1 : b);
    if (!isThere) count += 1;
    if (count > (table.length / 2) * fullest) grow();
    return isThere;
  };
}
