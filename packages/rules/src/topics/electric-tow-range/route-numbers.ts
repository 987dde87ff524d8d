import { part } from '../../engine/define/topic';
import { house } from '../../trade/bibliography/common';
import { energyBalance, mechanics } from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';

/** What a route is reckoned with. */
export const routeNumbers = part({
  parameters: {
    'range.reserve': {
      label: 'Reserve that is never planned on',
      noun: 'the reserve',
      unit: '%',
      values: [{ from, value: 15 }],
      range: [5, 40],
      source: house,
    },
    'margin.range': {
      label: 'Margin kept above the reserve',
      unit: '%',
      values: [{ from, value: 10 }],
      range: [0, 30],
      source: house,
    },
    'cold.line': {
      label: 'Cold enough to be worth a word',
      unit: '°F',
      values: [{ from, value: 32 }],
      range: [20, 50],
      source: house,
    },
    'spilled.little': {
      label: 'Energy without room that is not worth a word',
      noun: 'a little',
      unit: 'kWh',
      values: [{ from, value: 0.5 }],
      range: [0, 5],
      source: house,
    },
    'energy.none': {
      label: 'No energy',
      noun: 'nothing',
      unit: 'kWh',
      values: [{ from, value: 0 }],
      source: energyBalance,
    },
    'energy.perMileNone': {
      label: 'No energy a mile',
      noun: 'nothing',
      unit: 'kWh/mi',
      values: [{ from, value: 0 }],
      source: energyBalance,
    },
    'distance.none': {
      label: 'No way at all',
      noun: 'nothing',
      unit: 'mi',
      values: [{ from, value: 0 }],
      source: mechanics,
    },
  },
});
