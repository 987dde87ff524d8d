import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { ampacityTable, circuits, dataPlate } from '../bibliography/battery';
import { custom, house, wireTable } from '../bibliography/common';

/**
 * The wire's chain: what flows, what the wire carries, what the fuse lets through.
 *
 *     battery ─[fuse]──────── one way ────────► load     drop = current × resistance × both ways
 *             └──────── and back ─────────────┘          current ≤ fuse ≤ ampacity
 */
export const wire = part({
  facts: {
    'wire.gauge': {
      kind: 'choice',
      label: 'Gauge of the wire',
      options: ['16', '14', '12', '10', '8', '6', '4', '2', '1/0', '2/0', '4/0'],
      scale: true,
      noun: 'the gauge',
      ask: 'What gauge is the wire, in AWG?',
      where: 'printed on its insulation',
    },
    'wire.resistance': {
      kind: 'quantity',
      label: 'Resistance of the wire',
      unit: 'mΩ/ft',
      least: 0.01,
      most: 20,
      ask: 'What resistance does the maker give for the wire, hot?',
      where: 'the wire’s data sheet; a milliohm a foot is an ohm on 1,000 feet',
    },
    'wire.length': {
      kind: 'quantity',
      label: 'Length of the run, one way',
      noun: 'the length of the run, one way',
      unit: 'ft',
      least: 0,
      most: 500,
      ask: 'How long is the wire, one way?',
      where: 'tape along the way it takes',
    },
    'wire.current': {
      kind: 'quantity',
      label: 'Current in the wire',
      noun: 'the current in the wire',
      unit: 'A',
      least: 0,
      most: 2000,
      ask: 'How many amperes flow in the wire at the most?',
      where: 'data plate of what it feeds',
    },
    'wire.rating': {
      kind: 'quantity',
      label: 'Ampacity of the wire as its maker rates it',
      unit: 'A',
      least: 1,
      most: 1000,
      ask: 'How many amperes is the wire rated for, as it is laid?',
      where: 'the wire’s data sheet',
    },
    'wire.fuse': {
      kind: 'quantity',
      label: 'Fuse of the wire',
      noun: 'the fuse of the wire',
      unit: 'A',
      least: 0.5,
      most: 1000,
      ask: 'How large is the fuse that protects that wire?',
      where: 'printed on the fuse',
    },
    'wire.fuseAtBattery': {
      kind: 'yes-no',
      label: 'Fuse close to the battery',
      noun: 'whether a fuse is close to the battery',
      ask: 'Is there a fuse on the plus wire within a hand’s breadth of the battery?',
      where: 'follow the plus wire from the battery',
    },
  },
  parameters: {
    'drop.most': {
      label: 'Largest voltage drop, of the bank’s voltage',
      unit: '%',
      values: [{ from: '2020-01-01', value: 3 }],
      range: [1, 10],
      source: house,
    },
    'margin.fuse': {
      label: 'Part of a fuse that a lasting current leaves free',
      unit: '%',
      values: [{ from: '2020-01-01', value: 20 }],
      source: custom,
    },
  },
  wordTables: {
    copper: {
      label: 'Resistance of copper wire, hot',
      valueUnit: 'mΩ/ft',
      values: {
        '16': 4.99,
        '14': 3.07,
        '12': 1.93,
        '10': 1.21,
        '8': 0.764,
        '6': 0.491,
        '4': 0.308,
        '2': 0.194,
        '1/0': 0.122,
        '2/0': 0.0967,
        '4/0': 0.0608,
      },
      source: wireTable,
    },
    ampacity: {
      label: 'Ampacity of copper wire',
      valueUnit: 'A',
      values: {
        '16': 10,
        '14': 15,
        '12': 20,
        '10': 30,
        '8': 50,
        '6': 65,
        '4': 85,
        '2': 115,
        '1/0': 150,
        '2/0': 175,
        '4/0': 230,
      },
      source: ampacityTable,
    },
  },
  formulas: {
    'wire.perFoot': {
      label: 'Resistance that counts',
      noun: 'the wire’s resistance',
      unit: 'mΩ/ft',
      is: 'choose(known(wire.resistance), wire.resistance, pick(copper, wire.gauge))',
      source: wireTable,
    },
    'wire.drop': {
      label: 'Voltage lost in the wire, there and back',
      noun: 'the voltage lost, there and back',
      unit: 'V',
      is: '2 * wire.length * wire.perFoot * wire.current',
      source: circuits,
    },
    'wire.dropAllowed': {
      label: 'Voltage that may be lost',
      noun: 'the voltage that may be lost',
      unit: 'V',
      is: 'bank.volts * drop.most',
      source: house,
    },
    'wire.longest': {
      label: 'Longest run of this wire at this current, one way',
      unit: 'ft',
      is: 'wire.dropAllowed / (2 * wire.perFoot * wire.current)',
      source: circuits,
    },
    'wire.perFootAllowed': {
      label: 'Largest resistance that would do for this run',
      unit: 'mΩ/ft',
      is: 'wire.dropAllowed / (2 * wire.length * wire.current)',
      source: circuits,
    },
    'wire.ampacity': {
      label: 'Ampacity that counts',
      noun: 'the wire’s ampacity',
      unit: 'A',
      is: 'choose(known(wire.rating), wire.rating, pick(ampacity, wire.gauge))',
      source: ampacityTable,
    },
    'wire.fuseUntold': {
      label: 'A wire and what flows in it are told, and nothing of its fuse',
      unit: 'yes-no',
      is: 'given(wire.gauge, wire.current) && !given(wire.fuse) && !given(wire.fuseAtBattery)',
      source: custom,
    },
    'assumed.wireCarries': {
      label: 'What the wire carries is taken from its gauge',
      unit: 'yes-no',
      is: 'given(wire.gauge) && !given(wire.rating)',
      source: ampacityTable,
    },
    'assumed.wireResists': {
      label: 'What the wire resists is taken from its gauge',
      unit: 'yes-no',
      is: 'given(wire.gauge) && given(wire.length) && !given(wire.resistance)',
      source: wireTable,
    },
  },
  limits: {
    'voltage-drop': {
      label: 'Voltage drop',
      short: 'the voltage drop',
      do: 'Take a thicker or a shorter wire.',
      near: 'A thicker wire is better.',
      used: 'wire.drop',
      limit: 'wire.dropAllowed',
      askedBy: ['wire.length'],
      source: house,
    },
    wire: {
      label: 'Current in the wire',
      short: 'the wire’s ampacity',
      do: 'Take a thicker wire before it is used.',
      near: 'Run nothing more on that wire.',
      exceeded: true,
      used: 'wire.current',
      limit: 'wire.ampacity',
      askedBy: ['wire.current'],
      source: ampacityTable,
    },
    fuse: {
      label: 'Fuse against wire',
      short: 'the fuse’s size',
      do: 'Fit a fuse no larger than the wire carries.',
      near: 'Fit no larger fuse.',
      used: 'wire.fuse',
      limit: 'wire.ampacity',
      askedBy: ['wire.fuse'],
      source: ampacityTable,
    },
    'fuse-current': {
      label: 'Current through the fuse',
      short: 'the fuse',
      do: 'Run less, or fit thicker wire with a fuse to match; never a larger fuse alone.',
      near: 'What runs for hours should draw no more than four fifths of the fuse; never fit a larger one.',
      used: 'wire.current',
      limit: 'wire.fuse',
      margin: 'margin.fuse',
      askedBy: ['wire.fuse'],
      source: dataPlate,
    },
  },
  findings: {
    'fuse-untold': {
      label: 'Fuse of the wire',
      askedByKnown: ['wire.gauge', 'wire.current'],
      if: {
        when: 'wire.fuseUntold',
        wrong: 'Whether a fuse guards the wire is not known yet.',
        because: 'A short in a wire without one burns it from end to end.',
        do: 'Look for a fuse close to the battery, no larger than the wire carries.',
        proviso: 'a fuse of {wire.ampacity} or less sits close to the battery',
      },
      otherwise: 'It is told what fuse guards the wire.',
      source: custom,
    },
    'fuse-at-battery': {
      label: 'Fuse at the battery',
      askedBy: ['wire.fuseAtBattery'],
      stop: {
        when: '!wire.fuseAtBattery',
        wrong: 'There is no fuse close to the battery.',
        because: 'A short in the wire burns it from end to end.',
        do: 'Do not use it before one is fitted, no larger than the wire carries.',
      },
      otherwise: 'There is a fuse close to the battery.',
      open: {
        wrong: 'Make sure that there is a fuse close to the battery.',
        because: 'Without one a short in the wire burns it from end to end.',
      },
      source: custom,
    },
  },
});

/** A wire by its gauge alone counts as the tables have it; its maker’s own figures win. */
export const wireAssumptions: readonly Assumption[] = [
  {
    when: 'assumed.wireCarries',
    says: 'The wire carries what its gauge does by the table: its maker’s rating was not told.',
    source: ampacityTable,
  },
  {
    when: 'assumed.wireResists',
    says: 'The wire resists what its gauge does by the table: its data sheet was not told.',
    source: wireTable,
  },
];
