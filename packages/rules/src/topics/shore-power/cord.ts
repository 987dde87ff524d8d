import { part } from '../../engine/define/topic';
import { wire } from '../../trade/battery/wire';
import { custom, house, wireTable } from '../../trade/bibliography/common';
import { circuits, cordBehind, cordTable, dropAdvice } from '../../trade/bibliography/power';

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
    'cord.dropMost': {
      label: 'Largest voltage drop of the cord, of 120 V',
      unit: '%',
      values: [{ from: '2020-01-01', value: 5 }],
      range: [3, 8],
      source: house,
    },
    'generator.smallOutlet': {
      label: 'Smallest breaker of a generator’s outlet',
      unit: 'A',
      values: [{ from: '2020-01-01', value: 15 }],
      source: cordBehind,
    },
    'generator.largeOutlet': {
      label: 'Largest breaker of a generator’s outlet',
      unit: 'A',
      values: [{ from: '2020-01-01', value: 50 }],
      source: cordBehind,
    },
    'cord.listedMost': {
      label: 'Largest breaker behind which a listed set carries less than the breaker',
      unit: 'A',
      values: [{ from: '2020-01-01', value: 20 }],
      source: cordBehind,
    },
    'margin.drop': {
      label: 'Part of it that is kept free, so that care begins at 3 %',
      unit: '%',
      values: [{ from: '2020-01-01', value: 40 }],
      source: dropAdvice,
    },
  },
  wordTables: {
    copper: wire.wordTables.copper,
    cordBreaker: {
      label: 'Largest breaker that a cord of this gauge may stand behind',
      valueUnit: 'A',
      values: { '16': 20, '14': 20, '12': 20, '10': 30, '8': 40, '6': 50 },
      source: cordBehind,
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
      is: 'volts.nominal * cord.dropMost',
      source: house,
    },
    'cord.breaker': {
      label: 'What the breaker above the cord lets through',
      noun: 'the breaker above the cord',
      unit: 'A',
      is: "choose(given(supply.breaker), supply.breaker, choose(supply.outlet == 'generator', choose(given(generator.outlet), generator.outlet, between(generator.smallOutlet, generator.largeOutlet)), pick(breakerAmps, supply.outlet)))",
      source: cordBehind,
    },
    'cord.holds': {
      label: 'Largest breaker that the cord may stand behind',
      noun: 'the breaker the cord may stand behind',
      unit: 'A',
      is: 'min(choose(given(cord.gauge) || !given(cord.rating), pick(cordBreaker, cord.gauge), unlimited), choose(given(cord.rating), max(cord.rating, cord.listedMost), unlimited))',
      source: cordBehind,
    },
    'cord.ampacity': {
      label: 'What the cord carries',
      noun: 'what the cord carries',
      unit: 'A',
      is: 'min(choose(given(cord.rating), cord.rating, pick(cordAmps, cord.gauge)), choose(known(cord.gauge), pick(cordAmps, cord.gauge), unlimited))',
      source: cordTable,
    },
  },
  findings: {
    'cord-breaker': {
      label: 'Cord and the breaker above it',
      first: true,
      askedBy: ['cord.gauge', 'cord.rating', 'cord.length'],
      stop: {
        when: 'cord.holds < cord.breaker',
        wrong: 'Do not use that cord there, whatever flows now.',
        because:
          'The breaker lets through {cord.breaker}, and the cord burns before it trips: it may stand behind {cord.holds} at the most.',
        do: 'Take a cord that carries what the breaker does, or park within reach of the trailer’s own.',
      },
      care: {
        when: 'cord.ampacity < cord.breaker',
        wrong: 'The cord carries {cord.ampacity}, less than its breaker lets through.',
        do: 'Let no more run than is printed on it, uncoiled, and feel it after a quarter of an hour.',
      },
      otherwise: 'The cord carries what the breaker above it lets through.',
      open: {
        wrong: 'The cord may be too thin for the breaker above it.',
        do: 'Read the gauge printed on its jacket and the breaker’s handle before it is plugged in.',
      },
      source: cordBehind,
    },
  },
  limits: {
    'cord-lasting': {
      label: 'Extension cord, lasting loads at 125 %',
      short: 'what the cord carries for hours',
      do: 'Run less for hours, or take a cord that carries more.',
      near: 'Switch nothing more on, and feel the cord.',
      used: 'leg.counted',
      limit: 'cord.ampacity',
      askedBy: ['cord.gauge', 'cord.rating', 'cord.length'],
      source: cordTable,
    },
    cord: {
      label: 'Extension cord',
      short: 'what the cord carries',
      do: 'Run less, or take a cord that carries more.',
      near: 'Switch nothing more on, and feel the cord.',
      used: 'leg.fuller',
      limit: 'cord.ampacity',
      askedBy: ['cord.gauge', 'cord.rating', 'cord.length'],
      source: cordTable,
    },
    'cord-drop': {
      label: 'Voltage drop of the cord',
      short: 'the voltage drop',
      do: 'Take a shorter or a thicker cord.',
      near: 'Take a shorter or a thicker cord, and read the voltage with everything running.',
      used: 'cord.drop',
      limit: 'cord.dropAllowed',
      margin: 'margin.drop',
      askedBy: ['cord.length'],
      source: dropAdvice,
    },
  },
});
