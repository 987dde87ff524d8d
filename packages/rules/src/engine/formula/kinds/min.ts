import { extreme as overLanes } from '../../value/lanes';
import { extreme } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike } from '../grammar/sorts';

/** min(a, b, …) */
export const min: Kind<'min'> = {
  form: {
    by: 'call',
    names: ['min'],
    read: (call) => {
      call.wants(call.count > 1, 'min(a, b, …)');
      return { kind: 'min', of: call.nodes() };
    },
  },
  reckon: ({ of }, scope, reckon) =>
    of.map((each) => asNumber(reckon(each, scope))).reduce((a, b) => extreme('min', a, b)),
  parts: ({ of }) => of,
  mentions: none,
  asks: none,
  uses: ({ of }, at) => {
    for (const each of of) at.part(each);
  },
};

/** The rule of its units. */
export const sortMin: SortOf<'min'> = ({ of }, at) =>
  of.map(at.of).reduce((a, b) => alike(a, b, 'min'));

/** Many draws at once. */
export const drawMin: Draw<'min'> = ({ of }, at) =>
  of.map(at.numbers).reduce((a, b) => overLanes(at.program, 'min', a, b));
