import { combine } from '../../value/lane-truths';
import { asTruth, both as bothTrue } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { truthful } from '../grammar/sorts';

/** a && b */
export const both: Kind<'both'> = {
  form: { by: 'sign between', signs: ['&&'], read: (a, b) => ({ kind: 'both', a, b }) },
  reckon: (node, scope, reckon) => {
    const a = asTruth(reckon(node.a, scope));
    return a.yes ? bothTrue(a, asTruth(reckon(node.b, scope))) : a;
  },
  parts: ({ a, b }) => [a, b],
  mentions: none,
  asks: none,
  uses: ({ a, b }, at) => {
    at.part(a);
    at.part(b);
  },
};

/** The rule of its units. */
export const sortBoth: SortOf<'both'> = ({ a, b }, at) => {
  truthful(at.of(a), 'both');
  return truthful(at.of(b), 'both');
};

/** Many draws at once. */
export const drawBoth: Draw<'both'> = ({ a, b }, at) =>
  combine(at.program, 'both', at.truths(a), at.truths(b));
