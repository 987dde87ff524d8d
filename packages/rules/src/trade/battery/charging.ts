import { part } from '../../engine/define/topic';
import { bringingSun } from '../../engine/formula/sun';
import { chargeHabits, dataPlate, mathematics, sunShape, taper } from '../bibliography/battery';
import { custom, house } from '../bibliography/common';

const clock = { unit: 'h', least: 0, most: 24, required: false } as const;

/**
 * What comes back: sun by its height, and spells of converter, generator or DC-DC charging; into a
 * battery that takes the whole current up to where absorption begins, and ever less from there.
 *
 *     A │ ────────╮
 *       │          ╲__
 *       └────────────────── taperFrom ── full
 */
const bySun = part({
  facts: {
    'solar.power': {
      kind: 'quantity',
      label: 'Solar panels',
      unit: 'W',
      least: 0,
      most: 10000,
      ask: 'How many watts of solar panels are there?',
      where: 'labels on the panels',
      silent: { value: 0, says: 'No solar panels are counted.', source: custom, quiet: true },
    },
    'solar.peakSunHours': {
      kind: 'quantity',
      label: 'Peak-sun hours a day',
      unit: 'h',
      least: 0,
      most: 12,
      ask: 'How many peak-sun hours does the place have at that time of the year?',
      where: 'a solar map; open summer sky has 5 to 7, winter 2 to 3, woods next to none',
    },
    'place.latitude': {
      kind: 'quantity',
      label: 'Latitude',
      unit: '°',
      least: -66,
      most: 66,
      ask: 'How far north does the trailer stand?',
      where: 'a map',
      silent: { value: 40, says: 'The place lies at 40° north.', source: house, quiet: true },
    },
    'charging.spells': {
      kind: 'rows',
      label: 'Spells of charging',
      ask: 'When does a converter, a generator or the tow vehicle charge the battery, and with how many amperes?',
      where: 'plate on the converter or DC-DC charger',
      columns: {
        current: { label: 'Current', unit: 'A', least: 0, most: 1000, required: true },
        hours: { ...clock, label: 'Hours' },
        from: { ...clock, label: 'From' },
        to: { ...clock, label: 'To' },
        duty: { label: 'Duty', unit: '%', least: 0, most: 100, required: false },
      },
      silent: { value: 'none', says: 'Nothing else charges it.', source: custom, quiet: true },
    },
  },
  parameters: {
    'solar.derate': {
      label: 'What a panel yields of its rating, all losses taken',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.75 }],
      range: [0.4, 0.95],
      source: house,
    },
    'solar.blockVolts': {
      label: 'Voltage at which the sun charges a twelve-volt block',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 13.6 }],
      range: [12, 14.6],
      source: house,
    },
    'decay.base': {
      label: 'What is left after one time constant, 1/e',
      unit: '',
      values: [{ from: '2020-01-01', value: 0.36787944117144233 }],
      source: mathematics,
    },
  },
  wordTables: {
    chargeEfficiency: {
      label: 'What stays of the ampere-hours put in',
      valueUnit: '%',
      values: { flooded: 85, agm: 90, gel: 88, lifepo4: 98 },
      source: chargeHabits,
    },
    acceptance: {
      label: 'Largest charging current a battery takes, of its capacity',
      valueUnit: '1/h',
      values: { flooded: 0.2, agm: 0.3, gel: 0.2, lifepo4: 0.5 },
      source: chargeHabits,
    },
    taperFrom: {
      label: 'State of charge at which the current begins to taper',
      valueUnit: '%',
      values: { flooded: 80, agm: 80, gel: 80, lifepo4: 95 },
      source: chargeHabits,
    },
  },
  formulas: {
    'solar.daily': {
      label: 'What the sun brings in a day',
      unit: 'Ah',
      is: 'choose(solar.power > 0, solar.power * solar.peakSunHours * solar.derate / (solar.blockVolts * bank.blocks), 0)',
      source: house,
    },
    'solar.heights': {
      label: 'Heights of the sun added up',
      unit: '',
      is: 'totalOver(sun, sun.height)',
      source: sunShape,
    },
    'taper.charge': {
      label: 'Charge at which the current begins to taper',
      noun: 'the charge at which the current tapers',
      unit: 'Ah',
      is: 'battery.available * pick(taperFrom, battery.chemistry)',
      source: taper,
    },
    'taper.gap': {
      label: 'What is missing from there to full',
      noun: 'what is missing from there to full',
      unit: 'Ah',
      is: 'battery.available * (1 - pick(taperFrom, battery.chemistry))',
      source: taper,
    },
    'acceptance.current': {
      label: 'Most that the bank takes',
      unit: 'A',
      is: 'bank.capacity * pick(acceptance, battery.chemistry)',
      source: dataPlate,
    },
  },
  simulations: {
    sun: {
      label: 'The sun over a day',
      steps: 24,
      states: {},
      values: {
        'sun.height': {
          label: 'Sine of the sun’s height, at the half hour',
          unit: '',
          is: 'sunHeight(place.latitude, asOf.day, sun.step + 1 / 2)',
          source: sunShape,
        },
      },
      source: sunShape,
    },
  },
});

export const charging = bringingSun(bySun);
