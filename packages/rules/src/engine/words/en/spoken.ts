import { type End, type Figures, showEnd } from '../../../quantity';

/** Units as they are said: of one, and of more. */
const units: Readonly<Record<string, readonly [one: string, more: string]>> = {
  '%': ['percent', 'percent'],
  '% per 1,000 ft': ['percent a thousand feet', 'percent a thousand feet'],
  '°': ['degree', 'degrees'],
  lb: ['pound', 'pounds'],
  oz: ['ounce', 'ounces'],
  kg: ['kilogram', 'kilograms'],
  g: ['gram', 'grams'],
  in: ['inch', 'inches'],
  ft: ['foot', 'feet'],
  yd: ['yard', 'yards'],
  mi: ['mile', 'miles'],
  mm: ['millimeter', 'millimeters'],
  cm: ['centimeter', 'centimeters'],
  m: ['meter', 'meters'],
  km: ['kilometer', 'kilometers'],
  'in²': ['square inch', 'square inches'],
  'ft²': ['square foot', 'square feet'],
  'm²': ['square meter', 'square meters'],
  'ft³': ['cubic foot', 'cubic feet'],
  'm³': ['cubic meter', 'cubic meters'],
  gal: ['gallon', 'gallons'],
  qt: ['quart', 'quarts'],
  L: ['liter', 'liters'],
  s: ['second', 'seconds'],
  min: ['minute', 'minutes'],
  h: ['hour', 'hours'],
  d: ['day', 'days'],
  wk: ['week', 'weeks'],
  yr: ['year', 'years'],
  mph: ['mile an hour', 'miles an hour'],
  'km/h': ['kilometer an hour', 'kilometers an hour'],
  'm/s': ['meter a second', 'meters a second'],
  mpg: ['mile a gallon', 'miles a gallon'],
  lbf: ['pound of force', 'pounds of force'],
  N: ['newton', 'newtons'],
  A: ['amp', 'amps'],
  mA: ['milliamp', 'milliamps'],
  Ah: ['amp-hour', 'amp-hours'],
  V: ['volt', 'volts'],
  Ω: ['ohm', 'ohms'],
  mΩ: ['milliohm', 'milliohms'],
  W: ['watt', 'watts'],
  kW: ['kilowatt', 'kilowatts'],
  Wh: ['watt-hour', 'watt-hours'],
  kWh: ['kilowatt-hour', 'kilowatt-hours'],
  hp: ['horsepower', 'horsepower'],
  Btu: ['Btu', 'Btu'],
  'Btu/h': ['Btu an hour', 'Btu an hour'],
  psi: ['pound a square inch', 'pounds a square inch'],
  kPa: ['kilopascal', 'kilopascals'],
  inWC: ['inch of water column', 'inches of water column'],
  '°F': ['degree Fahrenheit', 'degrees Fahrenheit'],
  '°C': ['degree Celsius', 'degrees Celsius'],
  'F°': ['degree Fahrenheit', 'degrees Fahrenheit'],
  'C°': ['degree Celsius', 'degrees Celsius'],
  USD: ['dollar', 'dollars'],
};

/** Units are said “an hour”, “an inch”, “an amp”. */
const withArticle = (unit: string): string => `${/^(hour|[aeio])/.test(unit) ? 'an' : 'a'} ${unit}`;

/** A unit of a quotient or a product, from those of its parts: “pounds a gallon”, “pound-feet”. */
function nameOf(unit: string): readonly [one: string, more: string] {
  const known = units[unit];
  if (known) return known;
  const [above = '', ...below] = unit.split('/');
  const [first = '', ...more] = above.split('·');
  const [one, several] = units[first] ?? [first, first];
  const by = below.map((each) => ` ${withArticle(units[each]?.[0] ?? each)}`).join('');
  if (more.length === 0) return [`${one}${by}`, `${several}${by}`];
  const [last = ''] = more;
  const [single, plural] = units[last] ?? [last, last];
  return [`${one}-${single}${by}`, `${one}-${plural}${by}`];
}

const sixteenthsSaid: Readonly<Record<number, string>> = {
  4: 'a quarter',
  8: 'a half',
  12: 'three quarters',
};

/** How many sixteenths an end in inches is, where it is a whole number of them. */
function sixteenthsOf({ value, sixteenths }: End): number | undefined {
  if (sixteenths !== undefined) return sixteenths;
  const count = Math.abs(value) * 16;
  return Math.abs(count - Math.round(count)) < 1e-6 ? Math.round(count) : undefined;
}

const small = ['', 'one', 'two', 'three', 'four', 'five', 'six', 'seven'];
const odd: Readonly<Record<number, string>> = {
  9: 'nine',
  11: 'eleven',
  13: 'thirteen',
  15: 'fifteen',
};

function fraction(sixteenths: number): string {
  const known = sixteenthsSaid[sixteenths];
  if (known !== undefined) return known;
  const isEighth = sixteenths % 2 === 0;
  const count = isEighth ? sixteenths / 2 : sixteenths;
  const part = isEighth ? 'eighth' : 'sixteenth';
  return `${small[count] ?? odd[count]} ${part}${count === 1 ? '' : 's'}`;
}

/** A number as it is said, and whether it is one of something. */
function numberOf(end: End, unit: string): { readonly said: string; readonly isOne: boolean } {
  const sign = end.value < 0 ? 'minus ' : '';
  const plain: End = { ...end, value: Math.abs(end.value) };
  const sixteenths = unit === 'in' ? sixteenthsOf(end) : undefined;
  if (sixteenths !== undefined && sixteenths % 16 !== 0) {
    const whole = Math.floor(sixteenths / 16);
    const part = fraction(sixteenths % 16);
    if (whole > 0) return { said: `${sign}${whole} and ${part}`, isOne: false };
    return { said: `${sign}${part === 'a half' ? 'half an' : `${part} of an`}`, isOne: true };
  }
  const written = showEnd({ value: plain.value, places: plain.places });
  return { said: written === '0' ? '0' : `${sign}${written}`, isOne: written === '1' };
}

/** Units of which none is a reading like any other. */
const scales = new Set(['°F', '°C', 'F°', 'C°', '°', '%', 'V']);

/** What may well be below nothing, and is read as it stands. */
const signed = new Set(['°F', '°C', 'F°', 'C°', '°']);

/** A number with its unit; of an amount of which there is none, “no pounds”. */
function withUnit(end: End, unit: string): string {
  const { said, isOne } = numberOf(end, unit);
  if (said === '0' && unit !== '') {
    return `${scales.has(unit) ? 'zero' : 'no'} ${nameOf(unit)[1]}`;
  }
  if (unit === '') return said;
  return `${said} ${nameOf(unit)[isOne ? 0 : 1]}`;
}

/** The lower end of a range, which has its unit only where it is less than one of it. */
const lowEnd = (end: End, unit: string): string => {
  const isPart = unit === 'in' && Math.abs(end.value) < 1 && end.value !== 0;
  return isPart ? withUnit(end, unit) : numberOf(end, unit).said;
};

/** A share below nothing, as of a tongue that lifts. */
const isShareBelow = (figures: Figures): boolean => {
  if (!('unit' in figures) || figures.unit !== '%') return false;
  return ('high' in figures ? figures.high : figures.end).value < 0;
};

/** “20 pounds”, “16 to 38 pounds”, “1 inch of water column”. */
export function spokenQuantity(figures: Figures): string {
  if (isShareBelow(figures)) return 'nothing';
  switch (figures.kind) {
    case 'one':
      return withUnit(figures.end, figures.unit);
    case 'at-least':
      return `${withUnit(figures.end, figures.unit)} or more`;
    case 'at-most':
      return `${withUnit(figures.end, figures.unit)} or less`;
    case 'range':
      // Of an amount that may be none, or less, the other end is what is heard.
      if (figures.low.value <= 0 && figures.high.value > 0 && !signed.has(figures.unit)) {
        return `up to ${withUnit(figures.high, figures.unit)}`;
      }
      return `${lowEnd(figures.low, figures.unit)} to ${withUnit(figures.high, figures.unit)}`;
    case 'unknown':
      return 'not known';
    case 'no-limit':
      return 'no limit';
    case 'no-end':
      return 'no end in sight';
  }
}

/** What is named by its rating: “a 30-amp outlet”. */
const rated = /(\d) ?A (?=(?:adapter|breaker|cord|inlet|outlet|plug|site|trailer)\b)/g;
const abbreviated = /(\d) ?(A|V|W|kW|Wh|kWh|Ah|psi|inWC|lb|gal|mph|ft)\b/g;

/**
 * A text that somebody wrote for reading, as it is read aloud: no quotation marks, no ids, no signs,
 * no abbreviated units.
 */
export const readAloud = (text: string): string =>
  text
    .replace(/`([^`]*)`/g, (_, id: string) => id.replaceAll('-', ' '))
    .replace(/[“”"„]/g, '')
    .replace(/(\d)–(?=\d)/g, '$1 to ')
    .replace(rated, '$1-amp ')
    .replace(abbreviated, (_, digit: string, unit: string) => `${digit} ${nameOf(unit)[1]}`)
    .replace(/ ?%/g, ' percent')
    .replace(/ – /g, ', ');

/** “10 to 15 percent”: of two figures that follow one another, only the second has its unit. */
export const oneUnit = (text: string): string =>
  text.replace(/(\d[\d.,]*) ([a-z]+(?:[ -][a-z]+)?) to (\d[\d.,]*) \2(?![a-z])/g, '$1 to $3 $2');
