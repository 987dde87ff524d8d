import { drawByDraw } from '../../value/lanes';
import { settled } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { truth } from '../grammar/sorts';

/** given(x, …): each is mentioned, if only as unknown. */
export const given: Kind<'given'> = {
  form: {
    by: 'call',
    names: ['given'],
    read: (call) => {
      call.wants(call.count > 0, 'given(name, …)');
      return { kind: 'given', names: call.names(0) };
    },
  },
  reckon: ({ names }, scope) => settled(names.every(scope.given)),
  parts: none,
  mentions: ({ names }) => names,
  asks: none,
  uses: ({ names }, at) => {
    for (const name of names) at.from(name);
  },
};

/** The rule of its units. */
export const sortGiven: SortOf<'given'> = ({ names }, at) => {
  for (const name of names) at.unitOf(name);
  return truth;
};

export const drawGiven: Draw<'given'> = drawByDraw;
