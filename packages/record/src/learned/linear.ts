/** Terms by what they weigh, in steps; between commas, so that what weighs alike stands together. */
export type Packed = Readonly<Record<string, string>>;

/** What speaks for the one of two classes; below zero, for the other. */
export type LearnedTwo = {
  readonly step: number;
  readonly bias: number;
  readonly weights: Packed;
};

/** What speaks for each of many classes; `besides` weighs what speaks for them beside the terms. */
export type LearnedMany = {
  readonly step: number;
  readonly bias: Readonly<Record<string, number>>;
  readonly besides: readonly number[];
  readonly weights: Readonly<Record<string, Packed>>;
};

/** What each term weighs, in steps. */
export const unpacked = (packed: Packed): ReadonlyMap<string, number> =>
  new Map(
    Object.entries(packed).flatMap(([steps, terms]) =>
      terms.split(',').map((term) => [term, Number(steps)] as const),
    ),
  );

/** The terms of a text, each with the words that it stands for there. */
export type Terms = ReadonlyMap<string, string>;

export type Weighed = {
  readonly score: number;
  /** The words that weighed most for it, the heaviest first. */
  readonly because: readonly string[];
};

const mostBecause = 3;

/**
 * What the terms of a text weigh together. A long text has more words on both sides, so that the sum
 * is taken over the root of how many there are that were ever learned.
 *
 * @param step what one step of the weights is
 */
export function weighed(
  terms: Terms,
  weights: ReadonlyMap<string, number>,
  isKnown: (term: string) => boolean,
  step: number,
): Weighed {
  let sum = 0;
  let known = 0;
  const said: (readonly [string, number])[] = [];
  for (const [term, words] of terms) {
    if (!isKnown(term)) continue;
    known += 1;
    const steps = weights.get(term) ?? 0;
    sum += steps;
    if (steps > 0 && words !== '') said.push([words, steps]);
  }
  const heaviest = said.toSorted((a, b) => b[1] - a[1]).map(([words]) => words);
  return {
    score: (sum * step) / Math.sqrt(Math.max(1, known)),
    because: [...new Set(heaviest)].slice(0, mostBecause),
  };
}

/** What speaks for each class, looked up. */
export type Weigher = (terms: Terms) => ReadonlyMap<string, Weighed>;

/** Weighs the terms of a text for each of many classes. */
export function weigherOf({ step, weights, bias }: LearnedMany): Weigher {
  const byClass = Object.entries(weights).map(([id, packed]) => [id, unpacked(packed)] as const);
  const known = new Set(byClass.flatMap(([, own]) => [...own.keys()]));
  return (terms) =>
    new Map(
      byClass.map(([id, own]) => {
        const found = weighed(terms, own, (term) => known.has(term), step);
        return [id, { ...found, score: found.score + (bias[id] ?? 0) }] as const;
      }),
    );
}
