import { part } from '../../engine/define/topic';
import { circuits, depthAllowed, peukertLaw } from '../../trade/bibliography/battery';

/**
 * One steady load from the charge as it is to the stop line, by Peukert's law.
 *
 *     rated hours H at C/H: the whole capacity; at ten times that current, far less than a tenth
 */
export const steady = part({
  facts: {
    'steady.power': {
      kind: 'quantity',
      label: 'One steady load',
      noun: 'the steady load',
      unit: 'W',
      least: 0,
      most: 20000,
      ask: 'How many watts does the one thing draw that you ask about?',
      where: 'its data plate',
    },
    'steady.onInverter': {
      kind: 'yes-no',
      label: 'It runs on the inverter',
      noun: 'whether it runs on the inverter',
      ask: 'Does the new part plug in, so that it runs on the inverter?',
      where: 'its plug',
      silent: {
        value: 'no',
        says: 'The steady load runs on battery voltage.',
        source: circuits,
        quiet: true,
      },
    },
    'steady.hours': {
      kind: 'quantity',
      label: 'Hours it is to run',
      noun: 'the time it is to run',
      unit: 'h',
      least: 0,
      most: 1000,
      ask: 'For how many hours is that one thing to run?',
      where: 'told by the owner',
    },
  },
  formulas: {
    'day.isSunny': {
      label: 'Sun or a charger is told',
      unit: 'yes-no',
      is: 'given(solar.power) || count(charging.spells) > 0',
      source: circuits,
    },
    'monitor.isTold': {
      label: 'A percentage was read, and no voltage',
      unit: 'yes-no',
      is: 'given(monitor.stateOfCharge) && !given(battery.voltage)',
      source: circuits,
    },
    'wire.isTold': {
      label: 'Current and length of the wire are told',
      unit: 'yes-no',
      is: 'given(wire.length, wire.current)',
      source: circuits,
    },
    'steady.current': {
      label: 'Current of the steady load',
      noun: 'the current of the steady load',
      unit: 'A',
      is: "choose(steady.onInverter == 'yes', steady.power / inverter.efficiency, steady.power) / bank.volts",
      source: circuits,
    },
    'steady.stress': {
      label: 'How much more it takes than its ampere-hours',
      noun: 'what a heavy current takes beyond its ampere-hours',
      unit: '',
      is: 'between(power(max(1, steady.current * battery.ratedHours / bank.capacity), peukert.least - 1), power(max(1, steady.current * battery.ratedHours / bank.capacity), peukert.most - 1))',
      source: peukertLaw,
    },
    'steady.hoursToEmpty': {
      label: 'Hours from full to empty at this load',
      unit: 'h',
      is: 'needs(battery.available / (steady.current * steady.stress), steady.power)',
      source: peukertLaw,
    },
    'steady.hoursToStop': {
      label: 'Hours to the stop line at this load',
      noun: 'the time to the stop line',
      unit: 'h',
      is: 'needs(max(0, start.charge - stop.charge) / (steady.current * steady.stress), steady.power)',
      source: depthAllowed,
    },
  },
  limits: {
    'steady-run': {
      label: 'Run of the steady load',
      short: 'the time it is to run',
      do: 'Run it for less time, or carry a bigger bank; heat with gas.',
      near: 'Switch it off a little before that.',
      used: 'steady.hours',
      limit: 'steady.hoursToStop',
      margin: 'margin.battery',
      askedBy: ['steady.hours'],
      source: peukertLaw,
    },
  },
});
