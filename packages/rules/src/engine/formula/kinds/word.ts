import { everywhere } from '../../value/lanes';
import { nothing } from '../../value/values';
import { type Draw, type Kind, none } from '../grammar/kind';
import { word as wordSort } from '../grammar/sorts';

/** 'oak': an option of a choice. */
export const word: Kind<'word'> = {
  form: { by: 'word', read: (text) => ({ kind: 'word', text }) },
  sort: () => wordSort,
  reckon: ({ text }) => ({ kind: 'among', options: [text], on: nothing }),
  parts: none,
  mentions: none,
  asks: none,
  uses: none,
};

/** Many draws at once. */
export const drawWord: Draw<'word'> = (_, { program, whole }) => everywhere(program, whole);
