/** A quantity as it stands in a text: its number, its unit where it has one, and where it stands. */
export type Amount = {
  readonly value: number;
  /** By the symbol of a case; undefined where no unit is written. */
  readonly unit?: string;
  readonly from: number;
  readonly to: number;
};

/** Units as people write them, by the symbol a case has for each. */
const written: Readonly<Record<string, string>> = {
  lb: 'lbs?|pounds?|#',
  kg: 'kg|kilos?|kilograms?',
  'Btu/h': 'btu(?:/h| an hour| per hour)?',
  kWh: 'kwh|kilowatt[ -]hours?',
  kW: 'kw|kilowatts?',
  Ah: 'ah|amp[ -]?hours?',
  A: 'amps?|amperes?|a',
  V: 'volts?|v',
  W: 'watts?|w',
  psi: 'psi',
  mph: 'mph|miles an hour|miles per hour',
  mpg: 'mpg|miles to the gallon|miles per gallon',
  mi: 'miles?|mi',
  gal: 'gallons?|gal',
  in: 'inch(?:es)?|in(?=[ ,.;)?]|$)|"|”',
  ft: "feet|foot|ft|’|'",
  '°C': '° ?c|degrees c(?:elsius)?',
  '°F': '° ?f|degrees(?! c)(?: f(?:ahrenheit)?)?|f',
  '%': '%|percent|per ?cent',
  USD: 'dollars?|bucks',
  d: 'days?',
  h: 'hours?|hrs?',
  yr: 'years?|yrs?',
};

const unitOf = (text: string): string | undefined =>
  Object.entries(written).find(([, words]) => new RegExp(`^(?:${words})$`, 'i').test(text))?.[0];

const number =
  /(?<![\p{L}\d.,/-])(?<sign>minus |-)?(?<dollar>\$ ?)?(?<digits>\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?)(?<thousand>k\b)?/giu;
const units = new RegExp(`^(?:[ -]?(${Object.values(written).join('|')}))(?![\\p{L}\\d])`, 'iu');

/** Every quantity of a text. A telephone number or a year of four digits has no unit, and no cue. */
export function amountsIn(text: string): readonly Amount[] {
  return [...text.matchAll(number)].flatMap((found): readonly Amount[] => {
    const { sign, dollar, digits = '', thousand } = found.groups ?? {};
    const value = Number(digits.replaceAll(',', '')) * (thousand ? 1000 : 1) * (sign ? -1 : 1);
    const from = found.index;
    const to = from + found[0].length;
    const unit = units.exec(text.slice(to, to + 30));
    if (dollar) return [{ value, unit: 'USD', from, to }];
    if (!unit) return [{ value, from, to }];
    const symbol = unitOf(unit[1] ?? '');
    return [
      { value, from, to: to + unit[0].length, ...(symbol !== undefined && { unit: symbol }) },
    ];
  });
}
