import { everywhere } from '../../value/lanes';
import { exactly } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { anyNumber } from '../grammar/sorts';

/** No bound at all: what a limit that nobody stated allows. */
export const unlimited: Kind<'unlimited'> = {
  form: { by: 'name', only: 'unlimited', read: () => ({ kind: 'unlimited' }) },
  reckon: () => exactly(Infinity),
  parts: none,
  mentions: none,
  asks: none,
  uses: none,
};

/** The rule of its units. */
export const sortUnlimited: SortOf<'unlimited'> = () => anyNumber;

/** Many draws at once. */
export const drawUnlimited: Draw<'unlimited'> = (_, { program, whole }) =>
  everywhere(program, whole);
