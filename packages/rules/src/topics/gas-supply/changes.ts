import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';
import { connectionCustom } from '../../trade/bibliography/gas';
import { needed } from '../../trade/needed';

/** What a person can change; never a rating, and never the gas that is on board. */
export const changes: readonly Change[] = [
  {
    kind: 'leave',
    fact: 'gas.appliances',
    column: 'input',
    keeps: needed,
    says: 'Leave “{row}” off, unless it keeps somebody warm or well.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'trip.nights',
    step: 1,
    says: 'Refill after {to} nights instead of {from}.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'supply.point',
    to: { option: 'after-regulator' },
    says: 'Take the gas after the trailer’s regulator, by the fitting made for it.',
    asks: 4,
    rights: ['connection'],
    source: connectionCustom,
  },
  {
    kind: 'set',
    fact: 'supply.point',
    to: { option: 'separate-cylinder' },
    says: 'Give it a separate cylinder, through its own regulator.',
    asks: 4,
    rights: ['connection'],
    source: connectionCustom,
  },
  {
    kind: 'set',
    fact: 'supply.adapter',
    to: { option: 'no' },
    says: 'Leave the adapter: get the hose that the appliance’s maker sells for that outlet.',
    asks: 4,
    rights: ['connection'],
    source: connectionCustom,
  },
  {
    kind: 'set',
    fact: 'appliance.usedAt',
    to: { option: 'open-air' },
    says: 'Use it in the open air only.',
    asks: 5,
    source: custom,
  },
];
