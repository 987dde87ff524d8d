import type { Change } from '../../engine/define/changes';
import { dampWood } from '../../trade/bibliography/body-repair';
import { custom } from '../../trade/bibliography/common';

/** What a person can do first; never a rating, a policy or what it was worth. */
export const changes: readonly Change[] = [
  {
    kind: 'set',
    fact: 'photos.taken',
    to: { option: 'yes' },
    says: 'Photograph it all before anything is moved.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'cover.open',
    to: { option: 'no' },
    says: 'Cover it against the rain today.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'wood.moisture',
    step: 1,
    says: 'Open it and dry it until the meter shows {to} at its wettest, now {from}.',
    asks: 2,
    source: dampWood,
  },
];
