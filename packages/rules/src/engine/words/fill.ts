import { readQuantity, wasMisread } from '../../quantity';
import type { Ends } from './value';

/** A hole in the words of a rule set: `{tongue.share}`, or a figure of their own: `{20 ft}`. */
const hole = /\{([^{}]*)\}/g;

const figures = new Map<string, Ends | undefined>();

/** The figure that a hole holds itself, so that it is told in the units asked for. */
export function figureIn(inHole: string): Ends | undefined {
  if (figures.has(inHole)) return figures.get(inHole);
  const read = /^[\d−-]/.test(inHole) ? readQuantity(inHole) : undefined;
  const found =
    read && !wasMisread(read) && read.unit
      ? { lo: read.from, hi: read.to, unit: read.unit.symbol }
      : undefined;
  figures.set(inHole, found);
  return found;
}

const allHoles = (text: string): readonly string[] =>
  [...text.matchAll(hole)].map(([, name = '']) => name);

/** The names that stand in holes, in order; what holds a figure names nothing. */
export const holesIn = (text: string): readonly string[] =>
  allHoles(text).filter((name) => figureIn(name) === undefined);

/** The words with every hole filled. */
export const filled = (text: string, shown: (name: string) => string): string =>
  text.replace(hole, (_, name: string) => shown(name));
