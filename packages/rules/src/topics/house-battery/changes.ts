import type { Change } from '../../engine/define/changes';
import type { Source } from '../../engine/define/source';
import { makersManual } from '../../trade/bibliography/battery';
import { custom } from '../../trade/bibliography/common';
import { needed } from '../../trade/needed';

/** What is asked of people is a matter of manners: a switch before a thing, a thing before a trip. */
const manners: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'The order in which changes are proposed: switches first, then hours, then doing without.',
};

/** What a person can change of a battery's day. Ratings are never among them. */
export const changes: readonly Change[] = [
  {
    kind: 'less',
    fact: 'inverter.hours',
    step: 1,
    says: 'Leave the inverter on for {to} a day instead of {from}.',
    asks: 1,
    source: manners,
  },
  {
    kind: 'less',
    fact: 'steady.hours',
    step: 0.1,
    says: 'Run it for {to} instead of {from}.',
    asks: 2,
    source: manners,
  },
  {
    kind: 'leave',
    fact: 'loads.ac',
    column: 'power',
    keeps: needed,
    says: 'Do without {row} ({amount}), unless somebody’s health hangs on it.',
    asks: 3,
    source: manners,
  },
  {
    kind: 'leave',
    fact: 'loads.dc',
    column: 'power',
    keeps: needed,
    says: 'Do without {row} ({amount}), unless somebody’s health hangs on it.',
    asks: 3,
    source: manners,
  },
  {
    kind: 'set',
    fact: 'charge.equalize',
    to: { option: 'no' },
    says: 'Switch equalizing off for good.',
    asks: 0.5,
    source: makersManual,
  },
  {
    kind: 'set',
    fact: 'battery.vented',
    to: { option: 'yes' },
    says: 'Give the battery’s place a vent to the outside.',
    asks: 4,
    source: makersManual,
  },
  {
    kind: 'set',
    fact: 'wire.fuseAtBattery',
    to: { option: 'yes' },
    says: 'Have a fuse fitted close to the battery.',
    asks: 4,
    source: custom,
  },
];
