import { numbersSaid } from './number-words';

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
  W: 'watts?|w(?!/)',
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
  /(?<![\p{L}\d.,/-])(?<sign>minus |-)?(?<dollar>\$ ?)?(?<digits>\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?)(?<thousand>k\b| thousand\b)?(?<hundred> hundred\b)?/giu;
const units = new RegExp(`^(?:[ -]?(${Object.values(written).join('|')}))(?![\\p{L}\\d])`, 'iu');

/** In figures: `$1,480`, `-8`, `10.4k`, `39 hundred`. */
function figuresIn(text: string): readonly Amount[] {
  return [...text.matchAll(number)].map((found): Amount => {
    const { sign, dollar, digits = '', thousand, hundred } = found.groups ?? {};
    const size = (thousand ? 1000 : 1) * (hundred ? 100 : 1);
    const value = Number(digits.replaceAll(',', '')) * size * (sign ? -1 : 1);
    const [from, to] = [found.index, found.index + found[0].length];
    return { value, from, to, ...(dollar && { unit: 'USD' }) };
  });
}

/**
 * Every quantity of a text, in figures or in words. A telephone number or a year of four digits has no
 * unit, and no cue.
 */
export function amountsIn(text: string): readonly Amount[] {
  const figures = figuresIn(text);
  const said: readonly Amount[] = numbersSaid(text).filter(
    ({ from, to }) => !figures.some((each) => each.from < to && from < each.to),
  );
  return [...figures, ...said]
    .toSorted((a, b) => a.from - b.from)
    .map((amount): Amount => {
      if (amount.unit !== undefined) return amount;
      const unit = units.exec(text.slice(amount.to, amount.to + 30));
      const symbol = unit ? unitOf(unit[1] ?? '') : undefined;
      // “Rated 5000 a trailer of …”: an article is no ampere.
      if (!unit || symbol === undefined || unit[0] === ' a') return amount;
      return { ...amount, to: amount.to + unit[0].length, unit: symbol };
    });
}
