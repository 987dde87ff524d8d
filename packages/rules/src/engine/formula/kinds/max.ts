import { extreme as overLanes } from '../../value/lanes';
import { extreme } from '../../value/numbers';
import { asNumber } from '../../value/truth';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { alike } from '../grammar/sorts';

/** max(a, b, …) */
export const max: Kind<'max'> = {
  form: {
    by: 'call',
    names: ['max'],
    read: (call) => {
      call.wants(call.count > 1, 'max(a, b, …)');
      return { kind: 'max', of: call.nodes() };
    },
  },
  reckon: ({ of }, scope, reckon) =>
    of.map((each) => asNumber(reckon(each, scope))).reduce((a, b) => extreme('max', a, b)),
  parts: ({ of }) => of,
  mentions: none,
  asks: none,
  uses: ({ of }, at) => {
    for (const each of of) at.part(each);
  },
};

/** The rule of its units. */
export const sortMax: SortOf<'max'> = ({ of }, at) =>
  of.map(at.of).reduce((a, b) => alike(a, b, 'max'));

/** Many draws at once. */
export const drawMax: Draw<'max'> = ({ of }, at) =>
  of.map(at.numbers).reduce((a, b) => overLanes(at.program, 'max', a, b));
