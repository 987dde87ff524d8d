import { part } from '../../engine/define/topic';
import { custom, house, wireTable } from '../../trade/bibliography/common';
import { circuits, cordTable, dropAdvice } from '../../trade/bibliography/power';

/**
 * The extension cord: what it carries, and what it loses there and back. With two legs the neutral
 * brings back only their difference.
 *
 *     outlet ──── hot, fuller leg ────► trailer      drop = length × resistance
 *            ◄─── neutral: difference ──                     × (fuller leg + neutral)
 */
export const cord = part({
  facts: {
    'cord.gauge': {
      kind: 'choice',
      label: 'Gauge of the extension cord',
      noun: 'the cord’s gauge',
      options: ['16', '14', '12', '10', '8', '6'],
      ask: 'What gauge is the extension cord, in AWG?',
      where: 'printed on its jacket, such as 10/3',
    },
    'cord.length': {
      kind: 'quantity',
      label: 'Length of the extension cord',
      noun: 'the cord’s length',
      unit: 'ft',
      least: 0,
      most: 500,
      ask: 'How long is the extension cord?',
      where: 'its label, or a tape',
      silent: { value: 0, says: 'No extension cord is counted.', source: custom, quiet: true },
    },
    'cord.rating': {
      kind: 'quantity',
      label: 'Rating of the extension cord or adapter',
      unit: 'A',
      least: 1,
      most: 100,
      exact: true,
      ask: 'How many amperes are printed on the cord or the adapter, whichever is less?',
      where: 'printed on its jacket or plug',
    },
  },
  parameters: {
    'drop.most': {
      label: 'Largest voltage drop of the cord, of 120 V',
      unit: '%',
      values: [{ from: '2020-01-01', value: 5 }],
      range: [3, 8],
      source: house,
    },
    'margin.drop': {
      label: 'Part of it that is kept free, so that care begins at 3 %',
      unit: '%',
      values: [{ from: '2020-01-01', value: 40 }],
      source: dropAdvice,
    },
  },
  wordTables: {
    copper: {
      label: 'Resistance of copper wire, hot',
      valueUnit: 'mΩ/ft',
      values: { '16': 4.99, '14': 3.07, '12': 1.93, '10': 1.21, '8': 0.764, '6': 0.491 },
      source: wireTable,
    },
    cordAmps: {
      label: 'What a flexible cord carries',
      valueUnit: 'A',
      values: { '16': 13, '14': 18, '12': 25, '10': 30, '8': 40, '6': 55 },
      source: cordTable,
    },
  },
  formulas: {
    'cord.neutral': {
      label: 'Current that comes back in the neutral',
      unit: 'A',
      is: 'choose(supply.twoLegs, 2 * leg.fuller - load.current, leg.fuller)',
      source: circuits,
    },
    'cord.drop': {
      label: 'Voltage lost in the cord',
      noun: 'the voltage lost in the cord',
      unit: 'V',
      is: 'choose(cord.length > 0, cord.length * pick(copper, cord.gauge) * (leg.fuller + cord.neutral), 0)',
      source: wireTable,
    },
    'cord.dropAllowed': {
      label: 'Voltage that may be lost',
      unit: 'V',
      is: 'volts.nominal * drop.most',
      source: house,
    },
    'cord.ampacity': {
      label: 'What the cord carries',
      noun: 'what the cord carries',
      unit: 'A',
      is: 'min(choose(given(cord.rating), cord.rating, pick(cordAmps, cord.gauge)), choose(known(cord.gauge), pick(cordAmps, cord.gauge), unlimited))',
      source: cordTable,
    },
  },
  limits: {
    cord: {
      label: 'Extension cord',
      short: 'what the cord carries',
      used: 'leg.fuller',
      limit: 'cord.ampacity',
      askedBy: ['cord.gauge', 'cord.rating', 'cord.length'],
      source: cordTable,
    },
    'cord-drop': {
      label: 'Voltage drop of the cord',
      short: 'the voltage drop',
      used: 'cord.drop',
      limit: 'cord.dropAllowed',
      margin: 'margin.drop',
      askedBy: ['cord.length'],
      source: dropAdvice,
    },
  },
});
