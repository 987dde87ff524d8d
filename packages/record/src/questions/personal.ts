import { namesIn } from './names';

const street =
  'Street|St|Lane|Ln|Road|Rd|Avenue|Ave|Drive|Dr|Court|Ct|Way|Boulevard|Blvd|Place|Pl|Terrace|Circle|Highway|Hwy|Row|Mews|Trail|Loop|Pike|Alley|Spur';

/** What tells where somebody lives or is reached: mail, telephone, address, plate, number of an order. */
const signs: readonly RegExp[] = [
  /[\w.+-]{1,64}@[\w-]{1,64}(?:\.[\w-]{1,64}){1,4}/g,
  /(?<![\d,.$])(?:\+?1[ .-]?)?(?:\(\d{3}\) ?|\d{3}[ .-])?\d{3}[ .-]\d{4}(?!\d| ?(?:lb|pound))/g,
  new RegExp(
    `\\b\\d{1,5} (?:[NSEW]\\.? )?(?:[A-Z][a-z’']{1,20} ){1,3}(?:${street})\\b(?:, (?:[A-Z][a-z]{1,20} ?){1,3}(?:\\d{5})?)?`,
    'g',
  ),
  /\bP\.?O\.? Box \d{1,6}(?:, (?:[A-Z][a-z]{1,20} ?){1,3}(?:\d{5})?)?/g,
  /(?<=\b(?:claim|policy|order|ordered under|invoice|account|case|booking|serial) (?:number |no\.? |# ?)?(?:is )?)(?=[A-Za-z-]{0,8}\d)[A-Za-z0-9-]{4,16}\b/gi,
  /(?<=\b[Pp]lates? (?:number |no\.? |is )?)(?=[A-Z0-9 -]*\d)[A-Z0-9]{2,4}[ -]?[A-Z0-9]{2,5}\b/g,
  /(?<=\bplate (?:on|of) (?:(?:my|our|the|his|her) )?\w{2,12} (?:is )?)(?=[A-Z0-9 -]*\d)[A-Z0-9]{2,4}[ -]?[A-Z0-9]{2,5}\b/g,
  // The number of a vehicle: 17 signs without I, O and Q (ISO 3779).
  /\b(?=[A-Z0-9]*\d)(?=[A-Z0-9]*[A-Z])[A-HJ-NPR-Z0-9]{17}\b/g,
  /(?<=\bVIN (?:is |no\.? )?)[A-Z0-9]{11,17}\b/g,
  /\b(?:SO|RO|WO)[ -]\d{4,8}\b/g,
];

/** The very words of a text that are personal, in the order in which they stand. */
export function personalIn(text: string): readonly string[] {
  const found = [
    ...signs.flatMap((sign) =>
      [...text.matchAll(sign)].map((each) => ({ at: each.index, words: each[0].trim() })),
    ),
    ...namesIn(text),
  ].toSorted((a, b) => a.at - b.at || b.words.length - a.words.length);
  return found
    .filter(
      ({ at, words }, i) =>
        !found.slice(0, i).some((each) => each.at + each.words.length >= at + words.length),
    )
    .map(({ words }) => words);
}

/** The same text as it may leave. */
export const masked = (text: string): string =>
  personalIn(text).reduce((now, words) => now.replaceAll(words, '[…]'), text);
