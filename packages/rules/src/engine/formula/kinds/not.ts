import { opposite as oppositeLanes } from '../../value/lane-truths';
import { asTruth, opposite } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { truthful } from '../grammar/sorts';

/** !a */
export const not: Kind<'not'> = {
  form: { by: 'sign before', sign: '!', read: (of) => ({ kind: 'not', of }) },
  reckon: ({ of }, scope, reckon) => opposite(asTruth(reckon(of, scope))),
  parts: ({ of }) => [of],
  mentions: none,
  asks: none,
  uses: ({ of }, at) => at.part(of),
};

/** The rule of its units. */
export const sortNot: SortOf<'not'> = ({ of }, at) => truthful(at.of(of), 'not');

/** Many draws at once. */
export const drawNot: Draw<'not'> = ({ of }, at) => oppositeLanes(at.truths(of));
