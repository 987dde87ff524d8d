import type { Topic } from '@tarebook/rules/engine';
import type { Amount } from './amounts';

/** Both ends of what is told as a span: “780 to 820”, “between 780 and 820”, “sixteen to seventeen thousand”. */
type Span = { readonly least: number; readonly most: number; readonly other: Amount };

/** Farther apart than this two numbers are two, and no span of one. */
const widest = 2;

function joined(text: string, a: Amount, b: Amount): boolean {
  const between = text.slice(a.to, b.from);
  if (/^ ?(?:to|through|thru|-|–|—) ?$/iu.test(between)) return true;
  return (
    / and $/iu.test(` ${between}`.replace(/^ +/, ' ')) && /between $/iu.test(text.slice(0, a.from))
  );
}

/** “9 to 11 thousand”: the first is in thousands, too. */
export const inThousands = (text: string, amounts: readonly Amount[]): readonly Amount[] =>
  amounts.map((amount, at) => {
    const next = amounts[at + 1];
    if (!next || !joined(text, amount, next) || amount.unit !== undefined) return amount;
    const isShort = amount.value < 100 && next.value >= 1000 && next.value % 1000 === 0;
    return isShort ? { ...amount, value: amount.value * 1000 } : amount;
  });

/** Whether a number is the farther end of a span, and no number of its own. */
export function isFartherEnd(text: string, amounts: readonly Amount[], at: number): boolean {
  const [before, amount] = [amounts[at - 1], amounts[at]];
  return (
    before !== undefined &&
    amount !== undefined &&
    joined(text, before, amount) &&
    before.value < amount.value &&
    amount.value <= before.value * widest
  );
}

/** The span that a number is an end of; its other end has no meaning of its own. */
export function spanOf(
  text: string,
  amount: Amount,
  amounts: readonly Amount[],
  isFree: (amount: Amount) => boolean,
): Span | undefined {
  const at = amounts.findIndex(({ from }) => from === amount.from);
  const [before, next] = [amounts[at - 1], amounts[at + 1]];
  const pairs = [
    next && ([amount, next, next] as const),
    before && ([before, amount, before] as const),
  ];
  for (const pair of pairs) {
    if (!pair) continue;
    const [a, b, other] = pair;
    if (!isFree(other) || !joined(text, a, b)) continue;
    if (a.unit !== undefined && b.unit !== undefined && a.unit !== b.unit) continue;
    if (a.value < b.value && b.value <= a.value * widest)
      return { least: a.value, most: b.value, other };
  }
  return undefined;
}

/** Whether a fact may be told as a span: what a thing is rated for is one figure. */
export function mayBeSpan(topic: Topic, fact: string): boolean {
  const declared = topic.facts[fact];
  return declared?.kind === 'quantity' && declared.unit !== '' && declared.exact !== true;
}
