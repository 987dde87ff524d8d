import { part } from '../../engine/define/topic';
import { dutyOf, shareOf } from './loads';
import {
  chargeHabits,
  circuits,
  custom,
  energyBalance,
  house,
  peukertExponents,
  peukertLaw,
  sunShape,
  taper,
} from './sources';

const running = (list: string): string =>
  `sum(${list}.power * choose(${shareOf(list, 'hours.clock')} > 0, 1, 0))`;
const onAverage = (list: string, size: string): string =>
  `sum(${list}.${size} * ${shareOf(list, 'hours.clock')} * ${dutyOf(list)})`;

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
      silent: { value: 20, says: 'The capacity is rated over 20 hours.', source: custom },
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
      values: { flooded: 1.1, agm: 1.1, gel: 1.1, lifepo4: 1 },
      source: peukertExponents,
    },
    peukertMost: {
      label: 'Largest Peukert exponent',
      valueUnit: '1',
      values: { flooded: 1.3, agm: 1.3, gel: 1.3, lifepo4: 1.05 },
      source: peukertExponents,
    },
  },
  formulas: {
    'peukert.least': {
      label: 'Peukert exponent, at the least',
      unit: '',
      is: 'choose(known(battery.peukert), battery.peukert, pick(peukertLeast, battery.chemistry))',
      source: peukertExponents,
    },
    'peukert.most': {
      label: 'Peukert exponent, at the most',
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
      unit: 'Ah',
      is: 'choose(start.isRead, battery.available * charge.read, battery.available)',
      source: energyBalance,
    },
    'assumed.full': {
      label: 'Nobody read how full it is',
      unit: 'yes-no',
      is: '!start.isRead && (count(loads.dc) + count(loads.ac) > 0 || furnace.blowerCurrent > 0)',
      source: custom,
    },
    'day.loadEnergy': {
      label: 'Energy the day takes from the battery',
      unit: 'Wh',
      is: 'totalOver(hours, hours.energy)',
      source: circuits,
    },
    'day.ampHours': {
      label: 'Ampere-hours the day takes',
      unit: 'Ah',
      is: 'totalOver(hours, hours.drawn)',
      source: circuits,
    },
    'day.offered': {
      label: 'Ampere-hours that sun and chargers offer',
      unit: 'Ah',
      is: 'totalOver(hours, hours.offered)',
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
      unit: 'Ah',
      is: 'leastOver(hours, hours.charge)',
      source: energyBalance,
    },
    'day.end': {
      label: 'Charge at the end of the day',
      unit: 'Ah',
      is: 'lastOf(hours, hours.charge)',
      source: energyBalance,
    },
    'day.deepest': {
      label: 'Below full at the lowest',
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
      label: 'Such days until the stop line; without end where none is lost',
      unit: 'd',
      is: 'choose(day.loss > day.tolerance, max(0, start.charge - stop.charge) / day.loss * time.day, unlimited)',
      source: energyBalance,
    },
  },
  simulations: {
    hours: {
      label: 'A day hour by hour',
      steps: 24,
      states: {
        'hours.charge': {
          label: 'Charge in the battery (below zero: so much is short)',
          unit: 'Ah',
          start: 'start.charge',
          next: 'hours.topped - hours.taken',
          source: energyBalance,
        },
      },
      values: {
        'hours.clock': {
          label: 'Hour of the day',
          unit: 'h',
          is: 'choose(hours.step * time.hour + clock.start >= time.day, hours.step * time.hour + clock.start - time.day, hours.step * time.hour + clock.start)',
          source: house,
        },
        'hours.sinceStart': {
          label: 'Time since the evening',
          unit: 'h',
          is: 'hours.step * time.hour',
          source: house,
        },
        'hours.ac': {
          label: 'Loads on the inverter',
          unit: 'W',
          is: onAverage('loads.ac', 'power'),
          source: circuits,
        },
        'hours.acAtOnce': {
          label: 'Loads on the inverter, all at once',
          unit: 'W',
          is: running('loads.ac'),
          source: circuits,
        },
        'hours.blower': {
          label: 'Furnace blower',
          unit: 'W',
          is: 'furnace.blowerCurrent * furnace.duty * bank.volts * max(0, min(1, (furnace.hours - hours.sinceStart) / time.hour))',
          source: circuits,
        },
        'hours.power': {
          label: 'Drawn from the battery',
          unit: 'W',
          is: `${onAverage('loads.dc', 'power')} + hours.ac / inverter.efficiency + inverter.draw + hours.blower`,
          source: circuits,
        },
        'hours.drain': {
          label: 'Drawn from the battery',
          unit: 'A',
          is: 'hours.power / bank.volts',
          source: circuits,
        },
        'hours.energy': {
          label: 'Energy drawn in the hour',
          unit: 'Wh',
          is: 'hours.power * time.hour',
          source: circuits,
        },
        'hours.drawn': {
          label: 'Ampere-hours drawn in the hour',
          unit: 'Ah',
          is: 'hours.drain * time.hour',
          source: circuits,
        },
        'hours.atOnce': {
          label: 'Drawn while all that runs in the hour runs at once',
          unit: 'A',
          is: `(${running('loads.dc')} + hours.acAtOnce / inverter.efficiency + inverter.draw) / bank.volts + choose(hours.blower > 0, furnace.blowerCurrent, 0)`,
          source: circuits,
        },
        'hours.solar': {
          label: 'Sun',
          unit: 'A',
          is: 'choose(solar.daily > 0, solar.daily * sunHeight(place.latitude, asOf.day, hours.clock / time.hour + 1 / 2) / (solar.heights * time.hour), 0)',
          source: sunShape,
        },
        'hours.charger': {
          label: 'Converter, generator or tow vehicle',
          unit: 'A',
          is: onAverage('charging.spells', 'current'),
          source: circuits,
        },
        'hours.offered': {
          label: 'Ampere-hours that sun and chargers offer in the hour',
          unit: 'Ah',
          is: '(hours.solar + hours.charger) * time.hour',
          source: circuits,
        },
        'hours.net': {
          label: 'Into the battery; below zero out of it',
          unit: 'A',
          is: 'hours.solar + hours.charger - hours.drain',
          source: energyBalance,
        },
        'hours.gain': {
          label: 'Offered to the battery',
          unit: 'Ah',
          is: 'min(max(0, hours.net) * pick(chargeEfficiency, battery.chemistry), acceptance.current) * time.hour',
          source: chargeHabits,
        },
        'hours.topped': {
          label: 'Charge once it has taken what it can',
          unit: 'Ah',
          is: 'min(hours.charge + hours.gain, battery.available - min(battery.available - hours.charge, taper.gap) * power(decay.base, max(0, hours.gain - max(0, taper.charge - hours.charge)) / taper.gap))',
          source: taper,
        },
        'hours.accepted': {
          label: 'Stored',
          unit: 'Ah',
          is: 'min(hours.gain, max(0, taper.charge - hours.charge)) + min(battery.available - hours.charge, taper.gap) * (1 - power(decay.base, max(0, hours.gain - max(0, taper.charge - hours.charge)) / taper.gap))',
          source: taper,
        },
        'hours.taken': {
          label: 'Charge taken, heavy currents weighed',
          unit: 'Ah',
          is: 'max(0, -hours.net) * time.hour * between(power(max(1, max(0, -hours.net) * battery.ratedHours / bank.capacity), peukert.least - 1), power(max(1, hours.atOnce * battery.ratedHours / bank.capacity), peukert.most - 1))',
          source: peukertLaw,
        },
      },
      source: energyBalance,
    },
  },
  limits: {
    day: {
      label: 'The day’s charge',
      short: 'the day’s charge',
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
        when: {
          all: [{ fact: 'day.end', operator: 'lessThan', value: { fact: 'day.backAt' } }],
        },
        says: 'The day ends with less than it began with: it will do for some days and then run down. Draw less, charge longer or add sun.',
      },
      otherwise: 'The day gives back what it takes.',
      unsure: 'The day may end with less than it began with: watch it over the first nights.',
      source: energyBalance,
    },
  },
});
