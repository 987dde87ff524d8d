import type { Change } from '../../engine/define/changes';
import { custom, house } from '../../trade/bibliography/common';
import { exhaust } from '../../trade/bibliography/power';
import { needed } from '../../trade/needed';

/** What a person can change; never a rating, an outlet or a cord’s gauge. */
export const changes: readonly Change[] = [
  {
    kind: 'leave',
    fact: 'shore.appliances',
    column: 'power',
    keeps: needed,
    says: 'Leave “{row}” off ({amount}), unless it keeps somebody warm or well.',
    asks: 1,
    source: house,
  },
  {
    kind: 'less',
    fact: 'shore.appliances',
    column: 'hours',
    step: 0.5,
    says: 'Run {row} for {to} at a time instead of {from}, and let plug and cord cool in between.',
    asks: 2,
    source: house,
  },
  {
    kind: 'shift',
    fact: 'shore.appliances',
    column: 'leg',
    step: 1,
    within: { least: 1, most: 2 },
    says: 'Plug {row} in on the other half of the feed, if it is plugged in; a circuit is an electrician’s.',
    asks: 2.5,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'cord.length',
    step: 5,
    says: 'Park so that {to} of cord will do instead of {from}.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'generator.place',
    to: { option: 'open-air' },
    says: 'Stand the generator in the open, 20 ft from any opening, its exhaust pointing away.',
    asks: 4,
    source: exhaust,
  },
];
