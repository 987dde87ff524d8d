import { part } from '../../engine/define/topic';
import { alarmDates } from '../bibliography/gas';

const age = (label: string, ask: string) =>
  ({
    kind: 'quantity',
    label,
    unit: 'yr',
    least: 0,
    most: 60,
    ask,
    where: 'date on its back; some also print a replace-by date, which wins',
  }) as const;

/** Alarms that wake sleepers; each is only good for so long. */
export const alarms = part({
  facts: {
    'alarm.gasAge': age('Age of the gas alarm', 'How old is the gas alarm?'),
    'alarm.monoxideAge': age(
      'Age of the carbon monoxide alarm',
      'How old is the carbon monoxide alarm?',
    ),
  },
  parameters: {
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
  formulas: {
    'alarms.areUntold': {
      label: 'Of an alarm nobody told the age',
      unit: 'yes-no',
      is: '!given(alarm.gasAge, alarm.monoxideAge)',
      source: alarmDates,
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
  findings: {
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
});
