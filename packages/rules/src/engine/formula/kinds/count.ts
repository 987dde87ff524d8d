import { drawByDraw } from '../../value/lanes';
import { exactly } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { clash, plainNumber } from '../grammar/sorts';

/** count(list): its number of rows. */
export const count: Kind<'count'> = {
  form: {
    by: 'call',
    names: ['count'],
    read: (call) => {
      call.wants(call.count === 1, 'count(list)');
      return { kind: 'count', list: call.nameAt(0) };
    },
  },
  reckon: ({ list }, scope) => exactly(scope.rows(list)),
  parts: none,
  mentions: ({ list }) => [list],
  asks: none,
  uses: ({ list }, at) => at.from(list),
};

/** The rule of its units. */
export const sortCount: SortOf<'count'> = ({ list }, { topic }) =>
  topic.facts[list]?.kind === 'rows'
    ? plainNumber
    : clash(`count wants a list, and “${list}” is none`, 'not-a-list', { found: list });

export const drawCount: Draw<'count'> = drawByDraw;
