import { everywhere } from '../../value/lanes';
import { exactly } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';
import { anyNumber, plainNumber } from '../grammar/sorts';

/** 2.5 */
export const number: Kind<'number'> = {
  form: { by: 'number', read: (value) => ({ kind: 'number', value }) },
  reckon: ({ value }) => exactly(value),
  parts: none,
  mentions: none,
  asks: none,
  uses: none,
};

// A bare zero fits beside any unit; every other bare number has no dimension.
/** The rule of its units. */
export const sortNumber: SortOf<'number'> = ({ value }) => (value === 0 ? anyNumber : plainNumber);

/** Many draws at once. */
export const drawNumber: Draw<'number'> = (_, { program, whole }) => everywhere(program, whole);
