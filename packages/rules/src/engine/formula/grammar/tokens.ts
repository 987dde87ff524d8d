import { FormulaError } from './problem';

/** A piece of a formula: a number, a word in quotes, a dotted name, a sign or bracket; `end` once there is no more. */
export type Token = {
  readonly kind: 'number' | 'word' | 'name' | 'sign' | 'end';
  readonly text: string;
};

/** A number, a word in either quotes, a name, a sign; by place, as named groups take long to gather. */
const pieces =
  /\s*(?:((?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)(?![\w.])|'([^'\\]*)'|"([^"\\]*)"|([a-z_]\w*(?:\.[a-z_]\w*)*)|(&&|\|\||[=!<>]=|[-+*/<>!(),]))/iy;

const kinds = ['number', 'word', 'word', 'name', 'sign'] as const;

/** @throws FormulaError at the first character that stands in no formula. */
export function tokensOf(text: string): readonly Token[] {
  const found: Token[] = [];
  const end = text.trimEnd().length;
  pieces.lastIndex = 0;
  for (let at = 0; at < end; at = pieces.lastIndex) {
    pieces.lastIndex = at;
    const match = pieces.exec(text);
    if (!match) {
      const rest = text.slice(at).trimStart();
      throw new FormulaError(`“${text}” cannot be read: ${strange(rest)}.`);
    }
    const place = match.findIndex((piece, i) => i > 0 && piece !== undefined);
    found.push({ kind: kinds[place - 1] ?? 'end', text: match[place] ?? '' });
  }
  return found;
}

/** What people mean who write “is” or one sign. */
export const comparing = " (write == 'word' to compare)";

function strange(rest: string): string {
  if (/^=(?!=)/.test(rest)) return `“=” is not used in formulas${comparing}`;
  if (/^['"]/.test(rest)) return `the quotes of ${rest.slice(0, 20)} are not closed`;
  return `“${/^[\w.]+|^./u.exec(rest)?.[0] ?? rest}” is not used in formulas`;
}
