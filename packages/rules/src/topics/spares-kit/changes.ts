import type { Change } from '../../engine/define/changes';
import { custom, statics } from '../../trade/bibliography/common';

const leave = (fact: string): Change => ({
  kind: 'leave',
  fact,
  column: 'weight',
  says: 'Leave {row} at home, {amount}.',
  asks: 3,
  source: custom,
});

/** What a person can change about a kit and what rides with it; never a rating. */
export const changes: readonly Change[] = [
  {
    kind: 'shift',
    fact: 'kit.ahead',
    step: 0.5,
    within: { of: 'trailer.ballToAxle', least: 0, most: 0.8 },
    onlyIf: { fact: 'kit.place', is: 'trailer' },
    says: 'Move the kit in the trailer: from {from} to {to}.',
    sides: {
      above: 'ahead of the axles',
      at: 'over the axles',
      below: 'behind the axles',
    },
    asks: 1,
    source: statics,
  },
  {
    kind: 'set',
    fact: 'kit.place',
    to: { option: 'vehicle' },
    says: 'Let the kit ride in the vehicle.',
    asks: 2,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'kit.extent',
    to: { option: 'lean' },
    says: 'Pack only what has to come, in the order given under what to leave at home first.',
    asks: 2,
    source: custom,
  },
  leave('kit.added'),
  leave('trailer.cargo'),
  leave('load.cargo'),
];
