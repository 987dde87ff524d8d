import { everywhere } from '../../value/lanes';
import { nothing } from '../../value/values';
import { type Draw, type Kind, none } from '../grammar/kind';

/** 'oak': an option of a choice. */
export const word: Kind<'word'> = {
  form: { by: 'word', read: (text) => ({ kind: 'word', text }) },
  sort: ({ text }) => ({ kind: 'word', options: [text] }),
  reckon: ({ text }) => ({ kind: 'among', options: [text], on: nothing }),
  parts: none,
  mentions: none,
  asks: none,
  uses: none,
};

/** Many draws at once. */
export const drawWord: Draw<'word'> = (_, { program, whole }) => everywhere(program, whole);
