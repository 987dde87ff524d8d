import { hull } from '../../../quantity';
import { drawByDraw } from '../../value/lanes';
import { made } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { eitherSlopes } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike, numeric } from '../grammar/sorts';

/** between(a, b): anything from the one to the other, such as a figure on which tables disagree. */
export const between: Kind<'between'> = {
  form: {
    by: 'call',
    names: ['between'],
    read: (call) => {
      call.wants(call.count === 2, 'between(a, b)');
      return { kind: 'between', a: call.node(0), b: call.node(1) };
    },
  },
  // Each place between them moves as the two ends do.
  reckon: (node, scope, reckon) => {
    const [a, b] = [asNumber(reckon(node.a, scope)), asNumber(reckon(node.b, scope))];
    return made(hull(a, b), eitherSlopes(a.slopes, b.slopes));
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
export const sortBetween: SortOf<'between'> = ({ a, b }, at) =>
  numeric(alike(at.of(a), at.of(b), 'between'), 'between');

export const drawBetween: Draw<'between'> = drawByDraw;
