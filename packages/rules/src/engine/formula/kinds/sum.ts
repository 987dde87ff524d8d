import { constant, arithmetic as overLanes } from '../../value/lanes';
import { arithmetic } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { exactly } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { numeric } from '../grammar/sorts';

/** sum(list.weight * list.ahead): over the rows of one list, that of its first column. */
export const sum: Kind<'sum'> = {
  form: {
    by: 'call',
    names: ['sum'],
    read: (call) => {
      call.wants(call.count === 1, 'sum(list.column …)');
      const of = call.node(0);
      const [column = ''] = call.mentioned(of);
      const list = column.slice(0, Math.max(0, column.lastIndexOf('.')));
      call.wants(list !== '', 'sum(list.column …)');
      return { kind: 'sum', of, list };
    },
  },
  reckon: ({ of, list }, scope, reckon) => {
    let total = exactly(0);
    for (let row = 0; row < scope.rows(list); row += 1) {
      total = arithmetic('+', total, asNumber(reckon(of, scope.inRow(list, row))));
    }
    return total;
  },
  parts: ({ of }) => [of],
  mentions: none,
  asks: none,
  uses: ({ of, list }, at) => {
    at.from(list);
    for (let row = 0; row < at.scope.rows(list); row += 1) at.inRow({ list, row }).part(of);
  },
};

/** The rule of its units. */
export const sortSum: SortOf<'sum'> = ({ of }, at) => numeric(at.of(of), 'sum');

/** Many draws at once. */
export const drawSum: Draw<'sum'> = ({ of, list }, at) => {
  let total = constant(at.program, 0);
  for (let row = 0; row < at.scope.rows(list); row += 1) {
    const each = at.inRow({ list, row }).numbers(of);
    total = overLanes(at.program, '+', total, each, false);
  }
  return total;
};
