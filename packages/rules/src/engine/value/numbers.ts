import {
  add,
  divide,
  type Interval,
  least,
  most,
  multiply,
  negate,
  point,
  reciprocal,
  subtract,
} from '../../quantity';
import { blend, eitherSlopes, type NumberValue, noSlopes, type Slopes } from './values';

export type Arithmetic = '+' | '-' | '*' | '/';

export const one = point(1);
export const minusOne = point(-1);

/** An end that is no number, as of endless less endless, is an open one. */
export const made = ({ lo, hi }: Interval, slopes: Slopes): NumberValue => ({
  kind: 'number',
  lo: Number.isNaN(lo) ? -Infinity : lo,
  hi: Number.isNaN(hi) ? Infinity : hi,
  // What comes to one number whatever its inputs are moves with none of them.
  slopes: lo === hi ? noSlopes : slopes,
});

/** The four kinds of arithmetic over ranges, with the slopes of the result. */
export function arithmetic(op: Arithmetic, a: NumberValue, b: NumberValue): NumberValue {
  switch (op) {
    case '+':
      return made(add(a, b), blend(a.slopes, one, b.slopes, one));
    case '-':
      return made(subtract(a, b), blend(a.slopes, one, b.slopes, minusOne));
    case '*':
      return made(multiply(a, b), blend(a.slopes, b, b.slopes, a));
    case '/': {
      const quotient = divide(a, b);
      if (a.slopes.size === 0 && b.slopes.size === 0) return made(quotient, noSlopes);
      const under = reciprocal(b);
      return made(quotient, blend(a.slopes, under, b.slopes, negate(multiply(quotient, under))));
    }
  }
}

/** The lesser or the greater of two. */
export function extreme(kind: 'min' | 'max', a: NumberValue, b: NumberValue): NumberValue {
  const range = kind === 'min' ? least(a, b) : most(a, b);
  const [low, high] = a.hi < b.lo ? [a, b] : b.hi < a.lo ? [b, a] : [];
  if (low && high) return made(range, kind === 'min' ? low.slopes : high.slopes);
  return made(range, eitherSlopes(a.slopes, b.slopes));
}
