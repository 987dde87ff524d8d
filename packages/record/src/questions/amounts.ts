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
  'kWh/mi': '(?:kwh|kilowatt[ -]hours?) ?(?:/|per|a|for each|for every|every) ?mi(?:les?)?',
  mAh: 'mah|milliamp[ -]hours?',
  mA: 'ma|milliamps?',
  'gal/d': '(?:gallons?|gal) (?:a|per) day',
  'Btu/h': 'btu(?:/h| an hour| per hour)?',
  kWh: 'kwh|kilowatt[ -]hours?',
  kW: 'kw|kilowatts?',
  Ah: 'ah|amp[ -]?(?:hours?|hrs?)',
  A: 'amps?|amperes?|a',
  V: 'volts?|v',
  W: '(?:running |starting )?watts?|w(?!/)',
  'ft²': 'sq(?:uare)?\\.? ?(?:ft|feet|foot)|ft²',
  psi: 'psi',
  mph: 'mph|miles an hour|miles per hour|miles in the hour',
  mpg: 'mpg|miles to the gallon|miles per gallon',
  mi: 'miles?|mi',
  gal: 'gallons?|gal',
  in: 'inch(?:es)?|in(?=[ ,.;)?]|$)|"|”',
  ft: "feet|foot|ft|’|'",
  '°C': '° ?c|degrees c(?:elsius)?|celsius|centigrade|c',
  '°F': '° ?f|deg(?:rees)?(?! c)(?: f(?:ahrenheit)?)?|f',
  '%': '%|percent|per ?cent',
  USD: 'dollars?|bucks',
  d: 'days?',
  wk: 'weeks?|wks?',
  h: 'hours?|hrs?',
  yr: 'years?|yrs?',
};

const unitOf = (text: string): string | undefined =>
  Object.entries(written).find(([, words]) => new RegExp(`^(?:${words})$`, 'i').test(text))?.[0];

const number =
  /(?:(?<=\d ?x ?)|(?<![\p{L}\d.,/-]))(?<sign>minus |-)?(?<dollar>\$ ?)?(?<digits>\d{1,3}(?:,\d{3})+(?:\.\d+)?|0,\d{1,3}(?!\d)|\d+(?:\.\d+)?|\.\d+)(?<half> ?½|[ -]1\/2(?![\d/])| and a half)?(?<part>(?:[ -](?:and )?)(?:1|3|5|7|9|11|13|15)\/(?:4|8|16)(?![\d/]))?(?<thousand>k\b| thousand\b)?(?<grand> grand\b)?(?<hundred> hundred\b)?(?!nite|moro|mrw|nd\b|rd\b|th\b|st\b)/giu;
const units = new RegExp(
  `^(?:[ -]?(${Object.values(written).join('|')}))(?![\\p{L}\\d]|/\\p{L})`,
  'iu',
);

/** “ 5/16” */
function partOf(said = ''): number {
  const [over = 0, under = 1] = (said.match(/\d+/g) ?? []).map(Number);
  return over / under;
}

/** “2:14 am”, “by 9 pm” */
const isTime = ({ index, 0: said }: RegExpExecArray, text: string): boolean =>
  /^(?::\d\d| ?(?:[ap]\.m\.|[ap]m\b|o[’']clock))/i.test(text.slice(index + said.length)) ||
  /\d:$/.test(text.slice(0, index));

/** In figures: `$1,480`, `-8`, `2 5/16`, `10.4k`, `39 hundred`. */
function figuresIn(text: string): readonly Amount[] {
  return [...text.matchAll(number)]
    .filter((found) => !isTime(found, text))
    .map((found): Amount => {
      const {
        sign,
        dollar,
        digits = '',
        half,
        part,
        thousand,
        grand,
        hundred,
      } = found.groups ?? {};
      const size = (thousand || grand ? 1000 : 1) * (hundred ? 100 : 1);
      const value =
        (Number(/^0,/.test(digits) ? digits.replace(',', '.') : digits.replaceAll(',', '')) +
          (half ? 0.5 : partOf(part))) *
        size *
        (sign ? -1 : 1);
      const [from, to] = [found.index, found.index + found[0].length];
      return { value, from, to, ...((dollar || grand) && { unit: 'USD' }) };
    });
}

const parts: Readonly<Record<string, number>> = { half: 2, quarter: 4, eighth: 8, sixteenth: 16 };

/** “Twenty five and a half”, “two and five-sixteenths” */
function withPart(amount: Amount, text: string): Amount {
  const [said, over = '', under = ''] =
    /^ and (an?|one|three|five|seven|nine|eleven|thirteen|fifteen)[ -](half|quarter|eighth|sixteenth)s?\b/i.exec(
      text.slice(amount.to),
    ) ?? [];
  if (said === undefined || !Number.isInteger(amount.value) || amount.value > 99) return amount;
  const count = numbersSaid(over)[0]?.value ?? 1;
  const value = amount.value + count / (parts[under.toLowerCase()] ?? 2);
  return { ...amount, value, to: amount.to + said.length };
}

/** “15 ft 4”, “6'9\"” */
function withInches(amount: Amount, text: string): Amount {
  const [said, inches = ''] =
    /^ ?(\d{1,2})(?: ?(?:in\b|inches\b|"|”))?(?![\d/%]|\.\d|,\d|\p{L}|[ -]?(?:lb|ft|x|ga|gauge|awg)(?!\p{L}))/iu.exec(
      text.slice(amount.to),
    ) ?? [];
  if (said === undefined || Number(inches) > 11) return amount;
  return {
    ...amount,
    unit: 'in',
    value: amount.value * 12 + Number(inches),
    to: amount.to + said.length,
  };
}

/** “Minus seven Celsius”, “twenty below”: a number in words and one of the cold have no sign of their own. */
function belowZero(amount: Amount, text: string): Amount {
  const [minus] = /\bminus $/i.exec(text.slice(Math.max(0, amount.from - 6), amount.from)) ?? [];
  if (minus !== undefined && amount.value > 0)
    return { ...amount, value: -amount.value, from: amount.from - minus.length };
  const [below] =
    /^ (?:degrees )?below(?: zero|(?= ?(?:$|[,.;?!)]|(?:out|outside|and|or|then|tonight|at|hurt|hurts|last)(?!\p{L}))))/iu.exec(
      text.slice(amount.to),
    ) ?? [];
  if (below !== undefined && (amount.unit ?? '°F') === '°F')
    return { ...amount, value: -amount.value, unit: '°F', to: amount.to + below.length };
  const [above] = /^ above(?: zero|(?= ?(?:$|[,.;?!)])))/iu.exec(text.slice(amount.to)) ?? [];
  return above === undefined || amount.unit !== undefined
    ? amount
    : { ...amount, unit: '°F', to: amount.to + above.length };
}

/** “$1,120 a year”, “$165 an hour” */
function aYear(amount: Amount, text: string): Amount {
  const [said] = /^ (?:a|per) year\b/i.exec(text.slice(amount.to)) ?? [];
  if (said !== undefined) return { ...amount, to: amount.to + said.length, unit: 'USD/yr' };
  const [hour] = /^ ?(?:an|per|\/) ?h(?:ou)?r\b/i.exec(text.slice(amount.to)) ?? [];
  return hour === undefined ? amount : { ...amount, to: amount.to + hour.length, unit: 'USD/h' };
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
  return [
    ...figures,
    ...said
      .map((each) => withPart(each, text))
      .filter((each, at, all) => each.from >= (all[at - 1]?.to ?? 0)),
  ]
    .toSorted((a, b) => a.from - b.from)
    .map((amount): Amount => belowZero(withUnit(amount, text), text));
}

/** “A 6-ton bottle jack”; a half-ton and a one-ton dually are trucks. */
const tons = /^[ -]?tons?(?= (?:\p{L}+ )?jacks?(?!\p{L}))/iu;

const ofTires = /(?<!\p{L})(?:psi|pressures?|sidewalls?|tires?)(?!\p{L})/iu;
/** “The shop put 50 in”: what is put into tires is no inch. */
const isPutIn = ({ value, from, to }: Amount, unit: string, text: string): boolean =>
  / in$/i.test(unit) &&
  Number.isInteger(value) &&
  value >= 12 &&
  value <= 125 &&
  /(?<!\p{L})(?:put|puts|putting|pumped|has|have|had|got|run|keep|keeps)(?: (?:about|only|just|around))? $/iu.test(
    text.slice(Math.max(0, from - 24), from),
  ) &&
  !/^ (?:of|long|wide|high|tall|drop|rise|lift|rims?|wheels?)(?!\p{L})/iu.test(
    text.slice(to + unit.length),
  ) &&
  ofTires.test(text);

function withUnit(amount: Amount, text: string): Amount {
  const [grand] = /^ grand\b/i.exec(text.slice(amount.to, amount.to + 6)) ?? [];
  if (grand !== undefined && amount.unit === undefined)
    return { ...amount, value: amount.value * 1000, unit: 'USD', to: amount.to + grand.length };
  if (amount.unit !== undefined) return aYear(amount, text);
  const [ton] = tons.exec(text.slice(amount.to, amount.to + 30)) ?? [];
  if (ton !== undefined)
    return { ...amount, value: amount.value * 2000, unit: 'lb', to: amount.to + ton.length };
  const unit = units.exec(text.slice(amount.to, amount.to + 30));
  const symbol = unit ? unitOf(unit[1] ?? '') : undefined;
  // “Rated 5000 a trailer of …”: an article is no ampere.
  if (!unit || symbol === undefined) return amount;
  if (symbol === 'in' && isPutIn(amount, unit[0], text)) return amount;
  if (unit[0] === ' a' && Number.isInteger(amount.value)) return amount;
  // “22 in. with nothing in the truck”
  const dot =
    /^in$/i.test(unit[1] ?? '') && /^\. \p{Ll}/u.test(text.slice(amount.to + unit[0].length));
  const to = amount.to + unit[0].length + (dot ? 1 : 0);
  if (symbol === 'ft') return withInches({ ...amount, to, unit: symbol }, text);
  return symbol === 'wk'
    ? { ...amount, to, value: amount.value * 7, unit: 'd' }
    : { ...amount, to, unit: symbol };
}
