import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

/** Draws a whole number, both ends among them. */
export type Drawer = (from: number, to: number) => number;

/** The same seed draws the same numbers on every machine. */
export function seeded(seed: number): Drawer {
  const generator = xoroshiro128plus(seed);
  return (from, to) => uniformInt(generator, from, to);
}

/** One of several. */
export const oneOf = <T>(draw: Drawer, all: readonly T[]): T | undefined =>
  all.length === 0 ? undefined : all[draw(0, all.length - 1)];

/** The same in another order. */
export function shuffled<T>(draw: Drawer, all: readonly T[]): readonly T[] {
  const left = [...all];
  return all.flatMap(() => left.splice(draw(0, left.length - 1), 1));
}
