import { part } from '../../engine/define/topic';
import { loads } from '../../trade/battery/loads';
import { charge, coldCells } from '../../trade/bibliography/theft-deterrence';

/** How long a tracker tells where it is: sleeping current and reports out of one small battery. */
export const tracker = part({
  facts: {
    'tracker.battery': {
      kind: 'quantity',
      label: 'Battery of the tracker',
      unit: 'mAh',
      least: 10,
      most: 200_000,
      ask: 'How many milliampere-hours has the tracker’s battery?',
      where: 'its data sheet',
    },
    'tracker.sleeping': {
      kind: 'quantity',
      label: 'Current asleep',
      unit: 'mA',
      least: 0,
      most: 500,
      ask: 'How many milliamperes does the tracker take asleep?',
      where: 'its data sheet',
    },
    'tracker.report': {
      kind: 'quantity',
      label: 'Charge for one report',
      unit: 'mAh',
      least: 0,
      most: 100,
      ask: 'What does one report take?',
      where: 'its data sheet, or the current of a fix times its minute',
    },
    'tracker.reports': {
      kind: 'quantity',
      label: 'Reports a day',
      unit: '',
      least: 0,
      most: 1440,
      ask: 'How often a day does the tracker report?',
      where: 'its settings',
    },
  },
  parameters: {
    'time.day': loads.parameters['time.day'],
    'tracker.usable': {
      label: 'Part of a small battery to be counted on',
      unit: '%',
      values: [{ from: '2020-01-01', value: 80 }],
      range: [40, 100],
      source: coldCells,
    },
  },
  formulas: {
    'tracker.average': {
      label: 'What the tracker takes on average',
      unit: 'mA',
      is: 'tracker.sleeping + tracker.reports * tracker.report / time.day',
      source: charge,
    },
    'tracker.lasts': {
      label: 'How long the tracker lasts',
      noun: 'how long the tracker lasts',
      unit: 'd',
      is: 'choose(tracker.average > 0, tracker.battery * tracker.usable / tracker.average, unlimited)',
      source: charge,
    },
  },
  findings: {
    'tracker-lasts': {
      label: 'Battery of the tracker',
      askedBy: ['tracker.battery'],
      care: {
        when: 'tracker.lasts < parked.days',
        wrong:
          'The tracker is empty after {tracker.lasts}, and you come back only after {parked.days}.',
        do: 'Let it report less often, give it a larger battery, or have someone charge it.',
      },
      otherwise: 'The tracker lasts until someone comes back.',
      open: {
        wrong: 'The tracker may be empty before anyone comes back.',
        do: 'Read its data sheet and settings.',
      },
      source: charge,
    },
  },
});
