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
    'cylinder.dateKind': {
      kind: 'choice',
      label: 'What that date is',
      noun: 'what the latest date on the collar is',
      options: ['made', 'requalified', 'requalified-s', 'requalified-e'],
      ask: 'Is that the date of its making, or of a requalification, and does an S or an E follow it?',
      where: 'the letter behind the latest date on the collar; none on one never requalified',
    },
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
    'cylinder.notice': {
      label: 'How long before its end a cylinder’s date is looked into',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 1 }],
      range: [0, 3],
      source: house,
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
  wordTables: {
    cylinderLife: {
      label: 'Years a cylinder may be filled after the latest date on its collar',
      valueUnit: 'yr',
      values: { made: 12, requalified: 12, 'requalified-s': 7, 'requalified-e': 5 },
      source: datesFromMemory,
    },
  },
  findings: {
    'cylinder-date': {
      label: 'Date of the cylinder',
      askedBy: ['cylinder.age', 'cylinder.dateKind'],
      stop: {
        when: 'cylinder.age > cylinder.life',
        wrong: 'The cylinder is past its date.',
        because: 'No filler may fill it.',
        do: 'Have it requalified, or hand it in.',
        proviso: 'the date on its collar is still good: read whether a letter follows it',
      },
      stopOpen: 'if',
      care: {
        when: 'cylinder.age > cylinder.lookAt',
        wrong: 'The cylinder is about to pass its date.',
        do: 'Show the collar to the filler before the trip.',
      },
      otherwise: 'The cylinder’s date is good.',
      source: datesFromMemory,
    },
    hose: {
      label: 'Hose and its date',
      askedBy: [
        'hose.age',
        'hose.sound',
        'appliance.inlet',
        'appliance.ownRegulator',
        'supply.point',
      ],
      stop: {
        when: 'hose.isUnsound',
        wrong: 'Shut the gas and replace the hose.',
        because: 'Cracked or leaking, it is not used again, nor taped.',
      },
      if: {
        when: 'hose.isUntold',
        wrong: 'Nobody has looked at the hose.',
        do: 'Bend it and look for cracks; brush every joint with leak solution, never test with a flame.',
        proviso: 'the hose is sound and every joint is tight in the leak test',
      },
      care: {
        when: 'hose.ageTold > hose.life',
        wrong: 'The hose is older than {hose.life}.',
        do: 'Replace it, though it may still look well.',
      },
      otherwise: 'The hose is sound and not too old, as far as it is told.',
      open: { wrong: 'Look at the hose and brush it with leak solution before the gas is opened.' },
      source: manual,
    },
    alarms: {
      label: 'Gas and carbon monoxide alarms',
      first: true,
      askedBy: [
        'alarm.gasAge',
        'alarm.monoxideAge',
        'furnace.input',
        'furnace.hours',
        'trip.nights',
      ],
      stop: {
        when: 'alarm.gasTold > alarm.gasLife || alarm.monoxideTold > alarm.monoxideLife',
        wrong: 'An alarm is past its date.',
        because: 'It may sleep through the gas it was made for.',
        do: 'Replace it before anyone sleeps inside.',
      },
      if: {
        when: 'alarms.areUntold',
        wrong: 'Nobody has read the dates of the alarms.',
        do: 'Read them on the backs of both, and press their test buttons.',
        proviso: 'a gas alarm and a carbon monoxide alarm work, both within their dates',
      },
      otherwise: 'The alarms are within their dates; press their test buttons.',
      open: { wrong: 'Read the dates on the backs of both alarms before anyone sleeps inside.' },
      source: alarmDates,
    },
  },
  formulas: {
    'cylinder.life': {
      label: 'Years it may be filled after that date',
      noun: 'how long its date is good',
      unit: 'yr',
      is: 'pick(cylinderLife, cylinder.dateKind)',
      source: datesFromMemory,
    },
    'cylinder.lookAt': {
      label: 'Age from which the collar is shown to the filler',
      unit: 'yr',
      is: 'cylinder.life - cylinder.notice',
      source: house,
    },
    'hose.isUnsound': {
      label: 'It is told that the hose is not sound, or not known whether',
      unit: 'yes-no',
      is: "given(hose.sound) && hose.sound == 'no'",
      source: manual,
    },
    'hose.isUntold': {
      label: 'Nobody said whether the hose is sound',
      unit: 'yes-no',
      is: '!given(hose.sound)',
      source: manual,
    },
    'alarms.areUntold': {
      label: 'Of an alarm nobody told the age',
      unit: 'yes-no',
      is: '!given(alarm.gasAge, alarm.monoxideAge)',
      source: alarmDates,
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
