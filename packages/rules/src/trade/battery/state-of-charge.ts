import { part } from '../../engine/define/topic';
import {
  chosenVoltages,
  dataPlate,
  depthAllowed,
  energyBalance,
  otherVoltages,
} from '../bibliography/battery';
import { custom, house } from '../bibliography/common';
import { byChemistry, chargeBy, voltsAt } from './voltage-tables';

/**
 * How full it is: by a monitor that counts, else by what the voltage leaves open.
 *
 *     empty ├──── stop ──┤▒▒▒▒▒▒▒▒├────────┤ full
 *                  charge.low … charge.high
 */
export const stateOfCharge = part({
  facts: {
    'monitor.stateOfCharge': {
      kind: 'quantity',
      label: 'State of charge on a shunt-based monitor',
      noun: 'the monitor’s reading',
      unit: '%',
      least: 0,
      most: 100,
      ask: 'What does the battery monitor show, if there is one that counts?',
      where: 'the monitor’s display; a panel with four lights only guesses from the voltage',
    },
  },
  parameters: {
    'reading.tellsLittle': {
      label: 'Spread of charge from which a voltage tells little',
      unit: '%',
      values: [{ from: '2020-01-01', value: 30 }],
      range: [10, 50],
      source: house,
    },
    'margin.battery': {
      label: 'Margin kept above the stop line',
      unit: '%',
      values: [{ from: '2020-01-01', value: 20 }],
      range: [0, 40],
      source: house,
    },
  },
  formulas: {
    'charge.lowFlooded': chargeBy('Flooded', 'reading.low'),
    'charge.lowAgm': chargeBy('Agm', 'reading.low'),
    'charge.lowGel': chargeBy('Gel', 'reading.low'),
    'charge.lowLifepo4': chargeBy('Lifepo4', 'reading.low'),
    'charge.highFlooded': chargeBy('Flooded', 'reading.high'),
    'charge.highAgm': chargeBy('Agm', 'reading.high'),
    'charge.highGel': chargeBy('Gel', 'reading.high'),
    'charge.highLifepo4': chargeBy('Lifepo4', 'reading.high'),
    'charge.low': {
      label: 'Least state of charge by the voltage',
      noun: 'the least charge that the voltage allows',
      unit: '%',
      is: byChemistry('charge.low'),
      source: chosenVoltages,
    },
    'charge.high': {
      label: 'Most state of charge by the voltage',
      noun: 'the most charge that the voltage allows',
      unit: '%',
      is: byChemistry('charge.high'),
      source: chosenVoltages,
    },
    'charge.restedFlooded': chargeBy('Flooded', 'reading.block'),
    'charge.restedAgm': chargeBy('Agm', 'reading.block'),
    'charge.restedGel': chargeBy('Gel', 'reading.block'),
    'charge.restedLifepo4': chargeBy('Lifepo4', 'reading.block'),
    'charge.rested': {
      label: 'State of charge, had the voltage been read rested',
      noun: 'the charge, had it rested',
      unit: '%',
      is: byChemistry('charge.rested'),
      source: chosenVoltages,
    },
    'rested.isAsked': {
      label: 'It was read with nothing on, and nobody said for how long it had rested',
      unit: 'yes-no',
      is: "known(battery.voltage, battery.chemistry) && known(battery.reading) && battery.reading == 'at-rest' && battery.chemistry != 'lifepo4' && !known(battery.rested)",
      source: custom,
    },
    'rested.isPast': {
      label: 'Had it rested, it would be past its stop line',
      unit: 'yes-no',
      is: 'rested.isAsked && charge.rested < stop.stateOfCharge',
      source: depthAllowed,
    },
    'charge.spread': {
      label: 'How much of the charge the voltage leaves open',
      noun: 'what the voltage leaves open',
      unit: '%',
      is: 'charge.high - charge.low',
      source: otherVoltages,
    },
    'charge.isVague': {
      label: 'The voltage, as it was read, says next to nothing',
      unit: 'yes-no',
      is: '!known(monitor.stateOfCharge) && known(battery.voltage, battery.chemistry) && charge.spread > reading.tellsLittle',
      source: otherVoltages,
    },
    'charge.isFlat': {
      label: 'A lithium battery, whose voltage says next to nothing however it was read',
      unit: 'yes-no',
      is: "charge.isVague && battery.chemistry == 'lifepo4'",
      source: otherVoltages,
    },
    'monitor.isRead': {
      label: 'A monitor that counts was read',
      unit: 'yes-no',
      is: 'known(monitor.stateOfCharge)',
      source: dataPlate,
    },
    'monitor.isBelied': {
      label: 'The monitor shows more than the voltage allows',
      unit: 'yes-no',
      is: 'monitor.isRead && known(battery.voltage) && monitor.stateOfCharge > charge.high',
      source: custom,
    },
    'charge.read': {
      label: 'State of charge as far as it can be read',
      noun: 'the state of charge',
      unit: '%',
      is: 'choose(monitor.isRead && !monitor.isBelied, monitor.stateOfCharge, between(charge.low, charge.high))',
      source: chosenVoltages,
    },
    'battery.stateOfCharge': {
      label: 'State of charge',
      noun: 'the state of charge',
      unit: '%',
      is: 'choose(monitor.isBelied, between(charge.low, charge.high), choose(monitor.isRead, monitor.stateOfCharge, needs(charge.read, battery.voltage)))',
      source: chosenVoltages,
    },
    'battery.discharged': {
      label: 'Discharged so far',
      noun: 'the charge used so far',
      unit: '%',
      is: '1 - charge.read',
      source: energyBalance,
    },
    'stop.stateOfCharge': {
      label: 'State of charge at the stop line',
      unit: '%',
      is: '1 - battery.depth',
      source: depthAllowed,
    },
    'stop.voltage': {
      label: 'Resting voltage at the stop line',
      unit: 'V',
      is: `bank.blocks * ${voltsAt('stop.stateOfCharge')}`,
      source: chosenVoltages,
    },
    'monitor.voltage': {
      label: 'Resting voltage that goes with the monitor’s reading',
      unit: 'V',
      is: `needs(bank.blocks * ${voltsAt('monitor.stateOfCharge')}, monitor.stateOfCharge)`,
      source: chosenVoltages,
    },
  },
  limits: {
    'state-of-charge': {
      label: 'Depth of discharge',
      short: 'the battery’s charge',
      supply: true,
      do: 'Draw no more from it before it has been charged full and has rested.',
      near: 'Charge it before long.',
      used: 'battery.discharged',
      limit: 'battery.depth',
      margin: 'margin.battery',
      askedBy: ['battery.voltage', 'monitor.stateOfCharge'],
      source: depthAllowed,
    },
  },
  findings: {
    'monitor-needed': {
      label: 'Monitor',
      askedBy: ['battery.voltage'],
      care: {
        when: '!monitor.isRead && charge.spread > reading.tellsLittle',
        wrong: 'This voltage says almost nothing of the charge.',
        because: 'LiFePO₄ is flat over most of its range, and a battery not at rest misleads.',
        do: 'Have a monitor fitted that counts what goes in and out.',
      },
      open: {
        wrong: 'This voltage may say next to nothing of the charge.',
        because: 'LiFePO₄ is flat over most of its range, and a battery not at rest misleads.',
        do: 'Read it again after a night at rest.',
      },
      otherwise: 'The charge is told well enough by the voltage, or a monitor counts it.',
      source: custom,
    },
    'monitor-drift': {
      label: 'Monitor against voltage',
      askedByKnown: ['monitor.stateOfCharge', 'battery.voltage'],
      care: {
        when: 'monitor.stateOfCharge < charge.low || monitor.stateOfCharge > charge.high',
        wrong: 'The monitor and the voltage disagree, and the lower one counts.',
        do: 'Charge it full and set the monitor anew, and see that its capacity is set right.',
      },
      otherwise: 'The monitor agrees with the voltage as far as that can tell.',
      open: {
        wrong: 'The monitor and the voltage may disagree.',
        do: 'Read the voltage again at rest.',
      },
      source: custom,
    },
  },
});
