import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';

/** What a person can change of a loaded camper; never a rating. */
export const changes: readonly Change[] = [
  {
    kind: 'leave',
    fact: 'camper.cargo',
    column: 'weight',
    says: 'Leave {row} at home.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'leave',
    fact: 'load.cargo',
    column: 'weight',
    says: 'Leave {row} at home.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'camper.freshWater',
    step: 1,
    says: 'Carry {to} of fresh water instead of {from}; fill up where you camp.',
    asks: 2,
    source: custom,
  },
  {
    kind: 'leave',
    fact: 'camper.options',
    column: 'weight',
    says: 'Order it without {row}.',
    asks: 4,
    source: custom,
  },
];
