import { show, showNumber, type UnitSystem } from '@tarebook/rules/quantity';
import type { SpreadFigure } from './figure';
import { sentence } from './sentence';

const total = ({ bins }: SpreadFigure): number => bins.reduce((sum, { count }) => sum + count, 0);

/**
 * The least and the most share of draws above the limit: the bin the limit falls into counts on
 * neither side for certain.
 */
export function overShare(figure: SpreadFigure): { readonly lo: number; readonly hi: number } {
  const all = total(figure);
  const at = figure.limit?.at ?? Number.POSITIVE_INFINITY;
  if (all === 0) return { lo: 0, hi: 0 };
  const above = (test: (bin: { from: number; to: number }) => boolean) =>
    figure.bins.filter(test).reduce((sum, { count }) => sum + count, 0) / all;
  return { lo: above(({ from }) => from >= at), hi: above(({ to }) => to > at) };
}

const ofHundred = ({ lo, hi }: { lo: number; hi: number }): string => {
  const [low, high] = [Math.floor(lo * 100), Math.ceil(hi * 100)];
  return low === high ? `${low}` : `${low} to ${high}`;
};

/** The drawing in words: how many draws, between what, and how many of a hundred are over. */
export function spreadSays(figure: SpreadFigure, system: UnitSystem): string {
  const { bins, limit, title, x } = figure;
  const [first, last] = [bins[0], bins.at(-1)];
  const all = total(figure);
  if (!first || !last || all === 0) return `${title}: nothing was drawn.`;
  const range = show({ lo: first.from, hi: last.to }, x.unit, system);
  const over = limit
    ? ` ${sentence(limit.label)} is ${show({ lo: limit.at, hi: limit.at }, x.unit, system)}; of a hundred, ${ofHundred(overShare(figure))} are above it.`
    : '';
  return `${title}: ${showNumber(all, 0)} draws, ${range}.${over}`;
}
