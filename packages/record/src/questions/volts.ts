import type { Amount } from './amounts';

/** What is read off a battery, in the text at all. */
const ofBattery =
  /(?<!\p{L})(?:batter(?:y|ies)|volts?|voltage|voltmeter|house bank|batt)(?!\p{L})|\d ?v(?!\p{L})/iu;
/** What stands right ahead of degrees, or right behind them. */
const aheadOfDegrees =
  /(?<!\p{L})(?:lows?|highs?|temp(?:s|erature|eratures)?|degrees|forecast|thermometer|outside|minus|below)(?: (?:of|is|was|at|near|around|about|says|said|read|reads|temp|temperature))* $/iu;
const degrees = /^ ?(?:°|º|deg(?:s|rees?)?(?!\p{L})|[fc](?!\p{L})|fahrenheit|celsius)/iu;
/** A rested battery and one on its charger lie within these. */
const least = 10;
const most = 15;

/** Whether a figure without a unit is what a battery shows: with a decimal, and not said of the weather. */
const isVolts = (text: string, { from, to, value }: Amount): boolean =>
  value >= least &&
  value < most &&
  /^\d\d\.\d+$/.test(text.slice(from, to)) &&
  ofBattery.test(text) &&
  !degrees.test(text.slice(to, to + 14)) &&
  !aheadOfDegrees.test(text.slice(Math.max(0, from - 44), from));

/** The amounts of a text, with volts where a battery is told of and a figure alone can be nothing else. */
export const withVolts = (text: string, amounts: readonly Amount[]): readonly Amount[] =>
  amounts.map((amount) =>
    amount.unit === undefined && isVolts(text, amount) ? { ...amount, unit: 'V' } : amount,
  );

const figures = /(?<![\p{L}\d.,])(?:[89]|1\d)(?:\.\d+)?(?=v(?!\p{L})|[^\p{L}\d]|$)/giu;
const saidVolts = /^ ?(?:volts?|v)(?!\p{L})/iu;

/** A text with naughts for what a battery shows: “12.7 last night” tells of no frost. */
export const withoutVolts = (text: string): string =>
  text.replace(figures, (said: string, from: number) => {
    const to = from + said.length;
    const isOne =
      saidVolts.test(text.slice(to, to + 8)) || isVolts(text, { value: Number(said), from, to });
    return isOne ? said.replace(/\d/g, '0') : said;
  });
