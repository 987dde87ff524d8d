import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';
import { needed } from '../../trade/needed';

/** What a person can change of a stay; never the size of a tank. */
export const changes: readonly Change[] = [
  {
    kind: 'leave',
    fact: 'loads.ac',
    column: 'power',
    keeps: needed,
    says: 'Do without {row}, unless somebody’s health hangs on it.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'leave',
    fact: 'loads.dc',
    column: 'power',
    keeps: needed,
    says: 'Do without {row}, unless somebody’s health hangs on it.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'trailer.grayWater',
    step: 1,
    says: 'Start with {to} in the gray tank instead of {from}: empty it on the way.',
    asks: 4,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'stay.days',
    step: 0.5,
    says: 'Stay {to} instead of {from}, or dump and fill in between.',
    asks: 5,
    source: custom,
  },
];
