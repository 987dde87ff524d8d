import { part } from '../../engine/define/topic';
import { energyBalance, selfDischarge } from '../../trade/bibliography/battery';

/**
 * How long it stands before it is at the stop line: by what draws on it all the time and by itself.
 *
 *     start ──╲______ draw × hours + share a month ______── stop line
 */
export const storage = part({
  facts: {
    'storage.draw': {
      kind: 'quantity',
      label: 'What draws on it while it stands',
      noun: 'what draws on it while it stands',
      unit: 'A',
      least: 0,
      most: 20,
      ask: 'How many amperes flow while everything is switched off?',
      where:
        'a meter in the minus cable; alarms, radio and control boards; none with the switch off',
    },
    'storage.days': {
      kind: 'quantity',
      label: 'Days it is to stand',
      noun: 'how long it is to stand',
      unit: 'd',
      least: 0,
      most: 1000,
      ask: 'For how many days does the battery stand without charging?',
      where: 'told by the owner',
    },
  },
  parameters: {
    'storage.month': {
      label: 'One month, for the self-discharge',
      unit: 'd',
      values: [{ from: '2020-01-01', value: 30 }],
      source: selfDischarge,
    },
  },
  wordTables: {
    selfLeast: {
      label: 'Self-discharge a month, at the least',
      valueUnit: '%',
      values: { flooded: 5, agm: 1, gel: 1, lifepo4: 1 },
      source: selfDischarge,
    },
    selfMost: {
      label: 'Self-discharge a month, at the most',
      valueUnit: '%',
      values: { flooded: 15, agm: 3, gel: 3, lifepo4: 3 },
      source: selfDischarge,
    },
  },
  formulas: {
    'storage.current': {
      label: 'What it loses while it stands',
      noun: 'what it loses while it stands',
      unit: 'A',
      is: 'storage.draw + bank.capacity * between(pick(selfLeast, battery.chemistry), pick(selfMost, battery.chemistry)) / storage.month',
      source: selfDischarge,
    },
    'storage.lasts': {
      label: 'Days until the stop line while it stands',
      noun: 'how long it stands',
      unit: 'd',
      is: 'needs(max(0, start.charge - stop.charge) / storage.current, storage.draw)',
      source: energyBalance,
    },
  },
  limits: {
    storage: {
      label: 'Time in storage',
      short: 'the time it stands',
      do: 'Take its cables off or switch the battery off, and charge it before then.',
      near: 'Come by once with a charger, or take its cables off.',
      used: 'storage.days',
      limit: 'storage.lasts',
      margin: 'margin.battery',
      askedBy: ['storage.days'],
      source: energyBalance,
    },
  },
});
