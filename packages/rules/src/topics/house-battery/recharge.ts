import { part } from '../../engine/define/topic';
import {
  absorptionTime,
  chargeHabits,
  chargeVolts,
  circuits,
  dataPlate,
  mathematics,
  taper,
} from '../../trade/bibliography/battery';
import { custom } from '../../trade/bibliography/common';

/**
 * How long a charger takes to full: the bulk at its whole current, then the taper.
 *
 *     A │────────────╮
 *       │             ╲
 *       │              ╲___
 *       └── bulk ──────┴ taper ┴─ charge.full
 */
export const recharge = part({
  facts: {
    'charger.current': {
      kind: 'quantity',
      label: 'Current of the charger',
      noun: 'the charger’s current',
      unit: 'A',
      least: 0,
      most: 1000,
      ask: 'How many amperes does the charger or converter give?',
      where: 'its data plate',
    },
    'charger.volts': {
      kind: 'quantity',
      label: 'Voltage that the charger goes up to',
      noun: 'the charger’s voltage',
      unit: 'V',
      least: 0,
      most: 80,
      ask: 'Up to what voltage does the charger go?',
      where: 'its settings, or a meter on the battery while it charges',
    },
    'charger.hours': {
      kind: 'quantity',
      label: 'Hours there are to charge',
      noun: 'the time there is to charge',
      unit: 'h',
      least: 0,
      most: 1000,
      ask: 'For how many hours can the battery charge?',
      where: 'told by the owner',
    },
    'battery.mostChargeCurrent': {
      kind: 'quantity',
      label: 'Largest charging current of one battery',
      noun: 'the largest charging current of one battery',
      unit: 'A',
      least: 0,
      most: 1000,
      ask: 'With how many amperes may one battery be charged at the most?',
      where: 'the battery’s data sheet',
    },
  },
  wordTables: {
    chargeVoltsMost: {
      label: 'Most that a twelve-volt block is charged with, outside an equalizing charge',
      valueUnit: 'V',
      values: { flooded: 15, agm: 14.8, gel: 14.4, lifepo4: 14.6 },
      source: chargeVolts,
    },
  },
  findings: {
    'charger-too-low': {
      label: 'A charger below the bank',
      askedBy: ['charger.volts'],
      askedWhen: 'bank.isCabled',
      stop: {
        when: 'charger.volts <= bank.volts',
        wrong:
          'The charger goes up to {charger.volts}, and the bank stands at {bank.volts}: nothing flows into it.',
        do: 'Take a charger made for such a bank, or look once more at how the batteries are cabled.',
      },
      otherwise: 'The charger comes up to more than the bank’s voltage.',
      open: {
        wrong: 'Whether the charger comes up to the bank’s voltage is not known yet.',
        do: 'Look how the batteries are cabled: one behind the other the volts add up.',
      },
      source: circuits,
    },
    'charge-current-untold': {
      label: 'Charging current that the maker allows',
      askedBy: ['charger.current'],
      if: {
        when: 'recharge.isLarge',
        wrong:
          'The charger gives more than such a battery usually takes, and what its maker allows is not known yet.',
        do: 'Read the largest charging current in the battery’s data sheet.',
        proviso: 'the battery’s maker allows {charger.current} of charging current',
      },
      otherwise:
        'The charger gives no more than such a battery usually takes, or its maker’s limit is told.',
      source: dataPlate,
    },
  },
  parameters: {
    'absorption.from': {
      label: 'What is missing where the hours of absorption are counted from',
      unit: '%',
      values: [{ from: '2020-01-01', value: 50 }],
      source: absorptionTime,
    },
    'absorption.least': {
      label: 'Hours from half to full, lead, at the least',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 8 }],
      source: absorptionTime,
    },
    'absorption.most': {
      label: 'Hours from half to full, lead, at the most',
      unit: 'h',
      values: [{ from: '2020-01-01', value: 12 }],
      source: absorptionTime,
    },
    'charge.full': {
      label: 'State of charge that counts as full',
      unit: '%',
      values: [{ from: '2020-01-01', value: 97 }],
      range: [96, 99],
      source: { class: 'house', cite: 'Choice of the dealer' },
    },
  },
  tables: {
    naturalLog: {
      label: 'Natural logarithm, for the time constants of the taper',
      keyUnit: '1',
      valueUnit: '1',
      rows: [1, 1.1, 1.25, 1.5, 1.75, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20].map(
        (x) => [x, Math.round(Math.log(x) * 1e6) / 1e6] as const,
      ),
      source: mathematics,
    },
  },
  formulas: {
    'recharge.from': {
      label: 'Charge from which it is charged',
      noun: 'the charge it starts from',
      unit: 'Ah',
      is: 'choose(start.isRead, start.charge, stop.charge)',
      source: custom,
    },
    'recharge.current': {
      label: 'Current that the bank stores',
      noun: 'the current that is stored',
      unit: 'A',
      is: 'min(charger.current, choose(known(battery.mostChargeCurrent), battery.mostChargeCurrent * bank.parallel, acceptance.current)) * pick(chargeEfficiency, battery.chemistry)',
      within: ['0', 'charger.current'],
      source: chargeHabits,
    },
    'recharge.bulk': {
      label: 'Hours at the whole current',
      noun: 'the time at the whole current',
      unit: 'h',
      is: 'max(0, taper.charge - recharge.from) / recharge.current',
      source: taper,
    },
    'recharge.taper': {
      label: 'Hours of absorption, the current falling',
      noun: 'the time of absorption',
      unit: 'h',
      is: 'taper.gap / recharge.current * lookup(naturalLog, min(battery.available - recharge.from, taper.gap) / (battery.available * (1 - charge.full)))',
      source: taper,
    },
    'recharge.byCurrent': {
      label: 'Hours to full by what the charger gives',
      noun: 'the time to full by the current',
      unit: 'h',
      is: 'recharge.bulk + recharge.taper',
      source: taper,
    },
    'recharge.absorption': {
      label: 'Hours to full that a lead battery takes whatever the charger',
      noun: 'the time that absorption takes',
      unit: 'h',
      is: "choose(battery.chemistry == 'lifepo4', 0, between(absorption.least, absorption.most) * min(1, max(0, 1 - recharge.from / battery.available) / absorption.from))",
      source: absorptionTime,
    },
    'recharge.hours': {
      label: 'Hours to full',
      noun: 'the time to full',
      unit: 'h',
      is: 'max(recharge.byCurrent, recharge.absorption)',
      source: absorptionTime,
    },
    'recharge.isLarge': {
      label: 'A charger larger than usual, and no limit told',
      unit: 'yes-no',
      is: '!given(battery.mostChargeCurrent) && charger.current > acceptance.current',
      source: dataPlate,
    },
    'bank.isCabled': {
      label: 'It was told how many batteries stand one behind the other',
      unit: 'yes-no',
      is: 'given(bank.series)',
      source: circuits,
    },
    'charge.voltsMost': {
      label: 'Most that the bank is charged with',
      noun: 'the most that the bank is charged with',
      unit: 'V',
      is: "choose(given(charge.equalize) && charge.equalize == 'yes' && battery.chemistry == 'flooded', unlimited, bank.blocks * pick(chargeVoltsMost, battery.chemistry))",
      within: ['bank.blocks * pick(chargeVoltsMost, battery.chemistry)', 'unlimited'],
      source: chargeVolts,
    },
    'recharge.most': {
      label: 'Largest charging current of the bank',
      noun: 'the largest charging current of the bank',
      unit: 'A',
      is: 'battery.mostChargeCurrent * bank.parallel',
      source: dataPlate,
    },
  },
  limits: {
    'charge-voltage': {
      label: 'Charging voltage',
      short: 'the charging voltage',
      do: 'Stop the charge; set the charger for that battery, or replace it.',
      near: 'Set the charger a little lower.',
      used: 'charger.volts',
      limit: 'charge.voltsMost',
      askedBy: ['charger.volts'],
      source: chargeVolts,
    },
    recharge: {
      label: 'Time to recharge',
      short: 'the time to recharge',
      do: 'Let the generator do the first hours, and the sun or shore power the slow rest.',
      near: 'Let it charge to the end; sun does the slow rest.',
      used: 'recharge.hours',
      limit: 'charger.hours',
      askedBy: ['charger.hours'],
      source: taper,
    },
    'charge-current': {
      label: 'Charging current',
      short: 'the charging current',
      do: 'Set the charger lower, or take one that the battery’s maker allows.',
      near: 'Set the charger no higher.',
      used: 'charger.current',
      limit: 'recharge.most',
      askedBy: ['battery.mostChargeCurrent'],
      source: dataPlate,
    },
  },
});
