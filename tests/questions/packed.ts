import type { Learned } from './softmax';

/** Weights are kept in steps of this … */
const step = 0.1;
/** … and what weighs less than this is left out. */
const leastOf = 0.17;

type Packed = Readonly<Record<string, string>>;

/** Terms by their weight in steps, the heaviest first. */
function packed(weights: readonly (readonly [string, number])[], least: number): Packed {
  const by = new Map<number, string[]>();
  for (const [term, weight] of weights) {
    if (Math.abs(weight) < least) continue;
    const of = Math.round(weight / step);
    by.set(of, [...(by.get(of) ?? []), term]);
  }
  return Object.fromEntries(
    // A key that is a whole number would stand before all others, whatever the order.
    [...by]
      .toSorted((a, b) => b[0] - a[0])
      .map(([of, terms]) => [of < 0 ? `${of}` : `+${of}`, terms.toSorted().join(',')]),
  );
}

const round = (value: number): number => Number(value.toFixed(3));

/** Of two classes, what speaks for the second and against the first. */
export function packedTwo({ weights, bias }: Learned) {
  const apart = [...weights].map(([term, [a = 0, b = 0]]) => [term, b - a] as const);
  return { step, bias: round((bias[1] ?? 0) - (bias[0] ?? 0)), weights: packed(apart, leastOf) };
}

/** Of many classes, what speaks for each. */
export function packedMany({ classes, weights, bias, beside }: Learned, least = leastOf) {
  const of = (c: number) => [...weights].map(([term, own]) => [term, own[c] ?? 0] as const);
  return {
    step,
    bias: Object.fromEntries(classes.map((id, c) => [id, round(bias[c] ?? 0)])),
    besides: [...beside].map(round),
    weights: Object.fromEntries(classes.map((id, c) => [id, packed(of(c), least)])),
  };
}
