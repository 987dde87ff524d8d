import { drawByDraw } from '../../value/lanes';
import { settled } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { truth } from '../grammar/sorts';

/** known(x, …): each is mentioned and rests on nothing unknown; a column: in every row. */
export const known: Kind<'known'> = {
  form: {
    by: 'call',
    names: ['known'],
    read: (call) => {
      call.wants(call.count > 0, 'known(name, …)');
      return { kind: 'known', names: call.names(0) };
    },
  },
  reckon: ({ names }, scope) => settled(names.every(scope.known)),
  parts: none,
  mentions: ({ names }) => names,
  asks: none,
  uses: ({ names }, at) => {
    for (const name of names) at.from(name);
  },
};

/** The rule of its units. */
export const sortKnown: SortOf<'known'> = ({ names }, at) => {
  for (const name of names) at.unitOf(name);
  return truth;
};

export const drawKnown: Draw<'known'> = drawByDraw;
