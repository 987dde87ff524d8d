import { compareNumbers } from '../../value/lanes';
import { type Compare, compare as compareValues } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, clash, type Sort, truth } from '../grammar/sorts';

const signs: readonly string[] = ['<', '<=', '>', '>=', '==', '!='];
const isSign = (sign: string): sign is Compare => signs.includes(sign);

/** A yes/no fact is compared with 'yes' or 'no' as a word. */
const worded = (sort: Sort): Sort =>
  sort.kind === 'truth' ? { kind: 'word', options: ['yes', 'no'], of: 'a yes/no' } : sort;

/** a < b, a <= b, a > b, a >= b, a == b, a != b */
export const compare: Kind<'compare'> = {
  form: {
    by: 'sign between',
    signs,
    read: (a, b, op) => (isSign(op) ? { kind: 'compare', op, a, b } : clash(`${op} is no sign`)),
  },
  reckon: ({ op, a, b }, scope, reckon) => compareValues(op, reckon(a, scope), reckon(b, scope)),
  parts: ({ a, b }) => [a, b],
  mentions: none,
  asks: none,
  uses: ({ a, b }, at) => {
    at.part(a);
    at.part(b);
  },
};

/** The rule of its units. */
export const sortCompare: SortOf<'compare'> = ({ op, a, b }, at) => {
  const [left, right] = [at.of(a), at.of(b)];
  // Of two that are true or false nothing is a word.
  if (left.kind !== 'truth' || right.kind !== 'truth') alike(worded(left), worded(right), op);
  return truth;
};

/** Many draws at once. */
export const drawCompare: Draw<'compare'> = ({ op, a, b }, at) =>
  compareNumbers(at.program, op, at.numbers(a), at.numbers(b));
