import type { RowsFact } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { circuits, dataPlate, definition } from '../bibliography/battery';
import { custom, house } from '../bibliography/common';

const clock = { unit: 'h', least: 0, most: 24, required: false } as const;

/** What every list of things that run has beside its size: hours a day, or from when to when. */
const times = {
  hours: { ...clock, label: 'Hours' },
  from: { ...clock, label: 'From' },
  to: { ...clock, label: 'To' },
  duty: { label: 'Duty', unit: '%', least: 0, most: 100, required: false },
} as const;

const power = { label: 'Power', unit: 'W', least: 0, most: 20000, required: true } as const;

const runs = (label: string, ask: string, where: string, says: string) =>
  ({
    kind: 'rows',
    label,
    ask,
    where,
    columns: { power, ...times },
    silent: { value: 'none', says, source: custom, quiet: true },
  }) satisfies RowsFact;

/**
 * The share of the hour from `at` in which a row runs. From 22 to 6 goes over midnight: it is the
 * whole hour less what lies between 6 and 22. Without from and to its hours are spread over the
 * day; without hours it runs for the share
 * `untold`: a load all day, a charger not at all, so that nothing untold makes the day look better.
 */
export const shareOf = (list: string, at: string, untold: '0' | '1' = '1'): string => {
  const common = (from: string, to: string) =>
    `max(0, min(${at} + time.hour, ${to}) - max(${at}, ${from}))`;
  const [from, to, hours] = [`${list}.from`, `${list}.to`, `${list}.hours`];
  const between = `choose(${from} <= ${to}, ${common(from, to)}, time.hour - ${common(to, from)})`;
  return `choose(given(${from}, ${to}), ${between} / time.hour, choose(given(${hours}), min(1, ${hours} / time.day), ${untold}))`;
};

export const dutyOf = (list: string): string => `choose(given(${list}.duty), ${list}.duty, 1)`;

/**
 * What draws on the battery over a day.
 *
 *     DC loads ─────────────────────────► battery
 *     AC loads ─► ÷ efficiency, + idle ─►
 */
export const loads = part({
  facts: {
    'loads.dc': runs(
      'Loads on 12 volts',
      'What runs straight from the battery, how many watts has each, and for how long?',
      'data plates; watts are volts times amperes',
      'No loads on 12 volts are counted.',
    ),
    'loads.ac': runs(
      'Loads on the inverter',
      'What runs on the inverter, how many watts has each, and for how long?',
      'data plates of the appliances',
      'No loads on the inverter are counted.',
    ),
    'inverter.efficiency': {
      kind: 'quantity',
      label: 'Efficiency of the inverter',
      unit: '%',
      least: 30,
      most: 100,
      ask: 'How efficient is the inverter?',
      where: 'its data sheet',
      silent: { value: 85, says: 'The inverter is 85 % efficient.', source: house, quiet: true },
    },
    'inverter.idle': {
      kind: 'quantity',
      label: 'Idle draw of the inverter',
      unit: 'W',
      least: 0,
      most: 500,
      ask: 'What does the inverter draw when it is on and nothing runs on it?',
      where: 'its data sheet',
      silent: { value: 15, says: 'The inverter draws 15 W by itself.', source: house, quiet: true },
    },
    'inverter.hours': {
      kind: 'quantity',
      label: 'Hours the inverter is on',
      unit: 'h',
      least: 0,
      most: 24,
      ask: 'For how many hours a day is the inverter switched on?',
      where: 'told by the owner',
      silent: {
        value: 24,
        says: 'An inverter in use is left on all day.',
        source: house,
        quiet: true,
      },
    },
    'battery.mostCurrent': {
      kind: 'quantity',
      label: 'Largest current that one battery gives',
      noun: 'the largest current of one battery',
      unit: 'A',
      least: 0,
      most: 2000,
      exact: true,
      ask: 'How many amperes may be drawn from one battery at the most?',
      where: 'the battery’s data sheet: the figure that lasts, not that of seconds',
    },
    'inverter.surge': {
      kind: 'quantity',
      label: 'Surge rating of the inverter',
      noun: 'what the inverter gives for a start',
      unit: 'W',
      least: 50,
      most: 60000,
      exact: true,
      ask: 'How many watts may the inverter give for the seconds of a start?',
      where: 'its data sheet: surge or peak, beside the continuous figure',
    },
    'inverter.starting': {
      kind: 'quantity',
      label: 'Largest start on the inverter',
      noun: 'the largest start on the inverter',
      unit: 'W',
      least: 0,
      most: 60000,
      ask: 'Of what has a motor or compressor on the inverter, how many watts does the largest take to start?',
      where: 'data sheet of the appliance; a motor takes three to six times its running watts',
    },
    'inverter.power': {
      kind: 'quantity',
      label: 'Rating of the inverter',
      noun: 'the rating of the inverter',
      unit: 'W',
      least: 50,
      most: 20000,
      ask: 'How many watts may the inverter give without a pause?',
      where: 'its data plate: the continuous figure, not the surge',
    },
  },
  parameters: {
    'time.hour': {
      label: 'One hour',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 1 }],
      source: definition,
    },
    'time.day': {
      label: 'One day',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 24 }],
      source: definition,
    },
    'clock.start': {
      label: 'Hour at which the reckoned day begins, so that the night comes first',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 18 }],
      range: [0, 23],
      source: house,
    },
  },
  formulas: {
    'inverter.draw': {
      label: 'Idle draw of the inverter, over the day',
      unit: 'W',
      is: 'choose(count(loads.ac) > 0 || given(inverter.idle), inverter.idle * inverter.hours / time.day, 0)',
      within: ['0', 'unlimited'],
      source: dataPlate,
    },
    'inverter.current': {
      label: 'Current that the inverter may draw',
      noun: 'the current that the inverter may draw',
      unit: 'A',
      is: 'choose(given(inverter.power), inverter.power, inverter.most) / inverter.efficiency / bank.volts',
      source: circuits,
    },
    'bank.mostCurrent': {
      label: 'Largest current that the bank gives',
      noun: 'the largest current that the bank gives',
      unit: 'A',
      is: 'battery.mostCurrent * bank.parallel',
      source: dataPlate,
    },
    'bank.mostUntold': {
      label: 'Nobody said what current the battery gives',
      unit: 'yes-no',
      is: '!given(battery.mostCurrent)',
      source: dataPlate,
    },
    'inverter.atStart': {
      label: 'On the inverter while the largest of it starts',
      noun: 'what is on the inverter during a start',
      unit: 'W',
      is: 'between(max(inverter.most, inverter.starting), inverter.most + inverter.starting)',
      source: circuits,
    },
    'inverter.startUntold': {
      label: 'Loads on the inverter are told, and not what they take to start',
      unit: 'yes-no',
      is: 'count(loads.ac) > 0 && !given(inverter.starting)',
      source: dataPlate,
    },
    'inverter.most': {
      label: 'Everything on the inverter at once',
      noun: 'everything on the inverter at once',
      unit: 'W',
      is: 'mostOver(hours, hours.acAtOnce)',
      source: circuits,
    },
  },
  findings: {
    'start-untold': {
      label: 'What starts on the inverter',
      askedBy: ['inverter.power'],
      if: {
        when: 'inverter.startUntold',
        wrong: 'What the loads on the inverter take to start is not known yet.',
        because:
          'A motor takes several times its running watts for a moment, and the inverter trips.',
        do: 'Read the starting watts of whatever has a motor, and the inverter’s surge rating.',
        proviso: 'what starts on the inverter stays within its surge rating',
      },
      otherwise: 'It is told what starts on the inverter, or nothing is on it.',
      source: dataPlate,
    },
    'current-untold': {
      label: 'Current that the battery’s maker allows',
      askedBy: ['inverter.power'],
      if: {
        when: 'bank.mostUntold',
        wrong: 'What current the battery’s maker allows is not known yet.',
        do: 'Read the largest lasting current in the battery’s data sheet.',
        proviso: 'the battery’s maker allows {inverter.current} to be drawn',
      },
      otherwise: 'It is told what current the battery gives.',
      source: dataPlate,
    },
  },
  limits: {
    'inverter-start': {
      label: 'Start on the inverter',
      short: 'the inverter’s surge rating',
      do: 'Start it on an inverter with a larger surge rating, or run it on shore power.',
      near: 'Start it with everything else off.',
      exceeded: true,
      used: 'inverter.atStart',
      limit: 'inverter.surge',
      askedBy: ['inverter.starting', 'inverter.surge'],
      source: dataPlate,
    },
    'discharge-current': {
      label: 'Current drawn from the bank',
      short: 'the current that the batteries give',
      do: 'Fit a smaller inverter, or a second battery beside the first.',
      near: 'Run nothing more on the inverter.',
      exceeded: true,
      used: 'inverter.current',
      limit: 'bank.mostCurrent',
      askedBy: ['battery.mostCurrent'],
      source: dataPlate,
    },
    inverter: {
      label: 'Inverter',
      short: 'the inverter’s rating',
      do: 'Run less on the inverter, or use shore power.',
      near: 'Run nothing more on the inverter.',
      exceeded: true,
      used: 'inverter.most',
      limit: 'inverter.power',
      askedBy: ['inverter.power'],
      source: dataPlate,
    },
  },
});
