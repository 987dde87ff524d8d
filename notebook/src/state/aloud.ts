/** Units as they are said. */
const words: Readonly<Record<string, string>> = {
  lb·ft: 'pound-feet',
  kg·m: 'kilogram-meters',
  'lb/gal': 'pounds a gallon',
  'kg/L': 'kilograms a liter',
  lb: 'pounds',
  kg: 'kilograms',
  'ft²': 'square feet',
  'm²': 'square meters',
  ft: 'feet',
  in: 'inches',
  inWC: 'inches of water',
  mi: 'miles',
  mph: 'miles an hour',
  mm: 'millimeters',
  m: 'meters',
  km: 'kilometers',
  'km/h': 'kilometers an hour',
  gal: 'gallons',
  L: 'liters',
  psi: 'psi',
  kPa: 'kilopascals',
  '°F': 'degrees Fahrenheit',
  '°C': 'degrees Celsius',
  h: 'hours',
  V: 'volts',
  A: 'amps',
  Ah: 'amp-hours',
  W: 'watts',
  Wh: 'watt-hours',
  'Btu/h': 'Btu an hour',
  USD: 'dollars',
  '%': 'percent',
};

const singular: Readonly<Record<string, string>> = {
  feet: 'foot',
  inches: 'inch',
  'square feet': 'square foot',
};

const symbols = Object.keys(words)
  .toSorted((a, b) => b.length - a.length)
  .map((symbol) => (symbol === 'in' ? 'in(?! (?:the|a|an)\\b)' : symbol))
  .join('|');
const united = new RegExp(`(\\d) (${symbols})(?![\\w·/²])`, 'g');
const one = /(?<![\d.,–])1 ([a-z]+(?: feet)?)/g;

/**
 * A sentence as one says it: no symbol is left that a reader would have to guess at.
 *
 *     16–38 lb left of 500 lb   ►   16 to 38 pounds left of 500 pounds
 */
export function aloud(text: string): string {
  return text
    .replace(/(\d)–(?=[−\d])/g, '$1 to ')
    .replace(/(^|[\s(])−(?=\d)/g, '$1minus ')
    .replace(/ ± /g, ' plus or minus ')
    .replace(united, (_, digit: string, symbol: string) => `${digit} ${words[symbol] ?? symbol}`)
    .replace(one, (found, unit: string) => {
      const single =
        singular[unit] ?? (Object.values(words).includes(unit) ? unit.replace(/s$/, '') : unit);
      return found.replace(unit, single);
    });
}

/** Common practice for planning speech. */
const wordsPerMinute = 150;

/** How long a text takes to say, in whole seconds, rounded up. */
export function secondsAloud(text: string): number {
  const count = text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
  return Math.ceil((count / wordsPerMinute) * 60);
}
