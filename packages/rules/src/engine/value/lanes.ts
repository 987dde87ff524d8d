import { divide, rounded } from '../../quantity';
import type { Arithmetic } from './numbers';
import type { Compare } from './truth';
import { exactly, type Value } from './values';

/**
 * One value in many draws at once, a lane each. Where nothing unknown enters, a number's two ends
 * are one array and a truth's `no` is what `yes` is not; else each lane is a range, as in reckon.
 * Words are never drawn.
 */
export type Numbers = {
  readonly kind: 'numbers';
  readonly lo: Float64Array;
  readonly hi: Float64Array;
};
export type Truths = {
  readonly kind: 'truths';
  /** Whether a lane may be both, since what it compares is a range within the lane. */
  readonly wide: boolean;
  readonly yes: Uint8Array;
  readonly no: Uint8Array;
};
/** The options that each lane may be. */
export type Words = { readonly kind: 'words'; readonly options: (readonly string[])[] };
export type Lanes = Numbers | Truths | Words;

/** Thrown where a formula has something that lanes are not reckoned of at once. */
export class NotOverLanes extends Error {}

/** The way of a kind that has none over lanes: the case is reckoned one draw after another. */
export function drawByDraw(): never {
  throw new NotOverLanes('This is reckoned one draw after another.');
}

/** What fills lanes 0 to count − 1 from lanes filled before. */
export type Fill = (count: number) => void;
export type Program = { readonly width: number; readonly steps: Fill[] };

export const isExact = ({ lo, hi }: Numbers): boolean => lo === hi;

export function newNumbers({ width }: Program, exact: boolean): Numbers {
  const lo = new Float64Array(width);
  return { kind: 'numbers', lo, hi: exact ? lo : new Float64Array(width) };
}

export function newTruths({ width }: Program, wide = false): Truths {
  return { kind: 'truths', wide, yes: new Uint8Array(width), no: new Uint8Array(width) };
}

/** The same in every lane. */
export function everywhere(program: Program, value: Value): Lanes {
  if (value.kind === 'among') {
    return { kind: 'words', options: new Array(program.width).fill(value.options) };
  }
  if (value.kind === 'truth') {
    const made = newTruths(program);
    made.yes.fill(Number(value.yes));
    made.no.fill(Number(value.no));
    return made;
  }
  const made = newNumbers(program, value.lo === value.hi);
  made.hi.fill(value.hi);
  made.lo.fill(value.lo);
  return made;
}

export const constant = (program: Program, value: number): Numbers => {
  const lanes = everywhere(program, exactly(value));
  return asNumbers(lanes);
};

export function asNumbers(lanes: Lanes): Numbers {
  if (lanes.kind === 'numbers') return lanes;
  throw new NotOverLanes('A number was wanted here.');
}

export function asTruths(program: Program, lanes: Lanes): Truths {
  if (lanes.kind === 'truths') return lanes;
  if (lanes.kind === 'numbers') throw new NotOverLanes('A yes or no was wanted here.');
  const made = newTruths(program);
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      const options = lanes.options[i] ?? [];
      made.yes[i] = Number(options.includes('yes'));
      made.no[i] = Number(options.some((option) => option !== 'yes'));
    }
  });
  return made;
}

/** Zero times an open end is zero, as with ranges. */
const times = (a: number, b: number): number => (a === 0 || b === 0 ? 0 : a * b);

function exactArithmetic(op: Arithmetic, a: Float64Array, b: Float64Array, to: Float64Array): Fill {
  switch (op) {
    case '+':
      return (count) => {
        for (let i = 0; i < count; i += 1) to[i] = (a[i] ?? 0) + (b[i] ?? 0);
      };
    case '-':
      return (count) => {
        for (let i = 0; i < count; i += 1) to[i] = (a[i] ?? 0) - (b[i] ?? 0);
      };
    case '*':
      return (count) => {
        for (let i = 0; i < count; i += 1) to[i] = times(a[i] ?? 0, b[i] ?? 0);
      };
    case '/':
      return (count) => {
        for (let i = 0; i < count; i += 1) to[i] = (a[i] ?? 0) / (b[i] ?? 0);
      };
  }
}

function openArithmetic(op: Arithmetic, a: Numbers, b: Numbers, to: Numbers): Fill {
  const at = (i: number) => {
    const [al, ah, bl, bh] = [a.lo[i] ?? 0, a.hi[i] ?? 0, b.lo[i] ?? 0, b.hi[i] ?? 0];
    switch (op) {
      case '+':
        return { lo: al + bl, hi: ah + bh };
      case '-':
        return { lo: al - bh, hi: ah - bl };
      case '*': {
        const [p, q, r, s] = [times(al, bl), times(al, bh), times(ah, bl), times(ah, bh)];
        return { lo: Math.min(p, q, r, s), hi: Math.max(p, q, r, s) };
      }
      case '/':
        return divide({ lo: al, hi: ah }, { lo: bl, hi: bh });
    }
  };
  return (count) => {
    for (let i = 0; i < count; i += 1) {
      const { lo, hi } = at(i);
      to.lo[i] = lo;
      to.hi[i] = hi;
    }
  };
}

/** @param mayBeZero whether some draw may divide by zero, which gives an open range */
export function arithmetic(
  program: Program,
  op: Arithmetic,
  a: Numbers,
  b: Numbers,
  mayBeZero: boolean,
): Numbers {
  const exact = isExact(a) && isExact(b) && !(op === '/' && mayBeZero);
  const to = newNumbers(program, exact);
  program.steps.push(exact ? exactArithmetic(op, a.lo, b.lo, to.lo) : openArithmetic(op, a, b, to));
  return to;
}

const comparisons: Readonly<Record<Compare, (a: number, b: number) => boolean>> = {
  '<': (a, b) => a < b,
  '<=': (a, b) => a <= b,
  '>': (a, b) => a > b,
  '>=': (a, b) => a >= b,
  '==': (a, b) => a === b,
  '!=': (a, b) => a !== b,
};

/** Which ends of two ranges must compare so that it may hold. */
function mayHold(op: Compare, al: number, ah: number, bl: number, bh: number): boolean {
  switch (op) {
    case '<':
    case '<=':
      return comparisons[op](al, bh);
    case '>':
    case '>=':
      return comparisons[op](ah, bl);
    case '==':
      return ah >= bl && bh >= al;
    case '!=':
      return !(al === ah && bl === bh && al === bl);
  }
}

const opposites: Readonly<Record<Compare, Compare>> = {
  '<': '>=',
  '<=': '>',
  '>': '<=',
  '>=': '<',
  '==': '!=',
  '!=': '==',
};

/** Rounded to a millionth of the base unit first, as reckon does. */
export function compareNumbers(program: Program, op: Compare, a: Numbers, b: Numbers): Truths {
  const exact = isExact(a) && isExact(b);
  const to = newTruths(program, !exact);
  const test = comparisons[op];
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      const [al, bl] = [rounded(a.lo[i] ?? 0), rounded(b.lo[i] ?? 0)];
      if (exact) {
        const is = test(al, bl);
        to.yes[i] = Number(is);
        to.no[i] = Number(!is);
      } else {
        const [ah, bh] = [rounded(a.hi[i] ?? 0), rounded(b.hi[i] ?? 0)];
        to.yes[i] = Number(mayHold(op, al, ah, bl, bh));
        to.no[i] = Number(mayHold(opposites[op], al, ah, bl, bh));
      }
    }
  });
  return to;
}

export function extreme(program: Program, kind: 'min' | 'max', a: Numbers, b: Numbers): Numbers {
  const exact = isExact(a) && isExact(b);
  const to = newNumbers(program, exact);
  const pick = Math[kind];
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      to.lo[i] = pick(a.lo[i] ?? 0, b.lo[i] ?? 0);
      if (!exact) to.hi[i] = pick(a.hi[i] ?? 0, b.hi[i] ?? 0);
    }
  });
  return to;
}

export function negative(program: Program, a: Numbers): Numbers {
  const to = newNumbers(program, isExact(a));
  program.steps.push((count) => {
    for (let i = 0; i < count; i += 1) {
      const [lo, hi] = [a.lo[i] ?? 0, a.hi[i] ?? 0];
      to.lo[i] = -hi;
      to.hi[i] = -lo;
    }
  });
  return to;
}
