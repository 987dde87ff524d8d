import { part } from '../../engine/define/topic';
import { circuits, labelVolts, restingVoltage } from '../bibliography/battery';
import { custom, house } from '../bibliography/common';
import { vapor } from '../gas/vapor';

/**
 * The bank: series adds volts, parallel adds ampere-hours.
 *
 *     ┌─[6 V 225 Ah]─[6 V 225 Ah]─┐     12 V
 *     │                           │
 *     └─[6 V 225 Ah]─[6 V 225 Ah]─┘     450 Ah: two strings, never four
 */
export const bank = part({
  facts: {
    'outside.temperature': vapor.facts['outside.temperature'],
    'battery.chemistry': {
      kind: 'choice',
      label: 'Chemistry',
      noun: 'the battery’s chemistry',
      options: ['flooded', 'agm', 'gel', 'lifepo4'],
      ask: 'What kind of battery do you have: flooded with caps, AGM, gel, or LiFePO₄?',
      where: 'label on the battery',
      means: 'Caps that open mean flooded; the label names the others.',
    },
    'battery.capacity': {
      kind: 'quantity',
      label: 'Capacity of one battery',
      noun: 'the capacity of one battery',
      unit: 'Ah',
      least: 1,
      most: 2000,
      ask: 'How many ampere-hours does one battery hold?',
      where: 'its label, at the 20-hour rate',
    },
    'battery.energy': {
      kind: 'quantity',
      label: 'Energy of one battery, where its label states that',
      noun: 'the energy of one battery',
      unit: 'Wh',
      least: 10,
      most: 50_000,
      exact: true,
      ask: 'How many watt-hours does one battery hold?',
      where:
        'label on the battery; many of LiFePO₄ state watt-hours beside or instead of ampere-hours',
    },
    'battery.volts': {
      kind: 'quantity',
      label: 'Voltage of one battery',
      unit: 'V',
      least: 6,
      most: 52,
      ask: 'Is each battery a 6-volt or a 12-volt one?',
      where: 'label on the battery',
      silent: { value: 12, says: 'Each battery is a 12-volt one.', source: custom, quiet: true },
    },
    'battery.health': {
      kind: 'quantity',
      label: 'Share of its capacity still there',
      unit: '%',
      least: 10,
      most: 100,
      ask: 'How much of its first capacity does the battery still have?',
      where: 'a capacity test at a shop; an old battery has less than the label says',
      silent: {
        value: 100,
        says: 'The battery still has the capacity on its label.',
        source: custom,
        quiet: true,
      },
    },
    'battery.temperature': {
      kind: 'quantity',
      label: 'Temperature of the cells',
      noun: 'the temperature of the cells',
      unit: '°F',
      least: -60,
      most: 150,
      ask: 'How cold are the battery’s cells?',
      where: 'a thermometer at the battery; the cells lag behind the air by hours',
      silent: { value: 80, says: 'The cells are at about 80 °F.', source: custom, quiet: true },
    },
    'bank.series': {
      kind: 'quantity',
      label: 'Batteries in a string',
      noun: 'the number of batteries in a string',
      unit: '',
      least: 1,
      most: 16,
      counted: true,
      ask: 'How many batteries stand one behind the other, plus to minus?',
      where: 'the cables between the batteries',
      silent: { value: 1, says: 'No batteries are in series.', source: custom, quiet: true },
    },
    'bank.parallel': {
      kind: 'quantity',
      label: 'Strings side by side',
      noun: 'the number of strings side by side',
      unit: '',
      least: 1,
      most: 16,
      counted: true,
      ask: 'How many such strings stand side by side, plus to plus?',
      where: 'the cables between the batteries',
      silent: { value: 1, says: 'No strings are side by side.', source: custom, quiet: true },
    },
    'system.volts': {
      kind: 'quantity',
      label: 'Voltage of the trailer',
      unit: 'V',
      least: 6,
      most: 52,
      ask: 'Is the trailer wired for 12 volts or for another voltage?',
      where: 'plate on the converter or the fuse panel',
    },
    'bank.alike': {
      kind: 'yes-no',
      label: 'All batteries alike',
      noun: 'whether all batteries are alike',
      ask: 'Are all batteries of one kind, size and age?',
      where: 'the labels and their date codes',
    },
  },
  parameters: {
    'block.volts': {
      label: 'Nominal voltage that the tables are made for',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 12 }],
      source: restingVoltage,
    },
    'block.slack': {
      label: 'What a nominal voltage may be above a whole number of half blocks',
      unit: '',
      values: [{ from: '2020-01-01', value: 0.3 }],
      range: [0.05, 0.4],
      source: house,
    },
  },
  wordTables: {
    labelVolts: {
      label: 'Voltage of a twelve-volt block that its label’s watt-hours are reckoned with',
      valueUnit: 'V',
      values: { flooded: 12, agm: 12, gel: 12, lifepo4: 12.8 },
      source: labelVolts,
    },
  },
  formulas: {
    'battery.cells': {
      label: 'Temperature of the cells that counts',
      noun: 'the temperature of the cells',
      unit: '°F',
      is: 'choose(given(battery.temperature) || !given(outside.temperature), battery.temperature, between(min(outside.temperature, battery.temperature), max(outside.temperature, battery.temperature)))',
      source: custom,
    },
    'battery.ampHours': {
      label: 'Capacity of one battery, in ampere-hours',
      noun: 'the capacity of one battery',
      unit: 'Ah',
      is: 'choose(given(battery.energy) && !given(battery.capacity), battery.energy / (whole(2 * battery.volts / block.volts + block.slack) / 2 * pick(labelVolts, battery.chemistry)), battery.capacity)',
      source: labelVolts,
    },
    'bank.volts': {
      label: 'Voltage of the bank',
      noun: 'the bank’s voltage',
      unit: 'V',
      is: 'battery.volts * bank.series',
      source: circuits,
    },
    'bank.blocks': {
      label: 'Twelve-volt blocks in a string',
      unit: '',
      is: 'whole(2 * bank.volts / block.volts + block.slack) / 2',
      source: circuits,
    },
    'system.blocks': {
      label: 'Twelve-volt blocks that the trailer is wired for',
      unit: '',
      is: 'whole(2 * system.volts / block.volts + block.slack) / 2',
      source: circuits,
    },
    'bank.isHalf': {
      label: 'Half-voltage batteries side by side',
      unit: 'yes-no',
      is: 'given(battery.volts) && (!given(system.volts) || system.blocks >= 1) && bank.parallel > 1 && bank.blocks < 1',
      source: circuits,
    },
    'bank.rated': {
      label: 'Capacity of the bank as rated',
      noun: 'the bank’s rated capacity',
      unit: 'Ah',
      is: 'battery.ampHours * bank.parallel',
      source: circuits,
    },
    'bank.capacity': {
      label: 'Capacity of the bank',
      noun: 'the bank’s capacity',
      unit: 'Ah',
      is: 'bank.rated * battery.health',
      source: circuits,
    },
    'bank.energy': {
      label: 'Energy of the bank on paper',
      unit: 'Wh',
      is: 'bank.capacity * bank.volts',
      source: circuits,
    },
  },
  findings: {
    'bank-voltage': {
      label: 'Voltage of the bank',
      askedBy: ['system.volts'],
      stop: {
        when: 'bank.blocks != system.blocks',
        wrong: 'The bank does not have the voltage that the trailer is wired for.',
        because: 'Too much destroys what is connected, too little runs nothing.',
        do: 'Do not connect it.',
      },
      otherwise: 'The bank has the voltage that the trailer is wired for.',
      open: {
        wrong: 'The bank may not have the voltage that the trailer is wired for.',
        do: 'Find out first.',
      },
      source: circuits,
    },
    'half-voltage': {
      label: 'Half-voltage batteries side by side',
      askedBy: ['battery.volts', 'bank.parallel'],
      stop: {
        when: 'bank.isHalf',
        wrong: 'Batteries of {battery.volts} side by side never make a bank of {block.volts}.',
        because: 'Side by side they add ampere-hours; only one behind the other do they add volts.',
        do: 'Cable two of them one behind the other, plus to minus.',
      },
      otherwise: 'The batteries are not cabled at half the voltage.',
      open: {
        wrong: 'The bank may have half the voltage that it should.',
        do: 'Find out how its batteries are cabled before anything is connected.',
      },
      source: circuits,
    },
    'bank-alike': {
      label: 'Batteries alike',
      askedBy: ['bank.alike'],
      care: {
        when: '!bank.alike',
        wrong: 'Batteries of different kind, size or age drag one another down.',
        because: 'The weakest sets what the bank gives.',
        do: 'Replace them together.',
      },
      otherwise: 'All batteries are of one kind, size and age.',
      source: custom,
    },
  },
});
