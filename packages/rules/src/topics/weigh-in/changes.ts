import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';

/** A weight that was read is not changed by words; only the weighing can be done better. */
export const changes: readonly Change[] = [
  {
    kind: 'set',
    fact: 'alone.sameLoad',
    to: { option: 'yes' },
    says: 'Weigh the vehicle alone once more, with the hitch head on and the same people and fuel.',
    asks: 1,
    source: custom,
  },
];
