/**
 * What a terminal obeys instead of showing, and what turns or breaks the line it stands in: the
 * control characters of ASCII and of ISO 6429's eight-bit set, line and paragraph separators, and
 * the directional marks of Unicode's bidirectional algorithm (UAX #9). A line's own end is none.
 */
const unseen = /[^\P{Cc}\n]|[\p{Bidi_Control}\p{Zl}\p{Zp}\ufeff]/gu;

/** The text with a sign in the place of each such character. */
export const shownPlainly = (text: string): string => text.replace(unseen, '�');

/** The same as one line. */
export const onOneLine = (text: string): string =>
  shownPlainly(text.replace(/\s*[\r\n\u2028\u2029]+\s*/g, ' ').replace(/\t/g, ' '));

const escaped = (character: string): string =>
  `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** JSON that says the same and can be looked at in a terminal: inside a text they stand escaped. */
export const jsonShownPlainly = (json: string): string => json.replace(unseen, escaped);
