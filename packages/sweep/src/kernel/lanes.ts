import type { Op, Ref, Step } from './graph';

/** Numbers side by side; a step reads one of them at every place, or the same everywhere. */
export type Operand = {
  readonly of: Float64Array;
  /** -1: place by place; 0: the same everywhere. */
  readonly by: number;
  /** Where it begins; moved on from row to row and from block to block. */
  from: number;
};

type Loop = (n: number, to: Float64Array, a: Operand, b: Operand, c: Operand) => void;

/*
 * One loop an operation, each with a shape of its own, so that the machine need not ask what it does
 * at every place. Truths are 0 and 1.
 */
const loops: Readonly<Record<Exclude<Op, 'constant' | 'input' | 'number-or' | 'bits-are'>, Loop>> =
  {
    add: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = (a[(i & p) + f] ?? 0) + (b[(i & q) + g] ?? 0);
    },
    mul: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = (a[(i & p) + f] ?? 0) * (b[(i & q) + g] ?? 0);
    },
    div: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = (a[(i & p) + f] ?? 0) / (b[(i & q) + g] ?? 0);
    },
    neg: (n, to, { of: a, by: p, from: f }) => {
      for (let i = 0; i < n; i += 1) to[i] = -(a[(i & p) + f] ?? 0);
    },
    min: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) {
        to[i] = Math.min(a[(i & p) + f] ?? 0, b[(i & q) + g] ?? 0);
      }
    },
    max: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) {
        to[i] = Math.max(a[(i & p) + f] ?? 0, b[(i & q) + g] ?? 0);
      }
    },
    round: (n, to, { of: a, by: p, from: f }) => {
      for (let i = 0; i < n; i += 1) to[i] = Math.round((a[(i & p) + f] ?? 0) * 1e6) / 1e6;
    },
    less: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) {
        to[i] = (a[(i & p) + f] ?? 0) < (b[(i & q) + g] ?? 0) ? 1 : 0;
      }
    },
    'not-above': (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) {
        to[i] = (a[(i & p) + f] ?? 0) <= (b[(i & q) + g] ?? 0) ? 1 : 0;
      }
    },
    same: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = a[(i & p) + f] === b[(i & q) + g] ? 1 : 0;
    },
    'bits-or': (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = (a[(i & p) + f] ?? 0) | (b[(i & q) + g] ?? 0);
    },
    'bits-and': (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = (a[(i & p) + f] ?? 0) & (b[(i & q) + g] ?? 0);
    },
    and: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = (a[(i & p) + f] ?? 0) * (b[(i & q) + g] ?? 0);
    },
    or: (n, to, { of: a, by: p, from: f }, { of: b, by: q, from: g }) => {
      for (let i = 0; i < n; i += 1) to[i] = (a[(i & p) + f] ?? 0) | (b[(i & q) + g] ?? 0);
    },
    not: (n, to, { of: a, by: p, from: f }) => {
      for (let i = 0; i < n; i += 1) to[i] = 1 - (a[(i & p) + f] ?? 0);
    },
    choose: (
      n,
      to,
      { of: a, by: p, from: f },
      { of: b, by: q, from: g },
      { of: c, by: r, from: h },
    ) => {
      for (let i = 0; i < n; i += 1) {
        to[i] = a[(i & p) + f] === 1 ? (b[(i & q) + g] ?? 0) : (c[(i & r) + h] ?? 0);
      }
    },
  };

const numberOr: Loop = (n, to, { of: a, by: p, from: f }, { of: b }) => {
  const [other = 0] = b;
  for (let i = 0; i < n; i += 1) {
    const x = a[(i & p) + f] ?? 0;
    to[i] = Number.isNaN(x) ? other : x;
  }
};

const bitsAre: Loop = (n, to, { of: a, by: p, from: f }, { of: b }) => {
  const [wanted = 0] = b;
  for (let i = 0; i < n; i += 1) to[i] = a[(i & p) + f] === wanted ? 1 : 0;
};

const nothing: Operand = { of: new Float64Array(1), by: 0, from: 0 };

export const always = (value: number): Operand => ({ of: Float64Array.of(value), by: 0, from: 0 });
export const placeByPlace = (of: Float64Array, from = 0): Operand => ({ of, by: -1, from });
export const oneOf = (of: Float64Array, from: number): Operand => ({ of, by: 0, from });

/** A step with its operands found, ready to be gone through again and again. */
export type Bound = (n: number) => void;

export function bound(step: Step, to: Float64Array, operand: (ref: Ref) => Operand): Bound {
  const [a = nothing, b = nothing, c = nothing] = step.args.map(operand);
  const { op, value } = step;
  if (op === 'constant' || op === 'input') throw new Error(`A ${op} is not reckoned.`);
  if (op === 'number-or') return (n) => numberOr(n, to, a, always(value), nothing);
  if (op === 'bits-are') return (n) => bitsAre(n, to, a, always(value), nothing);
  const loop = loops[op];
  return (n) => loop(n, to, a, b, c);
}
