import { part } from '../../engine/define/topic';
import { custom, house, dataPlate as plate } from '../bibliography/common';
import { circuits, lastingLoads } from '../bibliography/power';

/**
 * What runs at once, a leg. One that is too full trips although the other is empty.
 *
 *     leg one ├─ air conditioner ─┼─ water heater ─┼ elsewhere ┤ ≤ 50 A
 *     leg two ├─ microwave ─┤                                    ≤ 50 A
 *
 * Of the two the fuller counts; it holds at least half of everything, however the rest is spread.
 */
export const loads = part({
  facts: {
    'shore.appliances': {
      kind: 'rows',
      label: 'What runs at the same time',
      ask: 'What is to run at the same time, how many watts each, for how long, and on which half of the feed?',
      where: 'data plates; the breaker panel tells which half; one of 240 V takes from both',
      columns: {
        power: { label: 'Power', unit: 'W', least: 0, most: 12_000, required: true },
        hours: { label: 'Hours', unit: 'h', least: 0, most: 24, required: false },
        leg: { label: 'Leg', unit: '', least: 1, most: 2, required: false },
      },
      silent: {
        value: 'none',
        says: 'Nothing runs.',
        source: custom,
        quiet: true,
      },
    },
    'airConditioner.current': {
      kind: 'quantity',
      label: 'Current of one air conditioner or heat pump',
      unit: 'A',
      least: 1,
      most: 40,
      exact: true,
      ask: 'How many amperes does one air conditioner or heat pump take while it runs?',
      where: 'its data plate: rated load of the compressor and the fan together',
    },
  },
  parameters: {
    'lasting.from': {
      label: 'From here on a load is a lasting one',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 3 }],
      source: lastingLoads,
    },
  },
  formulas: {
    'airConditioner.counted': {
      label: 'One air conditioner, where its amperes are told and nothing else that runs',
      noun: 'one air conditioner',
      unit: 'A',
      is: 'choose(given(airConditioner.current) && count(shore.appliances) == 0, airConditioner.current, 0)',
      within: ['0', 'unlimited'],
      source: custom,
    },
    'load.current': {
      label: 'Everything that runs, both legs',
      noun: 'everything that runs',
      unit: 'A',
      is: 'sum(shore.appliances.power) / volts.nominal + airConditioner.counted + supply.elsewhere',
      source: circuits,
    },
    'legOne.current': {
      label: 'Leg one',
      unit: 'A',
      is: 'choose(supply.twoLegs, sum(shore.appliances.power * choose(given(shore.appliances.leg), choose(shore.appliances.leg == 1, 1, 0), between(0, 1))) / volts.nominal + airConditioner.counted + supply.elsewhere, load.current)',
      source: circuits,
    },
    'legTwo.current': {
      label: 'Leg two',
      unit: 'A',
      is: 'choose(supply.twoLegs, sum(shore.appliances.power * choose(given(shore.appliances.leg), choose(shore.appliances.leg == 2, 1, 0), between(0, 1))) / volts.nominal, 0)',
      source: circuits,
    },
    'leg.fuller': {
      label: 'The fuller leg',
      noun: 'the fuller half of the feed',
      unit: 'A',
      is: 'min(load.current, max(legOne.current, legTwo.current, load.current / 2))',
      source: circuits,
    },
    'load.counted': {
      label: 'Everything, lasting loads at 125 %',
      unit: 'A',
      is: 'sum(shore.appliances.power * choose(given(shore.appliances.hours), choose(shore.appliances.hours >= lasting.from, 1 / lasting.share, 1), 1 / lasting.share)) / volts.nominal + (airConditioner.counted + supply.elsewhere) / lasting.share',
      within: [
        'sum(shore.appliances.power) / volts.nominal + airConditioner.counted',
        '(sum(shore.appliances.power) / volts.nominal + airConditioner.counted + supply.elsewhere) / lasting.share',
      ],
      source: lastingLoads,
    },
    'legOne.counted': {
      label: 'Leg one, lasting loads at 125 %',
      unit: 'A',
      is: 'choose(supply.twoLegs, sum(shore.appliances.power * choose(given(shore.appliances.leg), choose(shore.appliances.leg == 1, 1, 0), between(0, 1)) * choose(given(shore.appliances.hours), choose(shore.appliances.hours >= lasting.from, 1 / lasting.share, 1), 1 / lasting.share)) / volts.nominal + (airConditioner.counted + supply.elsewhere) / lasting.share, load.counted)',
      within: [
        '0',
        '(sum(shore.appliances.power) / volts.nominal + airConditioner.counted + supply.elsewhere) / lasting.share',
      ],
      source: lastingLoads,
    },
    'legTwo.counted': {
      label: 'Leg two, lasting loads at 125 %',
      unit: 'A',
      is: 'choose(supply.twoLegs, sum(shore.appliances.power * choose(given(shore.appliances.leg), choose(shore.appliances.leg == 2, 1, 0), between(0, 1)) * choose(given(shore.appliances.hours), choose(shore.appliances.hours >= lasting.from, 1 / lasting.share, 1), 1 / lasting.share)) / volts.nominal, 0)',
      within: ['0', 'sum(shore.appliances.power) / volts.nominal / lasting.share'],
      source: lastingLoads,
    },
    'leg.counted': {
      label: 'The fuller leg, lasting loads at 125 %',
      noun: 'the fuller half of the feed with lasting loads at 125 %',
      unit: 'A',
      is: 'min(load.counted, max(legOne.counted, legTwo.counted, load.counted / 2))',
      source: lastingLoads,
    },
    'leg.left': {
      label: 'Left on the fuller leg, for a short load',
      unit: 'A',
      is: 'min(leg.rating - leg.fuller, leg.breakers - leg.counted)',
      source: lastingLoads,
    },
    'leg.isOverdrawn': {
      label: 'More is drawn on the fuller leg than it carries',
      unit: 'yes-no',
      is: 'leg.left < 0',
      source: lastingLoads,
    },
    'leg.tooMuch': {
      label: 'Drawn on the fuller leg beyond what it carries',
      unit: 'A',
      is: 'max(0, -leg.left)',
      source: lastingLoads,
    },
    'airConditioner.most': {
      label: 'Air conditioners that may run all afternoon, with nothing else',
      unit: '',
      is: 'whole(min(leg.rating, leg.breakers * lasting.share) / airConditioner.current) * choose(supply.twoLegs, 2, 1)',
      source: lastingLoads,
    },
    'assumed.lasting': {
      label: 'Of something nobody said for how long it runs',
      unit: 'yes-no',
      is: 'sum(choose(given(shore.appliances.hours), 0, 1)) > 0',
      source: house,
    },
  },
  limits: {
    leg: {
      label: 'The fuller leg',
      short: 'what is drawn at once',
      do: 'Switch off what draws most before the breaker is set again.',
      near: 'Switch nothing more on.',
      used: 'leg.fuller',
      limit: 'leg.rating',
      askedBy: ['shore.appliances', 'airConditioner.current'],
      source: plate,
    },
    'lasting-load': {
      label: 'The fuller leg, lasting loads at 125 %',
      short: 'what is drawn for hours plus a quarter',
      do: 'For hours run less: the water heater on gas, or one large thing at a time.',
      near: 'Switch nothing more on while that runs.',
      used: 'leg.counted',
      limit: 'leg.breakers',
      askedBy: ['shore.appliances', 'airConditioner.current'],
      source: lastingLoads,
    },
  },
});
