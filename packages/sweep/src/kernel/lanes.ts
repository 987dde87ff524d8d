import type { Op, Sort, Step } from './graph';
import { aboveOf, fromOf, fromOver, fromTimes } from './turns';

/**
 * Values of one step side by side. Truths are bytes of 0 and 1 and are gone through four at a time,
 * so every vector has room for a multiple of four.
 */
export type Vector =
  | { readonly sort: 'number'; readonly of: Float64Array }
  | { readonly sort: 'bits'; readonly of: Int32Array }
  | { readonly sort: 'truth'; readonly of: Uint8Array; readonly fours: Uint32Array };

const fours = 4;
export const padded = (n: number): number => Math.ceil(n / fours) * fours;

const truthsIn = (of: Uint8Array): Vector => ({
  ...{ sort: 'truth', of },
  fours: new Uint32Array(of.buffer, of.byteOffset, of.length / fours),
});

export function vector(sort: Sort, n: number): Vector {
  if (sort === 'number') return { sort, of: new Float64Array(padded(n)) };
  if (sort === 'bits') return { sort, of: new Int32Array(padded(n)) };
  return truthsIn(new Uint8Array(padded(n)));
}

/** A part of a vector, beginning at a multiple of four. */
export function partOf(whole: Vector, from: number, n: number): Vector {
  const to = from + padded(n);
  if (whole.sort === 'number') return { sort: 'number', of: whole.of.subarray(from, to) };
  if (whole.sort === 'bits') return { sort: 'bits', of: whole.of.subarray(from, to) };
  return truthsIn(whole.of.subarray(from, to));
}

export const numbersIn = (found: Vector | undefined): Float64Array => {
  if (found?.sort === 'number') return found.of;
  throw new Error('Numbers are wanted in a kernel, and something else stands there.');
};
const bitsIn = (found: Vector | undefined): Int32Array => {
  if (found?.sort === 'bits') return found.of;
  throw new Error('Bits are wanted in a kernel, and something else stands there.');
};
const foursIn = (found: Vector | undefined): Uint32Array => {
  if (found?.sort === 'truth') return found.fours;
  throw new Error('Truths are wanted in a kernel, and something else stands there.');
};
const truthsOf = (found: Vector | undefined): Uint8Array => {
  if (found?.sort === 'truth') return found.of;
  throw new Error('Truths are wanted in a kernel, and something else stands there.');
};

/** The same value at every place. */
export function fillWith(into: Vector, value: number): void {
  if (into.sort === 'truth') into.fours.fill(value === 0 ? 0 : 0x01010101);
  else into.of.fill(value);
}

/** A step with its vectors found, ready to be gone through again and again. */
export type Bound = () => void;

type Args = readonly (Vector | undefined)[];
type Binder = (to: Vector, args: Args, step: Step) => Bound;

const onNumbers =
  (loop: (to: Float64Array, a: Float64Array, b: Float64Array) => void): Binder =>
  (to, [a, b]) => {
    const [t, p, q] = [numbersIn(to), numbersIn(a), numbersIn(b ?? a)];
    return () => loop(t, p, q);
  };
const onOrder =
  (loop: (to: Uint8Array, a: Float64Array, b: Float64Array) => void): Binder =>
  (to, [a, b]) => {
    const [t, p, q] = [truthsOf(to), numbersIn(a), numbersIn(b)];
    return () => loop(t, p, q);
  };
const onTruths =
  (loop: (to: Uint32Array, a: Uint32Array, b: Uint32Array) => void): Binder =>
  (to, [a, b]) => {
    const [t, p, q] = [foursIn(to), foursIn(a), foursIn(b ?? a)];
    return () => loop(t, p, q);
  };
const onBits =
  (loop: (to: Int32Array, a: Int32Array, b: Int32Array) => void): Binder =>
  (to, [a, b]) => {
    const [t, p, q] = [bitsIn(to), bitsIn(a), bitsIn(b)];
    return () => loop(t, p, q);
  };

/*
 * One loop an operation, each with a shape of its own, so that the machine need not ask what it does
 * at every place.
 */
const binders: Readonly<Record<Exclude<Op, 'constant' | 'input'>, Binder>> = {
  add: onNumbers((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) + (b[i] ?? 0);
  }),
  mul: onNumbers((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) * (b[i] ?? 0);
  }),
  div: onNumbers((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) / (b[i] ?? 0);
  }),
  neg: onNumbers((to, a) => {
    for (let i = 0; i < to.length; i += 1) to[i] = -(a[i] ?? 0);
  }),
  min: onNumbers((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = Math.min(a[i] ?? 0, b[i] ?? 0);
  }),
  max: onNumbers((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = Math.max(a[i] ?? 0, b[i] ?? 0);
  }),
  round: onNumbers((to, a) => {
    for (let i = 0; i < to.length; i += 1) to[i] = Math.round((a[i] ?? 0) * 1e6) / 1e6;
  }),
  above: onNumbers((to, a) => {
    for (let i = 0; i < to.length; i += 1) to[i] = aboveOf(a[i] ?? 0);
  }),
  from: onNumbers((to, a) => {
    for (let i = 0; i < to.length; i += 1) to[i] = fromOf(a[i] ?? 0);
  }),
  'from-times': onNumbers((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = fromTimes(a[i] ?? 0, b[i] ?? 0);
  }),
  'from-over': onNumbers((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = fromOver(a[i] ?? 0, b[i] ?? 0);
  }),
  'number-or': (to, [a], { value }) => {
    const [t, p] = [numbersIn(to), numbersIn(a)];
    return () => orValue(t, p, value);
  },
  less: onOrder((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) < (b[i] ?? 0) ? 1 : 0;
  }),
  'not-above': onOrder((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) <= (b[i] ?? 0) ? 1 : 0;
  }),
  same: onOrder((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = a[i] === b[i] ? 1 : 0;
  }),
  'bits-or': onBits((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) | (b[i] ?? 0);
  }),
  'bits-and': onBits((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) & (b[i] ?? 0);
  }),
  'bits-are': (to, [a], { value }) => {
    const [t, p] = [truthsOf(to), bitsIn(a)];
    return () => areValue(t, p, value);
  },
  and: onTruths((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) & (b[i] ?? 0);
  }),
  or: onTruths((to, a, b) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) | (b[i] ?? 0);
  }),
  not: onTruths((to, a) => {
    for (let i = 0; i < to.length; i += 1) to[i] = (a[i] ?? 0) ^ 0x01010101;
  }),
  choose: (to, [when, a, b]) => {
    if (to.sort === 'truth') {
      const [t, w, p, q] = [foursIn(to), foursIn(when), foursIn(a), foursIn(b)];
      return () => chooseTruths(t, w, p, q);
    }
    const w = truthsOf(when);
    if (to.sort === 'bits') {
      const [t, p, q] = [bitsIn(to), bitsIn(a), bitsIn(b)];
      return () => chooseBits(t, w, p, q);
    }
    const [t, p, q] = [numbersIn(to), numbersIn(a), numbersIn(b)];
    return () => chooseNumbers(t, w, p, q);
  },
};

function orValue(to: Float64Array, a: Float64Array, other: number): void {
  for (let i = 0; i < to.length; i += 1) {
    const x = a[i] ?? 0;
    to[i] = Number.isNaN(x) ? other : x;
  }
}

function areValue(to: Uint8Array, a: Int32Array, wanted: number): void {
  for (let i = 0; i < to.length; i += 1) to[i] = a[i] === wanted ? 1 : 0;
}

function chooseTruths(to: Uint32Array, when: Uint32Array, a: Uint32Array, b: Uint32Array): void {
  for (let i = 0; i < to.length; i += 1) {
    const w = when[i] ?? 0;
    to[i] = (w & (a[i] ?? 0)) | (~w & (b[i] ?? 0));
  }
}

function chooseBits(to: Int32Array, when: Uint8Array, a: Int32Array, b: Int32Array): void {
  for (let i = 0; i < to.length; i += 1) to[i] = when[i] === 1 ? (a[i] ?? 0) : (b[i] ?? 0);
}

function chooseNumbers(to: Float64Array, when: Uint8Array, a: Float64Array, b: Float64Array): void {
  for (let i = 0; i < to.length; i += 1) to[i] = when[i] === 1 ? (a[i] ?? 0) : (b[i] ?? 0);
}

export function bound(step: Step, to: Vector, args: Args): Bound {
  const { op } = step;
  if (op === 'constant' || op === 'input') throw new Error(`A ${op} is not reckoned.`);
  return binders[op](to, args, step);
}
