import { arithmetic as overLanes } from '../../value/lanes';
import { type Arithmetic, arithmetic as overRanges } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, clash, numeric, product } from '../grammar/sorts';

const signs: readonly string[] = ['+', '-', '*', '/'];
const isSign = (sign: string): sign is Arithmetic => signs.includes(sign);

/** a + b, a - b, a * b, a / b */
export const arithmetic: Kind<'arithmetic'> = {
  form: {
    by: 'sign between',
    signs,
    read: (a, b, op) => (isSign(op) ? { kind: 'arithmetic', op, a, b } : clash(`${op} is no sign`)),
  },
  reckon: ({ op, a, b }, scope, reckon) =>
    overRanges(op, asNumber(reckon(a, scope)), asNumber(reckon(b, scope))),
  parts: ({ a, b }) => [a, b],
  mentions: none,
  asks: none,
  uses: ({ a, b }, at) => {
    at.part(a);
    at.part(b);
  },
};

/** The rule of its units. */
export const sortArithmetic: SortOf<'arithmetic'> = ({ op, a, b }, at) =>
  op === '*' || op === '/'
    ? product(op, at.of(a), at.of(b))
    : alike(numeric(at.of(a), op), at.of(b), op);

/** Many draws at once. */
export const drawArithmetic: Draw<'arithmetic'> = ({ op, a, b }, at) => {
  const under = op === '/' ? at.reckon(b, at.scope) : undefined;
  const mayBeZero = under?.kind === 'number' && under.lo <= 0 && under.hi >= 0;
  return overLanes(at.program, op, at.numbers(a), at.numbers(b), mayBeZero);
};
