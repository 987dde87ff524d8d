const street =
  'Street|St|Lane|Ln|Road|Rd|Avenue|Ave|Drive|Dr|Court|Ct|Way|Boulevard|Blvd|Place|Pl|Terrace|Circle|Highway|Hwy|Row|Mews|Trail|Loop|Pike|Alley';

/** What tells where somebody lives or is reached: mail, telephone, address, plate. */
const signs: readonly RegExp[] = [
  /[\w.+-]{1,64}@[\w-]{1,64}(?:\.[\w-]{1,64}){1,4}/g,
  /(?<![\d,.$])(?:\+?1[ .-]?)?(?:\(\d{3}\) ?|\d{3}[ .-])?\d{3}[ .-]\d{4}(?!\d| ?(?:lb|pound))/g,
  new RegExp(
    `\\b\\d{1,5} (?:[NSEW]\\.? )?(?:[A-Z][a-z’']{1,20} ){1,3}(?:${street})\\b\\.?(?:, (?:[A-Z][a-z]{1,20} ?){1,3}(?:\\d{5})?)?`,
    'g',
  ),
  /(?<=\b(?:claim|policy|order|ordered under|invoice|account|case) (?:number |no\.? |# ?)?(?:is )?)(?=[A-Za-z-]{0,8}\d)[A-Za-z0-9-]{4,16}\b/gi,
  /(?<=\bplates? (?:number |no\.? |is )?)(?=[A-Z0-9-]*\d)[A-Z0-9-]{5,9}\b/g,
];

/** The very words of a text that are personal, in the order in which they stand. */
export function personalIn(text: string): readonly string[] {
  const found = signs.flatMap((sign) =>
    [...text.matchAll(sign)].map((each) => ({ at: each.index, words: each[0].trim() })),
  );
  return found.toSorted((a, b) => a.at - b.at).map(({ words }) => words);
}

/** The same text as it may leave. */
export const masked = (text: string): string =>
  personalIn(text).reduce((now, words) => now.replaceAll(words, '[…]'), text);
