import { FormulaError } from './problem';

/** A piece of a formula: a number, a word in quotes, a dotted name, a sign or bracket; `end` once there is no more. */
export type Token = {
  readonly kind: 'number' | 'word' | 'name' | 'sign' | 'end';
  readonly text: string;
};

const pieces =
  /\s*(?:(?<number>(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)(?![\w.])|'(?<word>[^'\\]*)'|"(?<quoted>[^"\\]*)"|(?<name>[a-z_]\w*(?:\.[a-z_]\w*)*)|(?<sign>&&|\|\||[=!<>]=|[-+*/<>!(),]))/iy;

const kinds = ['number', 'name', 'sign', 'word'] as const;

function tokenIn({ word, quoted, ...other }: Record<string, string | undefined>): Token {
  const all: Record<string, string | undefined> = { ...other, word: word ?? quoted };
  const kind = kinds.find((each) => all[each] !== undefined) ?? 'end';
  return { kind, text: all[kind] ?? '' };
}

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
    found.push(tokenIn(match.groups ?? {}));
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
