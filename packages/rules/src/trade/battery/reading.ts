import { part } from '../../engine/define/topic';
import {
  energyBalance,
  notAtRest,
  otherVoltages,
  restHours,
  restingVoltage,
  temperatureVoltage,
} from '../bibliography/battery';

const wide = (label: string, value: number, range: readonly [number, number]) => ({
  label,
  unit: 'V',
  values: [{ from: '2020-01-01', value }],
  range,
  source: notAtRest,
});

/**
 * What a voltage tells of the voltage at rest, for one twelve-volt block.
 *
 *     ── below ──┤ reading ├── above ──     not at rest, table, temperature: each widens it
 *       reading.low ……………… reading.high
 */
export const reading = part({
  facts: {
    'battery.voltage': {
      kind: 'quantity',
      label: 'Voltage read at the battery',
      noun: 'the voltage read',
      instead: 'Read the voltage at the battery once more',
      unit: 'V',
      least: 0,
      most: 65,
      ask: 'What voltage does a meter show across the whole bank?',
      where: 'a meter on the battery posts, not the panel’s lights',
    },
    'battery.reading': {
      kind: 'choice',
      label: 'State in which it was read',
      options: ['at-rest', 'charging', 'under-load'],
      ask: 'Was anything charging the battery or drawing from it when you read the voltage?',
      where: 'with converter, solar and engine off and nothing on, it rests',
    },
    'battery.rested': {
      kind: 'quantity',
      label: 'Time it had rested',
      unit: 'h',
      least: 0,
      most: 10000,
      ask: 'For how many hours had the battery been left alone?',
      where: 'since charger and loads were switched off',
    },
  },
  parameters: {
    'reading.charging': wide('How much too high a voltage under charge may read', 1.7, [1, 2.5]),
    'reading.loaded': wide('How much too low a voltage under load may read', 1.5, [0.3, 2]),
    'reading.unsettled': wide('How far off a voltage too little rested may be', 0.4, [0.2, 1]),
    'reading.temperature': {
      label: 'Temperature at which the tables hold',
      unit: '°F',
      values: [{ from: '2020-01-01', value: 80 }],
      source: restingVoltage,
    },
  },
  wordTables: {
    restNeeded: {
      label: 'Hours of rest before the voltage counts',
      valueUnit: 'h',
      values: { flooded: 6, agm: 6, gel: 6, lifepo4: 2 },
      source: restHours,
    },
    tableSpread: {
      label: 'How far makers’ tables lie apart, to either side',
      valueUnit: 'V',
      values: { flooded: 0, agm: 0.05, gel: 0.05, lifepo4: 0.1 },
      source: otherVoltages,
    },
    voltsPerDegree: {
      label: 'Largest printed correction for temperature',
      valueUnit: 'V/°F',
      values: { flooded: 0.0024, agm: 0.0024, gel: 0.0024, lifepo4: 0.001 },
      source: temperatureVoltage,
    },
  },
  formulas: {
    'reading.block': {
      label: 'Voltage of one twelve-volt block',
      noun: 'the voltage of one twelve-volt block',
      unit: 'V',
      is: 'battery.voltage / bank.blocks',
      source: energyBalance,
    },
    'reading.atRest': {
      label: 'The voltage was read at rest',
      unit: 'yes-no',
      is: "battery.reading == 'at-rest' && battery.rested >= rest.needed",
      source: restHours,
    },
    'rest.needed': {
      label: 'Hours of rest before its voltage counts',
      noun: 'the rest it needs',
      unit: 'h',
      is: 'pick(restNeeded, battery.chemistry)',
      source: restHours,
    },
    'reading.below': {
      label: 'How far the resting voltage may lie below the reading',
      noun: 'what it may be too high',
      unit: 'V',
      is: "choose(reading.atRest, 0, choose(battery.reading == 'charging', reading.charging, choose(battery.reading == 'under-load', 0, reading.unsettled)))",
      source: notAtRest,
    },
    'reading.above': {
      label: 'How far it may lie above the reading',
      noun: 'what it may be too low',
      unit: 'V',
      is: "choose(reading.atRest, 0, choose(battery.reading == 'charging', 0, choose(battery.reading == 'under-load', reading.loaded, reading.unsettled)))",
      source: notAtRest,
    },
    'reading.apart': {
      label: 'What tables and temperature leave open, to either side',
      noun: 'what tables and temperature leave open',
      unit: 'V',
      is: 'pick(tableSpread, battery.chemistry) + pick(voltsPerDegree, battery.chemistry) * max(battery.cells - reading.temperature, reading.temperature - battery.cells)',
      source: temperatureVoltage,
    },
    'reading.low': {
      label: 'Least resting voltage of a block',
      noun: 'the least resting voltage',
      unit: 'V',
      is: 'max(0, reading.block - reading.below - reading.apart)',
      source: notAtRest,
    },
    'reading.high': {
      label: 'Most resting voltage of a block',
      noun: 'the most resting voltage',
      unit: 'V',
      is: 'reading.block + reading.above + reading.apart',
      source: notAtRest,
    },
  },
  findings: {
    'reading-at-rest': {
      label: 'Reading at rest',
      askedBy: ['battery.voltage'],
      care: {
        when: '!reading.atRest',
        wrong: 'The voltage was not surely read at rest, so it gives only a wide range.',
        do: 'Switch charger and loads off, let it rest, and read it again.',
      },
      otherwise: 'The voltage was read at rest.',
      open: {
        wrong: 'It is not sure that the voltage was read at rest, so it gives only a wide range.',
        do: 'Ask what was charging or drawing, and for how long it had rested.',
      },
      source: restHours,
    },
  },
});
