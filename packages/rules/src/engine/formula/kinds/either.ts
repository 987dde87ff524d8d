import { combine } from '../../value/lane-truths';
import { asTruth, both, opposite } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { truthful } from '../grammar/sorts';

/** a || b */
export const either: Kind<'either'> = {
  form: { by: 'sign between', signs: ['||'], read: (a, b) => ({ kind: 'either', a, b }) },
  reckon: (node, scope, reckon) => {
    const a = asTruth(reckon(node.a, scope));
    if (!a.no) return a;
    return opposite(both(opposite(a), opposite(asTruth(reckon(node.b, scope)))));
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
export const sortEither: SortOf<'either'> = ({ a, b }, at) => {
  truthful(at.of(a), 'either');
  return truthful(at.of(b), 'either');
};

/** Many draws at once. */
export const drawEither: Draw<'either'> = ({ a, b }, at) =>
  combine(at.program, 'either', at.truths(a), at.truths(b));
