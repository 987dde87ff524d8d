import { everywhere } from '../../value/lanes';
import { exactly } from '../../value/values';
import { type Kind, none } from '../grammar/kind';
import { anyNumber } from '../grammar/sorts';

/** No bound at all: what a limit that nobody stated allows. */
export const unlimited: Kind<'unlimited'> = {
  form: { by: 'name', only: 'unlimited', read: () => ({ kind: 'unlimited' }) },
  sort: () => anyNumber,
  reckon: () => exactly(Infinity),
  parts: none,
  mentions: none,
  asks: none,
  uses: none,
  draw: (_, { program, whole }) => everywhere(program, whole),
};
