import { namesIn } from './names';

const street =
  'Street|St|Lane|Ln|Road|Rd|Avenue|Ave|Drive|Dr|Court|Ct|Way|Boulevard|Blvd|Place|Pl|Terrace|Circle|Close|Crescent|Square|Hill|View|Gardens|Highway|Hwy|Row|Mews|Trail|Loop|Pike|Alley|Spur';
/** In small letters only what nothing else is called; “st” is a kind of tire. */
const smallStreet =
  '(?:street|lane|road|avenue|court|boulevard|blvd|terrace)|(?:st|ave|rd|ln|dr|ct)(?= (?:apt|unit)\\b|, [a-z])';
const town = '(?:, (?:[A-Z][a-z]{1,20} ?){1,3}(?:\\d{5})?)?';

/** What tells where somebody lives or is reached: mail, telephone, address, plate, number of an order. */
const signs: readonly RegExp[] = [
  /[\w.+-]{1,64}@[\w-]{1,64}(?:\.[\w-]{1,64}){1,4}/g,
  // How people are named where they write in public.
  /(?<![\w@.])@[A-Za-z]\w{2,30}/g,
  /(?<![\d,.$])(?:\+?1[ .-]?)?(?:\(\d{3}\) ?|\d{3}[ .-])\d{3}[ .-]\d{4}(?!\d| ?(?:lb|pound))/g,
  /(?<![\d,.$])\d{3}[.-]\d{4}(?!\d| ?(?:lb|pound))/g,
  // Three figures and four beside each other are mostly two weights.
  /(?<=\b(?:call|callback|cb|text|ring|phone|telephone|cell|mobile|tel|number|no|reach|dial|desk|back|at)\b[ :.,#]{0,3}(?:(?:me|us|him|her|them|back|at|on|is|to|it[’']s)[ :.,]{1,2}){0,3})\d{3} \d{4}(?!\d| ?(?:lb|pound))/gi,
  /(?<![\d,.$])\+\d{1,3}(?:[ .-]?\(?\d{2,5}\)?){2,5}(?!\d)/g,
  /(?<![\d,.$-])\d{10}(?![\d,-])/g,
  new RegExp(
    `\\b\\d{1,5} (?:[NSEW]\\.? )?(?:[A-Z][a-z’']{1,20} ){1,3}(?:${street})\\b${town}`,
    'g',
  ),
  new RegExp(
    `\\b\\d{1,5} (?:[a-z]{3,20} ){1,2}(?:${smallStreet})\\b(?: (?:apt|unit) ?\\w{1,4})?(?:, [a-z]{3,15}(?: [a-z]{3,15})?(?=[.,!?\\n]|$))?`,
    'g',
  ),
  /\bP\.?O\.? Box \d{1,6}(?:, (?:[A-Z][a-z]{1,20} ?){1,3}(?:\d{5})?)?/g,
  /(?<=\b(?:claim|policy|order|ordered under|invoice|account|case|booking|serial) (?:number |no\.? |# ?)?(?:is )?)(?=[A-Za-z-]{0,8}\d)[A-Za-z0-9-]{4,16}\b/gi,
  // The number of a vehicle: 17 signs without I, O and Q (ISO 3779).
  /\b(?=[A-Z0-9]*\d)(?=[A-Z0-9]*[A-Z])[A-HJ-NPR-Z0-9]{17}\b/g,
  /(?<=\bvin(?: (?:is|no\.?|number|#))?[ :#]{1,3})(?=[a-z0-9]*\d)[a-z0-9]{11,17}\b/gi,
  /\b(?:SO|RO|WO)[ -]\d{4,8}\b/g,
];

/** What is told of a plate. */
const plates: readonly RegExp[] = [
  /(?<=\b[Pp]lates? (?:number |no\.? |is )?)(?=[A-Z0-9 -]*\d)[A-Z0-9]{2,4}[ -]?[A-Z0-9]{2,5}\b/g,
  /(?<=\bplate (?:on|of) (?:(?:my|our|the|his|her) )?\w{2,12} (?:is )?)(?=[A-Z0-9 -]*\d)[A-Z0-9]{2,4}[ -]?[A-Z0-9]{2,5}\b/g,
];

/** What stands on a plate of ratings: no registration is a figure alone, or has one of these words. */
const isRating = (words: string): boolean =>
  /^[\d ]+$/.test(words) || /(?:G[VAC]WR|UVW|CCC|LBS?|PSI|KG|MAX|DRY)(?![A-Z])/.test(words);

/** The very words of a text that are personal, in the order in which they stand. */
export function personalIn(text: string): readonly string[] {
  const found = [
    ...signs.flatMap((sign) =>
      [...text.matchAll(sign)].map((each) => ({ at: each.index, words: each[0].trim() })),
    ),
    ...plates.flatMap((sign) =>
      [...text.matchAll(sign)]
        .map((each) => ({ at: each.index, words: each[0].trim() }))
        .filter(({ words }) => !isRating(words)),
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
