import { part } from '../../engine/define/topic';
import { dayDrawn } from '../../trade/battery/day-drawn';
import { custom } from '../../trade/bibliography/common';
import { balance } from '../../trade/bibliography/off-grid-stay';

/**
 * Battery against sun, and gas, over the stay.
 *
 *     Ah │╲  ╱╲  ╱╲              each day ends a little lower: battery.loss
 *        │ ╲╱  ╲╱  ╲╱╲
 *        ├───────────────────── stop line
 */
export const energy = part({
  facts: {
    'battery.dayDrawn': dayDrawn.facts['battery.dayDrawn'],
  },
  formulas: {
    'battery.loadsTold': {
      label: 'It is told what runs on the battery',
      unit: 'yes-no',
      is: 'count(loads.dc) + count(loads.ac) > 0 || given(furnace.blowerCurrent)',
      source: custom,
    },
    'blower.isUntold': {
      label: 'A furnace is told of, and not what its blower draws',
      unit: 'yes-no',
      is: 'given(furnace.input) && !given(furnace.blowerCurrent)',
      source: custom,
    },
    'battery.told': {
      label: 'A battery is told of',
      unit: 'yes-no',
      is: 'given(battery.capacity) || given(battery.dayDrawn) || battery.loadsTold',
      source: custom,
    },
    'battery.spare': {
      label: 'Charge above the stop line at the start',
      noun: 'the charge above the stop line',
      unit: 'Ah',
      is: 'max(0, start.charge - stop.charge)',
      source: balance,
    },
    'battery.broughtBack': {
      label: 'What sun and chargers store in a day',
      noun: 'what sun and chargers store',
      unit: 'Ah',
      is: 'choose(given(solar.power) || count(charging.spells) > 0, day.offered * pick(chargeEfficiency, battery.chemistry), 0)',
      within: ['0', 'unlimited'],
      source: balance,
    },
    'battery.lossByDay': {
      label: 'Less in the battery after each day, by what a day takes',
      unit: 'Ah',
      is: 'max(0, battery.dayDrawn - battery.broughtBack)',
      source: balance,
    },
    'battery.lossByLoads': {
      label: 'Less in the battery after each day, by what runs on it',
      unit: 'Ah',
      is: 'choose(day.loss > day.tolerance, day.loss, 0)',
      source: balance,
    },
    // What a monitor has counted stays counted when somebody names one lamp of it: the larger counts.
    'battery.loss': {
      label: 'Less in the battery after each day',
      noun: 'what the battery loses a day',
      unit: 'Ah',
      is: 'choose(battery.loadsTold, choose(known(battery.dayDrawn), max(battery.lossByLoads, battery.lossByDay), battery.lossByLoads), battery.lossByDay)',
      source: balance,
    },
    'battery.forStay': {
      label: 'Charge the stay takes',
      noun: 'the charge the stay takes',
      unit: 'Ah',
      is: 'battery.loss * stay.counted / time.day',
      source: balance,
    },
    'battery.lasts': {
      label: 'Days until the battery is at its stop line, as far as can be foretold',
      noun: 'the battery',
      unit: 'd',
      is: 'choose(battery.loadsTold && day.deepest > battery.usable, between(0, time.day), choose(battery.told, choose(battery.loss > 0, min(battery.spare / battery.loss * time.day, stay.foretold), stay.foretold), unlimited))',
      source: balance,
    },
    'gas.told': {
      label: 'Gas is told of',
      unit: 'yes-no',
      is: 'cylinder.isTold || tank.isTold || demand.isListed || given(gas.dayUsed)',
      source: custom,
    },
    'gas.perDay': {
      label: 'Propane a day and night',
      noun: 'the propane a day',
      unit: 'lb',
      is: 'gas.daily',
      source: balance,
    },
    'gas.forStay': {
      label: 'Propane for the stay',
      noun: 'the propane for the stay',
      unit: 'lb',
      is: 'choose(given(trip.nights) || given(stay.days), gas.neededPounds, gas.perDay * stay.counted / time.day)',
      within: ['0', 'unlimited'],
      source: balance,
    },
    'gas.lasts': {
      label: 'Days until the gas runs out, as far as can be foretold',
      noun: 'the gas',
      unit: 'd',
      is: 'choose(gas.told, choose(gas.perDay > 0, min(gas.counted / gas.perDay * time.day, stay.foretold), stay.foretold), unlimited)',
      source: balance,
    },
  },
  findings: {
    'blower-untold': {
      label: 'What the furnace takes from the battery',
      askedBy: ['furnace.input', 'furnace.hours'],
      if: {
        when: 'blower.isUntold',
        wrong: 'What the furnace’s blower draws from the battery is not known yet.',
        because: 'Heat, gas and battery end together: without its blower the furnace shuts off.',
        do: 'Read the blower’s amperes on the furnace’s plate.',
        proviso: 'the battery turns the furnace’s blower as well',
      },
      otherwise: 'The blower is counted with the battery.',
      source: balance,
    },
  },
  limits: {
    battery: {
      label: 'Battery over the stay',
      short: 'the battery',
      supply: true,
      do: 'Move into the sun, charge a while every day, or carry a second battery.',
      near: 'Charge a little every day, and watch the monitor.',
      used: 'battery.forStay',
      limit: 'battery.spare',
      margin: 'margin.battery',
      askedBy: [
        'battery.capacity',
        'battery.dayDrawn',
        'loads.dc',
        'loads.ac',
        'furnace.blowerCurrent',
      ],
      source: balance,
    },
    night: {
      label: 'Battery over one night',
      short: 'the battery by the end of the night',
      supply: true,
      do: 'Carry a second battery: more sun does not help a short night.',
      near: 'One gray morning ends it: charge before dark, or carry a second battery.',
      used: 'day.deepest',
      limit: 'battery.usable',
      margin: 'margin.battery',
      askedBy: ['loads.dc', 'loads.ac', 'furnace.blowerCurrent'],
      source: balance,
    },
    gas: {
      label: 'Gas',
      short: 'the gas',
      supply: true,
      do: 'Have the cylinders filled, or carry one more; never turn the heat down.',
      near: 'A colder night takes more: know before you leave where a cylinder is filled near there.',
      used: 'gas.forStay',
      limit: 'gas.counted',
      margin: 'margin.gas',
      askedBy: [
        'trip.nights',
        'cylinder.fill',
        'cylinder.waterCapacity',
        'cylinder.scaleWeight',
        'tank.waterCapacity',
        'tank.gauge',
        'furnace.input',
        'gas.appliances',
        'gas.dayUsed',
      ],
      source: balance,
    },
  },
});
