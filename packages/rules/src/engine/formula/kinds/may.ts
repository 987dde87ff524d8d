import { drawByDraw } from '../../value/lanes';
import { settled } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { truthful } from '../grammar/sorts';

/**
 * may(condition): whether it may hold. Settled by what the case tells, as `known` is; also while an
 * input is held at one end. Not inside sum.
 */
export const may: Kind<'may'> = {
  form: {
    by: 'call',
    names: ['may'],
    read: (call) => {
      call.wants(call.count === 1, 'may(condition)');
      return { kind: 'may', of: call.node(0) };
    },
  },
  reckon: ({ of }, scope) => settled(scope.may(of)),
  parts: ({ of }) => [of],
  mentions: none,
  asks: none,
  uses: ({ of }, at) => at.part(of),
};

/** The rule of its units. */
export const sortMay: SortOf<'may'> = ({ of }, at) => truthful(at.of(of), 'may');

export const drawMay: Draw<'may'> = drawByDraw;
