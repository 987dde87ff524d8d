import { part } from '../../engine/define/topic';
import { freezingTable } from '../bibliography/battery';

/** A lead battery's acid is water when it is flat: it freezes, and splits the case. */
export const freeze = part({
  tables: {
    freezing: {
      label: 'Freezing point of battery acid',
      keyUnit: '%',
      valueUnit: '°F',
      rows: [
        [0, 20],
        [25, 5],
        [50, -10],
        [75, -35],
        [100, -75],
      ],
      source: freezingTable,
    },
  },
  formulas: {
    'stored.freezesAt': {
      label: 'Temperature at which the acid freezes at the charge that was read',
      noun: 'the temperature at which the acid freezes',
      unit: '°F',
      is: 'lookup(freezing, charge.read)',
      source: freezingTable,
    },
  },
});
