import type { Chance, Quantile } from './shapes';

/** The chance that `hits` of `draws` tell, with the standard error of a binomial share. */
export function chanceOf(hits: number, draws: number): Chance {
  const chance = hits / draws;
  return { chance, error: Math.sqrt((chance * (1 - chance)) / draws) };
}

/** Which shares of the draws are told of a result. */
export const shares = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

/**
 * The value below which a share of sorted values lies, on a straight line between the two nearest:
 * definition 7 in Hyndman and Fan, “Sample Quantiles in Statistical Packages”, The American
 * Statistician 50 (1996).
 */
export function quantileOf(sorted: Float64Array, share: number): number {
  const at = (sorted.length - 1) * share;
  const low = Math.floor(at);
  const below = sorted[low] ?? Number.NaN;
  const above = sorted[Math.min(sorted.length - 1, low + 1)] ?? below;
  return below + (at - low) * (above - below);
}

/** Sorts the values in place. */
export function quantilesOf(values: Float64Array): readonly Quantile[] {
  values.sort();
  return shares.map((share) => ({ share, value: quantileOf(values, share) }));
}
