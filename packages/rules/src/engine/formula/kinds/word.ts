import { everywhere } from '../../value/lanes';
import { nothing } from '../../value/values';
import { type Draw, type Kind, none, type SortOf } from '../grammar/kind';

/** 'oak': an option of a choice. */
export const word: Kind<'word'> = {
  form: { by: 'word', read: (text) => ({ kind: 'word', text }) },
  reckon: ({ text }) => ({ kind: 'among', options: [text], on: nothing }),
  parts: none,
  mentions: none,
  asks: none,
  uses: none,
};

/** The rule of its units. */
export const sortWord: SortOf<'word'> = ({ text }) => ({ kind: 'word', options: [text] });

/** Many draws at once. */
export const drawWord: Draw<'word'> = (_, { program, whole }) => everywhere(program, whole);
