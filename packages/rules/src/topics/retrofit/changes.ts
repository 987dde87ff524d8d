import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';
import { statics, trades } from '../../trade/bibliography/retrofit';

/** What a person can change of an add-on; never a rating. */
export const changes: readonly Change[] = [
  {
    kind: 'set',
    fact: 'fitting.planned',
    to: { option: 'dealer' },
    says: 'Have the dealer fit it.',
    asks: 1,
    source: trades,
  },
  {
    kind: 'set',
    fact: 'fitting.planned',
    to: { option: 'licensed-trade' },
    says: 'Have a licensed trade fit it.',
    asks: 1,
    source: trades,
  },
  {
    kind: 'shift',
    fact: 'addon.ahead',
    step: 0.5,
    within: { of: 'trailer.ballToAxle', least: 0, most: 1 },
    says: 'Put it {to} instead of {from}, where something rated holds it.',
    sides: {
      above: 'ahead of the axles',
      at: 'over the axles',
      below: 'behind the axles',
    },
    asks: 2,
    source: statics,
  },
  {
    kind: 'less',
    fact: 'addon.hours',
    step: 0.5,
    onlyIf: { fact: 'addon.kind', is: 'television' },
    says: 'Run it {to} a day instead of {from}, if everybody will keep to that.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'leave',
    fact: 'trailer.cargo',
    column: 'weight',
    says: 'Leave {row} at home.',
    asks: 5,
    source: custom,
  },
];
