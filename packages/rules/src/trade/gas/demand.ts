import { part } from '../../engine/define/topic';
import { loads } from '../battery/loads';
import { custom, dataPlate, house } from '../bibliography/common';
import { balance, propaneTables, weighing } from '../bibliography/gas';
import { furnace } from '../heat/furnace';
import { stay } from '../water/tanks';

/**
 * What the appliances ask for, and how long the gas lasts.
 *
 *     cylinder ─► regulator ─► pipe, hose ─┬─► furnace     input × hours × share
 *                                          └─► appliances  input × hours × duty
 */
export const demand = part({
  facts: {
    'gas.appliances': {
      kind: 'rows',
      label: 'Gas appliances',
      ask: 'What else burns gas, how many Btu an hour has each, and for how long a day?',
      where: 'data plates of the appliances',
      columns: {
        input: { label: 'Input', unit: 'Btu/h', least: 0, most: 400_000, required: true },
        hours: { label: 'Hours', unit: 'h', least: 0, most: 24, required: false },
        duty: { label: 'Duty', unit: '%', least: 0, most: 100, required: false },
      },
      silent: {
        value: 'none',
        says: 'No gas appliances are counted.',
        source: custom,
        quiet: true,
      },
    },
    'furnace.input': furnace.facts['furnace.input'],
    'trip.nights': {
      kind: 'quantity',
      label: 'Nights it must last',
      noun: 'the nights it must last',
      unit: '',
      least: 1,
      most: 200,
      counted: true,
      ask: 'For how many nights must the gas last?',
      where: 'told by the owner',
      silent: { value: 1, says: 'It must last one night.', source: custom, quiet: true },
    },
    'gas.dayUsed': {
      kind: 'quantity',
      unit: 'lb',
      least: 0,
      most: 200,
      label: 'Propane used a day and night',
      noun: 'the propane used a day',
      ask: 'How many pounds of propane does a day and night take, or what burns and for how long?',
      where: 'the cylinder on a scale, two evenings apart; or data plates and hours',
    },
    'stay.days': stay.facts['stay.days'],
  },
  parameters: {
    'time.day': loads.parameters['time.day'],
    'burst.hours': {
      label: 'What burns no longer than this in a day is a burst',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 1 }],
      range: [0.25, 2],
      source: house,
    },
    'margin.gas': {
      label: 'Gas kept back',
      unit: '%',
      values: [{ from: '2020-01-01', value: 20 }],
      range: [5, 40],
      source: house,
    },
  },
  formulas: {
    'demand.atOnce': {
      label: 'Everything burning at once',
      unit: 'Btu/h',
      is: 'furnace.input + sum(gas.appliances.input)',
      source: dataPlate,
    },
    'demand.lasting': {
      label: 'Mean demand of what burns for long',
      noun: 'what burns for long',
      unit: 'Btu/h',
      is: 'furnace.input * furnace.runs + sum(gas.appliances.input * choose(given(gas.appliances.duty), gas.appliances.duty, 1) * choose(given(gas.appliances.hours), choose(gas.appliances.hours > burst.hours, 1, 0), 1))',
      within: [
        'furnace.input * furnace.runs',
        'furnace.input * furnace.runs + sum(gas.appliances.input)',
      ],
      source: balance,
    },
    'furnace.heatNight': {
      label: 'Furnace, a night',
      unit: 'Btu',
      is: 'choose(furnace.input > 0, furnace.input * furnace.on * furnace.runs, 0)',
      source: balance,
    },
    'furnace.gasNight': {
      label: 'Propane for the furnace, a night',
      unit: 'lb',
      is: 'needs(furnace.heatNight / propane.heat, furnace.input)',
      source: propaneTables,
    },
    'blower.night': {
      label: 'Blower of the furnace, a night, from the battery',
      unit: 'Ah',
      is: 'needs(blower.ampHours, furnace.blowerCurrent)',
      source: balance,
    },
    'demand.daily': {
      label: 'Gas a day and night',
      unit: 'Btu',
      is: 'choose(!demand.isListed && given(gas.dayUsed), gas.dayUsed * propane.heat, furnace.heatNight + sum(gas.appliances.input * choose(given(gas.appliances.hours), gas.appliances.hours, time.day) * choose(given(gas.appliances.duty), gas.appliances.duty, 1)))',
      within: ['0', 'unlimited'],
      source: balance,
    },
    'demand.isListed': {
      label: 'It is told what burns',
      unit: 'yes-no',
      is: 'given(furnace.input) || count(gas.appliances) > 0',
      source: custom,
    },
    'demand.listed': {
      label: 'Something that burns is told; without an end where it is not',
      unit: '',
      is: 'choose(demand.isListed || given(gas.dayUsed), 0, unlimited)',
      within: ['0', 'unlimited'],
      source: custom,
    },
    'gas.daily': {
      label: 'Propane a day and night',
      unit: 'lb',
      is: 'needs(demand.daily / propane.heat, demand.listed)',
      source: propaneTables,
    },
    'trip.counted': {
      label: 'Days and nights it must last',
      noun: 'how long it must last',
      unit: '',
      is: 'choose(!given(trip.nights) && given(stay.days), stay.days / time.day, trip.nights)',
      source: balance,
    },
    'gas.needed': {
      label: 'Gas for all nights',
      unit: 'Btu',
      is: 'needs(demand.daily * trip.counted, demand.listed)',
      source: balance,
    },
    'gas.neededPounds': {
      label: 'Propane for all nights',
      unit: 'lb',
      is: 'gas.needed / propane.heat',
      source: propaneTables,
    },
    'gas.counted': {
      label: 'Propane on board, counted by its heat',
      unit: 'lb',
      is: 'energy.aboard / propane.heat',
      source: propaneTables,
    },
    'gas.hours': {
      label: 'Hours with everything burning at once',
      unit: 'h',
      is: 'choose(demand.atOnce > 0, energy.aboard / demand.atOnce, unlimited)',
      source: balance,
    },
    'gas.days': {
      label: 'Days and nights the gas lasts',
      unit: 'd',
      is: 'choose(demand.daily > 0, energy.aboard / demand.daily * time.day, unlimited)',
      source: balance,
    },
    'gas.isGone': {
      label: 'There is no gas aboard',
      unit: 'yes-no',
      is: 'gas.aboard <= 0',
      source: balance,
    },
  },
  limits: {
    gas: {
      label: 'Gas for the nights',
      short: 'the gas',
      supply: true,
      do: 'Have the cylinders filled, or carry one more.',
      near: 'A colder night takes more: know before you leave where a cylinder is filled near there.',
      used: 'gas.neededPounds',
      limit: 'gas.counted',
      margin: 'margin.gas',
      askedBy: ['trip.nights', 'stay.days'],
      source: balance,
    },
  },
  findings: {
    'gas-left': {
      // What is in a cylinder answers nothing before it is known what burns.
      settles: ['furnace.input', 'gas.appliances'],
      label: 'What is left',
      askedBy: [
        'cylinder.fill',
        'cylinder.waterCapacity',
        'cylinder.scaleWeight',
        'cylinder.tare',
        'tank.waterCapacity',
        'tank.gauge',
      ],
      stop: {
        when: 'gas.aboard < gas.least',
        wrong: 'There is as good as no gas left.',
        do: 'Have it filled before you rely on it.',
      },
      care: {
        when: 'demand.daily > energy.aboard',
        wrong: 'What is on board does not last one such day and night.',
        do: 'Have it filled today, or carry more.',
      },
      otherwise: 'There is gas for one such day and night at least.',
      open: {
        wrong: 'The cylinder may be empty.',
        do: 'Weigh the cylinder and take off the tare stamped on its collar.',
      },
      source: weighing,
    },
    'fill-untold': {
      label: 'How full the cylinder is',
      askedBy: ['trip.nights', 'furnace.input', 'gas.appliances', 'outside.temperature'],
      if: {
        when: 'assumed.cylinderFull',
        wrong: 'How full the cylinder is, is not known yet.',
        do: 'Weigh the cylinder: what it weighs above the tare stamped on its collar is gas.',
        proviso: 'the cylinder is full',
      },
      otherwise: 'How full the cylinder is was told, or decides nothing here.',
      source: weighing,
    },
  },
});
