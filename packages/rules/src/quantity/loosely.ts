/**
 * What people put around a quantity.
 *
 *     about 5,000 lb     ~5,000 lb         within five percent
 *     at least 800 lb    800 lb or more    nothing said of the other end
 */
export type Loosely = {
  /** The quantity itself. */
  readonly text: string;
  readonly about: boolean;
  readonly bound?: 'least' | 'most';
};

/** How far off “about” may be; house practice, as nobody measures what is said so. */
export const aboutShare = 0.05;

const aboutWords = /^(?:about|around|approximately|approx\.?|roughly|circa|ca\.?)\s+(?=\S)/i;
const aboutSign = /[~≈]\s*(?=[-−+]?[$\d.½⅓⅔¼¾⅛⅜⅝⅞])/g;
const leastWords = /^(?:at least|no less than|≥|>=)\s*(?=\S)/i;
const mostWords = /^(?:at most|no more than|up to|≤|<=)\s*(?=\S)/i;
const orMore = /\s+or more$/i;
const orLess = /\s+or less$/i;

export function loosely(written: string): Loosely {
  const isLeast = leastWords.test(written) || orMore.test(written);
  const isMost = !isLeast && (mostWords.test(written) || orLess.test(written));
  const inner = isLeast
    ? written.replace(leastWords, '').replace(orMore, '')
    : isMost
      ? written.replace(mostWords, '').replace(orLess, '')
      : written;
  const text = inner.replace(aboutWords, '').replace(aboutSign, '');
  const bound = isLeast ? 'least' : isMost ? 'most' : undefined;
  return { text, about: text !== inner, ...(bound && { bound }) };
}
