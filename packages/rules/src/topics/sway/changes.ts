import type { Change } from '../../engine/define/changes';
import { custom, statics } from '../../trade/bibliography/common';
import { gustHouse, speedSigns, swayControl } from '../../trade/bibliography/sway';

/** What a person can change against sway; nothing is moved behind the axles. */
export const changes: readonly Change[] = [
  {
    kind: 'shift',
    fact: 'trailer.cargo',
    column: 'ahead',
    step: 0.5,
    within: { of: 'trailer.ballToAxle', least: 0, most: 0.5 },
    says: 'Move {row} in the trailer: from {from} to {to}.',
    sides: { above: 'ahead of the axles', at: 'over the axles', below: 'behind the axles' },
    asks: 1.5,
    source: statics,
    rights: ['tongue-share'],
    unlessKnown: {
      fact: 'trailer.measuredTongueWeight',
      says: 'The tongue was weighed as it is loaded now, and what this does to it cannot be reckoned: weigh it again afterwards.',
    },
  },
  {
    kind: 'leave',
    fact: 'trailer.cargo',
    column: 'weight',
    says: 'Leave {row} at home.',
    asks: 3.5,
    source: custom,
    rights: ['tongue-share'],
    unlessKnown: {
      fact: 'trailer.measuredTongueWeight',
      says: 'The tongue was weighed as it is loaded now, and what this does to it cannot be reckoned: weigh it again afterwards.',
    },
  },
  {
    kind: 'less',
    fact: 'trip.speed',
    step: 5,
    says: 'Go {to} at the most instead of {from}.',
    asks: 1,
    source: speedSigns,
  },
  {
    kind: 'less',
    fact: 'trip.gusts',
    step: 5,
    says: 'Wait until gusts are down to {to}; now {from}.',
    asks: 4,
    source: gustHouse,
  },
  {
    kind: 'set',
    fact: 'tires.pressures',
    to: { option: 'as-labeled' },
    says: 'Fill all tires, cold, to the pressures of their labels.',
    asks: 0.5,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'trailer.rides',
    to: { option: 'level' },
    says: 'Lower ball or hitch until the trailer stands level.',
    asks: 2,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'hitch.frontFender',
    to: { option: 'half-back' },
    says: 'Set the bars to the share that their makers name: often half to all of what the front lost, and never more.',
    asks: 2,
    source: statics,
  },
  {
    kind: 'set',
    fact: 'hitch.swayControl',
    to: { option: 'set' },
    says: 'Have sway control set by its maker’s instructions, once the load is right.',
    asks: 3,
    source: swayControl,
  },
];
