/**
 * Learns from labeled texts what each of their terms says for each class: multinomial logistic
 * regression with a ridge (Hastie, Tibshirani, Friedman: The Elements of Statistical Learning, 2nd
 * edition, 4.4 and 18.3), by gradient descent with a step of its own for each weight (Duchi, Hazan,
 * Singer: Adaptive subgradient methods, JMLR 12, 2011). Nothing in it is drawn at random: the same
 * texts always give the same weights.
 */
export type Sample = {
  readonly terms: readonly string[];
  readonly label: string;
  /** How much it counts. */
  readonly weight: number;
  /** Of each class what speaks for it besides the terms; its weights are the same for all classes. */
  readonly beside?: readonly (readonly number[])[];
};

export type Learned = {
  readonly classes: readonly string[];
  /** By term, what it weighs for each class. */
  readonly weights: ReadonlyMap<string, Float64Array>;
  readonly bias: Float64Array;
  readonly beside: Float64Array;
};

export type How = {
  readonly classes: readonly string[];
  readonly ridge: number;
  readonly rounds: number;
  /** A term of fewer texts says nothing. */
  readonly fewest: number;
};

const stepSize = 0.3;

function add(to: Float64Array, at: number, by: number): void {
  to[at] = (to[at] ?? 0) + by;
}

export function learn(samples: readonly Sample[], how: How): Learned {
  const { classes, ridge, rounds, fewest } = how;
  const count = classes.length;
  const classOf = new Map(classes.map((each, at) => [each, at]));
  const inTexts = new Map<string, number>();
  for (const { terms } of samples)
    for (const term of terms) inTexts.set(term, (inTexts.get(term) ?? 0) + 1);
  const known = [...inTexts].filter(([, n]) => n >= fewest).map(([term]) => term);
  const place = new Map(known.map((term, at) => [term, at]));
  const rows = samples.map(({ terms, label, weight, beside }) => {
    const own = terms.flatMap((term) => place.get(term) ?? []);
    const scale = 1 / Math.sqrt(Math.max(1, own.length));
    return { own, scale, weight, is: classOf.get(label) ?? 0, beside };
  });
  const size = known.length * count;
  const weights = new Float64Array(size);
  const seen = new Float64Array(size).fill(1e-6);
  const bias = new Float64Array(count);
  const seenBias = new Float64Array(count).fill(1e-6);
  const kinds = samples[0]?.beside?.[0]?.length ?? 0;
  const besides = new Float64Array(kinds);
  const seenBeside = new Float64Array(kinds).fill(1e-6);
  const scores = new Float64Array(count);
  for (let round = 0; round < rounds; round++) {
    const slope = new Float64Array(size);
    const slopeBias = new Float64Array(count);
    const slopeBeside = new Float64Array(kinds);
    for (const { own, scale, weight, is, beside } of rows) {
      scores.set(bias);
      for (let c = 0; c < count; c++)
        for (let k = 0; k < kinds; k++) add(scores, c, (besides[k] ?? 0) * (beside?.[c]?.[k] ?? 0));
      for (const at of own)
        for (let c = 0; c < count; c++) add(scores, c, (weights[at * count + c] ?? 0) * scale);
      const most = Math.max(...scores);
      let sum = 0;
      for (let c = 0; c < count; c++) {
        scores[c] = Math.exp((scores[c] ?? 0) - most);
        sum += scores[c] ?? 0;
      }
      for (let c = 0; c < count; c++) {
        const off = ((scores[c] ?? 0) / sum - (c === is ? 1 : 0)) * weight;
        if (Math.abs(off) < 1e-4) continue;
        add(slopeBias, c, off);
        for (let k = 0; k < kinds; k++) add(slopeBeside, k, off * (beside?.[c]?.[k] ?? 0));
        for (const at of own) add(slope, at * count + c, off * scale);
      }
    }
    for (let at = 0; at < size; at++) {
      if (slope[at] === 0 && weights[at] === 0) continue;
      const down = (slope[at] ?? 0) + ridge * (weights[at] ?? 0);
      add(seen, at, down * down);
      add(weights, at, -((stepSize * down) / Math.sqrt(seen[at] ?? 1)));
    }
    for (let c = 0; c < count; c++) {
      const down = slopeBias[c] ?? 0;
      add(seenBias, c, down * down);
      add(bias, c, -((stepSize * down) / Math.sqrt(seenBias[c] ?? 1)));
    }
    for (let k = 0; k < kinds; k++) {
      const down = slopeBeside[k] ?? 0;
      add(seenBeside, k, down * down);
      add(besides, k, -((stepSize * down) / (3 * Math.sqrt(seenBeside[k] ?? 1))));
    }
  }
  const byTerm = known.map(
    (term, at) => [term, weights.slice(at * count, (at + 1) * count)] as const,
  );
  return { classes, weights: new Map(byTerm), bias, beside: besides };
}

/** What a text scores for each class. */
export function scoresOf(
  { classes, weights, bias, beside: besides }: Learned,
  { terms, beside }: Pick<Sample, 'terms' | 'beside'>,
): readonly number[] {
  const own = terms.flatMap((term) => weights.get(term) ?? []);
  const scale = 1 / Math.sqrt(Math.max(1, own.length));
  return classes.map(
    (_, c) =>
      (bias[c] ?? 0) +
      besides.reduce((sum, each, k) => sum + each * (beside?.[c]?.[k] ?? 0), 0) +
      scale * own.reduce((sum, each) => sum + (each[c] ?? 0), 0),
  );
}
