/**
 * Where numbers that follow one quantity cross zero, without searching for it.
 *
 *     y │╲                     On each piece the number is a straight line or a quotient of two, which
 *       │ ╲___╱ piece 2        is proven by a point in between; its zero then follows in closed form.
 *     0 ┼──╳───────── x        Where it is neither, a corner lies inside: the lines from both ends meet
 *       │ piece 1              there, and each side is taken by itself.
 */

type Numbers = (x: number) => readonly number[];
type At = readonly [x: number, y: number];

const tolerance = 1e-9;
const deepest = 40;

const near = (a: number, b: number): boolean =>
  Math.abs(a - b) <= tolerance * Math.max(1, Math.abs(a), Math.abs(b));

/** Where the straight line through two points is at x. */
const onLine = ([x0, y0]: At, [x1, y1]: At, x: number): number =>
  y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);

/** The curve (p + q·t) / (1 + r·t) through three points, t running from 0 to 1 between the ends. */
function quotient([x0, y0]: At, [x1, y1]: At, [x2, y2]: At) {
  const span = x2 - x0;
  const t = (x1 - x0) / span;
  const r = (y1 - y0 * (1 - t) - t * y2) / (t * (y2 - y1));
  const q = y2 * (1 + r) - y0;
  // At −1 and below its divisor passes zero up to the end: a jump, and no curve.
  const sound = Number.isFinite(r) && r > -1 + 1e-6;
  const at = (x: number): number => {
    const s = (x - x0) / span;
    return (y0 + q * s) / (1 + r * s);
  };
  return { sound, at, zero: x0 - (y0 / q) * span };
}

/** The corner where the lines from both ends meet; the middle where they do not meet between. */
function corner(a: At, b: At, c: At, d: At): number {
  const rise = (d[1] - c[1]) / (d[0] - c[0]);
  const first = (b[1] - a[1]) / (b[0] - a[0]);
  const x = (c[1] - a[1] + first * a[0] - rise * c[0]) / (first - rise);
  const [lo, hi] = [Math.min(a[0], d[0]), Math.max(a[0], d[0])];
  const inside = x > lo + (hi - lo) * 1e-6 && x < hi - (hi - lo) * 1e-6;
  return inside ? x : (lo + hi) / 2;
}

/**
 * Every x between `from` and `to` at which one of the numbers crosses or touches zero, unsorted.
 *
 * @param numbers as many numbers for every x; one with an open end is left aside
 * @param finest pieces no longer than this are not taken apart any more
 */
export function crossings(
  numbers: Numbers,
  from: number,
  to: number,
  finest: number,
): readonly number[] {
  const kept = new Map<number, readonly number[]>();
  const all = (x: number): readonly number[] => {
    const before = kept.get(x);
    if (before) return before;
    const made = numbers(x);
    kept.set(x, made);
    return made;
  };
  const found: number[] = [];
  const piece = (which: number, x0: number, x3: number, depth: number): void => {
    const at = (x: number): At => [x, all(x)[which] ?? Number.NaN];
    const [a, b, c, d] = [at(x0), at(x0 + (x3 - x0) * 0.3), at(x0 + (x3 - x0) * 0.7), at(x3)];
    if (![a, b, c, d].every(([, y]) => Number.isFinite(y))) return;
    if (near(onLine(a, d, b[0]), b[1]) && near(onLine(a, d, c[0]), c[1])) {
      if (a[1] !== d[1] && a[1] * d[1] <= 0) found.push(x0 + ((x3 - x0) * a[1]) / (a[1] - d[1]));
      return;
    }
    const curve = quotient(a, b, d);
    if (curve.sound && near(curve.at(c[0]), c[1])) {
      if (a[1] * d[1] <= 0 && Number.isFinite(curve.zero)) found.push(curve.zero);
      return;
    }
    if (depth === 0 || Math.abs(x3 - x0) <= finest) {
      if (a[1] * d[1] <= 0) found.push(x3);
      return;
    }
    const middle = corner(a, b, c, d);
    piece(which, x0, middle, depth - 1);
    piece(which, middle, x3, depth - 1);
  };
  if (from === to) return [];
  const count = all(from).length;
  for (let which = 0; which < count; which += 1) piece(which, from, to, deepest);
  return found;
}
