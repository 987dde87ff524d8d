import { part } from '../../engine/define/topic';
import { house, manual } from '../../trade/bibliography/common';
import { alarmDates, datesFromMemory } from '../../trade/bibliography/gas';

const age = (label: string, ask: string, where: string) =>
  ({ kind: 'quantity', label, unit: 'yr', least: 0, most: 60, ask, where }) as const;

/** Cylinders, hoses and alarms carry dates, and are only good for so long. */
export const dates = part({
  facts: {
    'cylinder.age': age(
      'Years since the date on the cylinder’s collar',
      'How many years ago is the latest date stamped on the collar?',
      'stamped on the collar: month and year of make, or of the last requalification',
    ),
    'hose.age': age(
      'Age of the hose',
      'How old is the hose?',
      'printed along the hose, or on the crimp',
    ),
    'hose.sound': {
      kind: 'yes-no',
      label: 'Hose sound, and tight in the leak test',
      noun: 'whether the hose is sound and tight in the leak test',
      ask: 'Is the hose without cracks, and tight when brushed with leak solution?',
      where: 'look, bend it, brush it with solution; never test with a flame',
    },
    'alarm.gasAge': age(
      'Age of the gas alarm',
      'How old is the gas alarm?',
      'date on its back; some also print a replace-by date, which wins',
    ),
    'alarm.monoxideAge': age(
      'Age of the carbon monoxide alarm',
      'How old is the carbon monoxide alarm?',
      'date on its back; some also print a replace-by date, which wins',
    ),
  },
  parameters: {
    'cylinder.lookAt': {
      label: 'Age from which a cylinder’s date is looked into',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 10 }],
      source: datesFromMemory,
    },
    'cylinder.lifeMost': {
      label: 'Age beyond which no cylinder is filled without requalification',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 12 }],
      source: datesFromMemory,
    },
    'hose.life': {
      label: 'Age at which a hose is replaced',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [5, 15],
      source: house,
    },
    'alarm.gasLife': {
      label: 'Life of a gas alarm',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 5 }],
      source: alarmDates,
    },
    'alarm.monoxideLife': {
      label: 'Life of a carbon monoxide alarm',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 7 }],
      source: alarmDates,
    },
  },
  findings: {
    'cylinder-date': {
      label: 'Date of the cylinder',
      askedBy: ['cylinder.age'],
      stop: {
        when: {
          all: [
            { fact: 'cylinder.age', operator: 'greaterThan', value: { fact: 'cylinder.lifeMost' } },
          ],
        },
        wrong: 'The cylinder is past its date.',
        do: 'No filler may fill it. Have it requalified, or hand it in.',
      },
      care: {
        when: {
          all: [
            { fact: 'cylinder.age', operator: 'greaterThan', value: { fact: 'cylinder.lookAt' } },
          ],
        },
        wrong: 'The cylinder is at the age at which it must be requalified.',
        do: 'Show the collar to the filler before the trip.',
      },
      otherwise: 'The cylinder’s date is good.',
      open: { wrong: 'Read the dates on the collar.', do: 'The cylinder may be past them.' },
      source: datesFromMemory,
    },
    hose: {
      label: 'Hose and its date',
      askedBy: ['hose.age', 'hose.sound'],
      stop: {
        when: { all: [{ fact: 'hose.soundTold', operator: 'equal', value: 'no' }] },
        wrong: 'Shut the gas and replace the hose.',
        do: 'Cracked or leaking, it is not used again, nor taped.',
      },
      care: {
        when: {
          all: [{ fact: 'hose.ageTold', operator: 'greaterThan', value: { fact: 'hose.life' } }],
        },
        wrong: 'The hose is old.',
        do: 'Replace it, though it may still look well.',
      },
      otherwise: 'The hose is sound and not too old, as far as it is told.',
      open: { wrong: 'Look at the hose and brush it with leak solution before the gas is opened.' },
      source: manual,
    },
    alarms: {
      label: 'Gas and carbon monoxide alarms',
      askedBy: ['alarm.gasAge', 'alarm.monoxideAge'],
      stop: {
        when: {
          any: [
            { fact: 'alarm.gasTold', operator: 'greaterThan', value: { fact: 'alarm.gasLife' } },
            {
              fact: 'alarm.monoxideTold',
              operator: 'greaterThan',
              value: { fact: 'alarm.monoxideLife' },
            },
          ],
        },
        wrong: 'An alarm is past its date.',
        do: 'It may sleep through the gas it was made for. Replace it before anyone sleeps inside.',
      },
      otherwise:
        'The alarms are within their dates, as far as they are told; press their test buttons.',
      open: { wrong: 'Read the dates on the backs of both alarms before anyone sleeps inside.' },
      source: alarmDates,
    },
  },
  formulas: {
    'hose.soundTold': {
      label: 'Hose sound, as far as it is told',
      unit: 'yes-no',
      is: "!given(hose.sound) || hose.sound == 'yes'",
      source: manual,
    },
    'hose.ageTold': {
      label: 'Age of the hose, where it is told',
      unit: 'yr',
      is: 'choose(given(hose.age), hose.age, 0)',
      source: manual,
    },
    'alarm.gasTold': {
      label: 'Age of the gas alarm, where it is told',
      unit: 'yr',
      is: 'choose(given(alarm.gasAge), alarm.gasAge, 0)',
      source: alarmDates,
    },
    'alarm.monoxideTold': {
      label: 'Age of the carbon monoxide alarm, where it is told',
      unit: 'yr',
      is: 'choose(given(alarm.monoxideAge), alarm.monoxideAge, 0)',
      source: alarmDates,
    },
  },
});
