import { part } from '../../engine/define/topic';
import { bringingSun } from '../../engine/formula/sun';
import {
  chargeHabits,
  circuits,
  energyBalance,
  peukertLaw,
  sunShape,
  taper,
} from '../bibliography/battery';
import { house } from '../bibliography/common';
import { dutyOf, shareOf } from './loads';

const running = (list: string): string =>
  `sum(${list}.power * choose(${shareOf(list, 'hours.clock')} > 0, 1, 0))`;
const onAverage = (list: string, size: string, untold?: '0'): string =>
  `sum(${list}.${size} * ${shareOf(list, 'hours.clock', untold)} * ${dutyOf(list)})`;

/**
 * The twenty-four hours that a day is reckoned by, the evening first.
 *
 *     loads ─► drain ─┐                     ┌─► taken, by Peukert ─► charge
 *     sun, charger ───┴─► net, in or out ───┤
 *                                           └─► gain, by taper ────► charge
 */
const bySun = part({
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
          is: 'furnace.blowerCurrent * furnace.runs * bank.volts * max(0, min(1, (furnace.on - hours.sinceStart) / time.hour))',
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
          is: onAverage('charging.spells', 'current', '0'),
          within: ['0', 'sum(charging.spells.current)'],
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
});

export const hours = bringingSun(bySun);
