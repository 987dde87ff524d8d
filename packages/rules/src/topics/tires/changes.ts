import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';

const weighedAsIs = {
  unlessKnown: {
    fact: 'scale.onAxles',
    says: 'The axles were weighed as they are loaded now: weigh them again afterwards.',
  },
} as const;

const water = (fact: string, says: string): Change => ({
  kind: 'less',
  fact,
  step: 0.1,
  says,
  asks: 2,
  source: custom,
  ...weighedAsIs,
});

const leave = (fact: string): Change => ({
  kind: 'leave',
  fact,
  column: 'weight',
  says: 'Leave {row} at home, {amount}.',
  asks: 3,
  source: custom,
  ...weighedAsIs,
});

/** What a person can change about a load on tires; never a rating. */
export const changes: readonly Change[] = [
  {
    kind: 'less',
    fact: 'trip.speed',
    step: 1,
    says: 'Drive no faster than {to}; now {from}.',
    asks: 1,
    source: custom,
  },
  water('trailer.freshWater', 'Carry {to} of fresh water instead of {from}.'),
  water('trailer.grayWater', 'Drain the gray tank to {to} before you leave; now {from}.'),
  water('trailer.blackWater', 'Drain the black tank to {to} before you leave; now {from}.'),
  leave('trailer.cargo'),
  leave('load.cargo'),
];
