import { negate } from '../../../quantity';
import { negative as negativeLanes } from '../../value/lanes';
import { made, minusOne, one } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { blend, noSlopes } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { numeric } from '../grammar/sorts';

/** -a */
export const negative: Kind<'negative'> = {
  form: { by: 'sign before', sign: '-', read: (of) => ({ kind: 'negative', of }) },
  reckon: (node, scope, reckon) => {
    const of = asNumber(reckon(node.of, scope));
    return made(negate(of), blend(of.slopes, minusOne, noSlopes, one));
  },
  parts: ({ of }) => [of],
  mentions: none,
  asks: none,
  uses: ({ of }, at) => at.part(of),
};

/** The rule of its units. */
export const sortNegative: SortOf<'negative'> = ({ of }, at) => numeric(at.of(of), '−');

/** Many draws at once. */
export const drawNegative: Draw<'negative'> = ({ of }, at) =>
  negativeLanes(at.program, at.numbers(of));
