import { part } from '../../engine/define/topic';
import {
  circuits,
  energyBalance,
  peukertExponents,
  peukertLaw,
  taper,
} from '../bibliography/battery';
import { custom, house } from '../bibliography/common';

/**
 * A day hour by hour, from evening to evening.
 *
 *     Ah │╲                    ____ full
 *        │ ╲___night          ╱
 *        │      ╲____  ______╱ sun, spells of charging
 *        │           ╲╱ day.lowest
 *        ├─────────────────────────── stop.charge
 *
 * Within an hour currents are even. A heavy current takes more than its ampere-hours: at the least
 * as if the hour's draw were spread over it, at the most as if all that runs ran at once.
 */
export const day = part({
  facts: {
    'battery.peukert': {
      kind: 'quantity',
      label: 'Peukert exponent',
      noun: 'the Peukert exponent',
      unit: '',
      least: 1,
      most: 1.6,
      ask: 'What Peukert exponent does the maker give?',
      where: 'the battery’s data sheet; few print it',
    },
    'battery.ratedHours': {
      kind: 'quantity',
      label: 'Hours over which the capacity is rated',
      unit: 'h',
      least: 1,
      most: 120,
      ask: 'Over how many hours is the capacity rated?',
      where: 'beside the ampere-hours on the label: C20 means twenty hours',
      silent: {
        value: 20,
        says: 'The capacity is rated over 20 hours.',
        source: custom,
        quiet: true,
      },
    },
  },
  parameters: {
    'day.slack': {
      label: 'Share of the capacity that a day may leave missing, since the last bit is slow',
      unit: '%',
      values: [{ from: '2020-01-01', value: 2 }],
      range: [0, 5],
      source: house,
    },
  },
  wordTables: {
    peukertLeast: {
      label: 'Least Peukert exponent',
      valueUnit: '1',
      values: { flooded: 1.2, agm: 1.05, gel: 1.1, lifepo4: 1 },
      source: peukertExponents,
    },
    peukertMost: {
      label: 'Largest Peukert exponent',
      valueUnit: '1',
      values: { flooded: 1.5, agm: 1.2, gel: 1.3, lifepo4: 1.05 },
      source: peukertExponents,
    },
  },
  formulas: {
    'peukert.least': {
      label: 'Peukert exponent, at the least',
      noun: 'the least Peukert exponent',
      unit: '',
      is: 'choose(known(battery.peukert), battery.peukert, pick(peukertLeast, battery.chemistry))',
      source: peukertExponents,
    },
    'peukert.most': {
      label: 'Peukert exponent, at the most',
      noun: 'the largest Peukert exponent',
      unit: '',
      is: 'choose(known(battery.peukert), battery.peukert, pick(peukertMost, battery.chemistry))',
      source: peukertExponents,
    },
    'start.isRead': {
      label: 'It was read how full it is',
      unit: 'yes-no',
      is: 'given(battery.voltage) || given(monitor.stateOfCharge)',
      source: custom,
    },
    'start.charge': {
      label: 'Charge at the start',
      noun: 'the charge at the start',
      unit: 'Ah',
      is: 'choose(start.isRead, battery.available * charge.read, battery.available)',
      source: energyBalance,
    },
    'day.isAsked': {
      label: 'Something is told that draws or charges over the day',
      unit: 'yes-no',
      is: 'count(loads.dc) + count(loads.ac) + count(charging.spells) > 0 || given(furnace.blowerCurrent) || given(solar.power) || given(inverter.idle)',
      source: custom,
    },
    'day.isDrawn': {
      label: 'Something is told that draws over the day',
      unit: 'yes-no',
      is: 'count(loads.dc) + count(loads.ac) > 0 || given(furnace.blowerCurrent) || given(inverter.idle)',
      source: custom,
    },
    'day.loaded': {
      label: 'What a day takes is told at all; without an end where it is not',
      unit: '',
      is: 'choose(day.isDrawn, 0, unlimited)',
      source: custom,
    },
    'day.listed': {
      label: 'A day is told at all; without an end where it is not',
      unit: '',
      is: 'choose(day.isAsked, 0, unlimited)',
      source: custom,
    },
    'day.loadEnergy': {
      label: 'Energy the day takes from the battery',
      unit: 'Wh',
      is: 'needs(totalOver(hours, hours.energy), day.loaded)',
      source: circuits,
    },
    'day.ampHours': {
      label: 'Ampere-hours the day takes',
      unit: 'Ah',
      is: 'needs(totalOver(hours, hours.drawn), day.loaded)',
      source: circuits,
    },
    'day.offered': {
      label: 'Ampere-hours that sun and chargers offer',
      unit: 'Ah',
      is: 'needs(totalOver(hours, hours.offered), day.listed)',
      source: circuits,
    },
    'day.accepted': {
      label: 'Ampere-hours stored, of what is left of them beside the loads',
      unit: 'Ah',
      is: 'totalOver(hours, hours.accepted)',
      source: taper,
    },
    'day.taken': {
      label: 'Charge taken from the battery, heavy currents weighed',
      unit: 'Ah',
      is: 'totalOver(hours, hours.taken)',
      source: peukertLaw,
    },
    'day.lowest': {
      label: 'Lowest charge of the day',
      noun: 'the lowest charge of the day',
      unit: 'Ah',
      is: 'leastOver(hours, hours.charge)',
      source: energyBalance,
    },
    'day.end': {
      label: 'Charge at the end of the day',
      noun: 'the charge at the end of the day',
      unit: 'Ah',
      is: 'lastOf(hours, hours.charge)',
      source: energyBalance,
    },
    'day.deepest': {
      label: 'Below full at the lowest',
      noun: 'what is missing from full at the lowest',
      unit: 'Ah',
      is: 'battery.available - day.lowest',
      source: energyBalance,
    },
    'day.loss': {
      label: 'Less at the end of the day than at its start',
      unit: 'Ah',
      is: 'start.charge - day.end',
      source: energyBalance,
    },
    'day.tolerance': {
      label: 'Loss too small to count',
      unit: 'Ah',
      is: 'battery.available * day.slack',
      source: house,
    },
    'day.backAt': {
      label: 'Charge from which the day counts as given back',
      unit: 'Ah',
      is: 'start.charge - day.tolerance',
      source: house,
    },
    'battery.days': {
      label: 'Such days until the stop line',
      unit: 'd',
      is: 'choose(day.loss > day.tolerance, max(0, start.charge - stop.charge) / day.loss * time.day, unlimited)',
      source: energyBalance,
    },
  },
  limits: {
    day: {
      label: 'The day’s charge',
      short: 'the day’s charge',
      supply: true,
      do: 'Switch off what keeps nobody warm or well, charge more, or carry a second battery.',
      near: 'Charge a little every day, and watch the monitor.',
      used: 'day.deepest',
      limit: 'battery.usable',
      margin: 'margin.battery',
      askedBy: ['loads.dc', 'loads.ac', 'furnace.blowerCurrent'],
      source: energyBalance,
    },
  },
  findings: {
    'day-balance': {
      label: 'Balance of the day',
      askedBy: ['solar.power', 'charging.spells'],
      care: {
        when: 'day.end < day.backAt',
        wrong: 'The day ends with less than it began with.',
        because: 'It does for some days and then runs down.',
        do: 'Charge longer or add sun; first switch off what keeps no one warm or well.',
      },
      otherwise: 'The day gives back what it takes.',
      open: {
        wrong: 'The day may end with less than it began with.',
        do: 'Watch it over the first nights.',
      },
      source: energyBalance,
    },
  },
});
