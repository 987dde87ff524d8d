import { everywhere } from '../../value/lanes';
import { exactly } from '../../value/values';
import { type Draw, type Kind, none } from '../grammar/kind';
import { anyNumber, plainNumber } from '../grammar/sorts';

/** 2.5 */
export const number: Kind<'number'> = {
  form: { by: 'number', read: (value) => ({ kind: 'number', value }) },
  // A bare zero fits beside any unit; every other bare number has no dimension.
  sort: ({ value }) => (value === 0 ? anyNumber : plainNumber),
  reckon: ({ value }) => exactly(value),
  parts: none,
  mentions: none,
  asks: none,
  uses: none,
};

/** Many draws at once. */
export const drawNumber: Draw<'number'> = (_, { program, whole }) => everywhere(program, whole);
