import type { Change } from '../../engine/define/changes';
import type { Source } from '../../engine/define/source';
import { custom } from '../../trade/bibliography/common';
import { makersManual, roadLoad } from '../../trade/bibliography/electric-tow-range';

/** What is asked of people is a matter of manners, not of energy. */
const manners: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'The order in which changes are proposed: charge and speed before things, things before water.',
};

/** What a person can change of a drive with a trailer. Ratings are never among them. */
export const changes: readonly Change[] = [
  {
    kind: 'shift',
    fact: 'trip.startCharge',
    step: 1,
    within: { least: 70, most: 100 },
    says: 'Set out with {to} in the battery (now {from}).',
    asks: 1,
    source: manners,
  },
  {
    kind: 'scale',
    fact: 'route.legs',
    scaled: ['route.legs.speed'],
    shown: 'route.speed',
    step: 1,
    least: 0.75,
    says: 'Drive slower all the way: {to} on average instead of {from}.',
    asks: 2,
    source: roadLoad,
  },
  {
    kind: 'less',
    fact: 'trip.climbSpeed',
    step: 1,
    says: 'Climb the steepest grade at {to} instead of {from}.',
    asks: 2,
    source: roadLoad,
  },
  {
    kind: 'shift',
    fact: 'route.legs',
    column: 'chargeTo',
    step: 1,
    within: { least: 60, most: 100 },
    says: 'After {row} charge to {to} (now {from}).',
    asks: 3,
    source: makersManual,
  },
  {
    kind: 'less',
    fact: 'trailer.freshWater',
    step: 0.1,
    says: 'Carry {to} of fresh water instead of {from}, and fill up where you camp.',
    asks: 4,
    source: manners,
  },
  {
    kind: 'leave',
    fact: 'trailer.cargo',
    column: 'weight',
    says: 'Leave {row} at home, {amount}.',
    asks: 5,
    source: manners,
  },
  {
    kind: 'leave',
    fact: 'load.cargo',
    column: 'weight',
    says: 'Leave {row} at home, {amount}.',
    asks: 5,
    source: manners,
  },
  {
    kind: 'set',
    fact: 'charge.access',
    to: { option: 'pull-through' },
    says: 'Plan the stops where the rig can pull through.',
    asks: 6,
    source: custom,
  },
];
