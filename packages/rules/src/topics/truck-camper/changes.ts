import type { Change } from '../../engine/define/changes';
import { custom, statics } from '../../trade/bibliography/common';

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
    kind: 'shift',
    fact: 'camper.cargo',
    column: 'ahead',
    step: 6,
    within: { least: 0, most: 60 },
    says: 'Move {row} in the camper: from {from} to {to}.',
    sides: {
      above: 'ahead of the rear axle',
      at: 'over the rear axle',
      below: 'behind the rear axle',
    },
    asks: 0.5,
    source: statics,
  },
  {
    kind: 'set',
    fact: 'camper.tieDowns',
    to: { option: 'frame' },
    says: 'Have it tied down at the frame, at the points both makers name.',
    asks: 3,
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
