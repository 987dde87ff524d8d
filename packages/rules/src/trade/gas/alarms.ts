import type { Assumption } from '../../engine/define/shapes';
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

const replaceBy = (label: string, ask: string) =>
  ({
    kind: 'choice',
    options: ['ahead', 'past'],
    label,
    ask,
    where: 'printed on its back as “replace by”; where only the making is printed, tell its age',
  }) as const;

/**
 * Alarms that wake sleepers; each is only good for so long, and a replace-by date decides alone.
 *
 *     replace by printed ──► ahead or past, whatever the age
 *     gas                 0 ────────── 5 ── past          years since the making
 *     carbon monoxide     0 ────────── 5 ── if ── 7 ── past
 */
export const alarms = part({
  facts: {
    'alarm.gasAge': age('Age of the gas alarm', 'How old is the gas alarm?'),
    'alarm.monoxideAge': age(
      'Age of the carbon monoxide alarm',
      'How old is the carbon monoxide alarm?',
    ),
    'alarm.gasReplaceBy': replaceBy(
      'Replace-by date of the gas alarm',
      'Is the replace-by date on the gas alarm ahead, or past?',
    ),
    'alarm.monoxideReplaceBy': replaceBy(
      'Replace-by date of the carbon monoxide alarm',
      'Is the replace-by date on the carbon monoxide alarm ahead, or past?',
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
      label: 'Life of a carbon monoxide alarm, at the most',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 7 }],
      source: alarmDates,
    },
    'alarm.monoxideSure': {
      label: 'Life that any carbon monoxide alarm has',
      noun: 'the life that any carbon monoxide alarm has',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 5 }],
      source: alarmDates,
    },
  },
  formulas: {
    'alarms.areUntold': {
      label: 'Of an alarm nobody told the age',
      unit: 'yes-no',
      is: '(!given(alarm.gasAge) && !given(alarm.gasReplaceBy)) || (!given(alarm.monoxideAge) && !given(alarm.monoxideReplaceBy))',
      source: alarmDates,
    },
    'alarm.gasPast': {
      label: 'The replace-by date of the gas alarm is past',
      unit: 'yes-no',
      is: "given(alarm.gasReplaceBy) && alarm.gasReplaceBy == 'past'",
      source: alarmDates,
    },
    'alarm.monoxidePast': {
      label: 'The replace-by date of the carbon monoxide alarm is past',
      unit: 'yes-no',
      is: "given(alarm.monoxideReplaceBy) && alarm.monoxideReplaceBy == 'past'",
      source: alarmDates,
    },
    'alarm.gasTold': {
      label: 'Age of the gas alarm, where it is told and no replace-by date is',
      unit: 'yr',
      is: 'choose(given(alarm.gasAge) && !known(alarm.gasReplaceBy), alarm.gasAge, 0)',
      source: alarmDates,
    },
    'assumed.gasMade': {
      label: 'The gas alarm is told by its making alone',
      unit: 'yes-no',
      is: 'given(alarm.gasAge) && !given(alarm.gasReplaceBy)',
      source: alarmDates,
    },
    'assumed.monoxideMade': {
      label: 'The carbon monoxide alarm is told by its making alone',
      unit: 'yes-no',
      is: 'given(alarm.monoxideAge) && !given(alarm.monoxideReplaceBy)',
      source: alarmDates,
    },
    'alarm.monoxideTold': {
      label: 'Age of the carbon monoxide alarm, where it is told and no replace-by date is',
      unit: 'yr',
      is: 'choose(given(alarm.monoxideAge) && !known(alarm.monoxideReplaceBy), alarm.monoxideAge, 0)',
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
        'alarm.gasReplaceBy',
        'alarm.monoxideReplaceBy',
        'furnace.input',
        'furnace.hours',
        'trip.nights',
      ],
      stop: {
        when: 'alarm.gasPast || alarm.monoxidePast || alarm.gasTold > alarm.gasLife || alarm.monoxideTold > alarm.monoxideLife',
        wrong: 'An alarm is past its date.',
        because: 'It may sleep through the gas it was made for.',
        do: 'Replace it before anyone sleeps inside.',
      },
      if: [
        {
          when: 'alarms.areUntold',
          wrong: 'Not all dates of the alarms are known yet.',
          do: 'Read the dates on the backs of both alarms, and press their test buttons.',
          proviso: 'a gas alarm and a carbon monoxide alarm work, both within their dates',
        },
        {
          when: 'alarm.monoxideTold > alarm.monoxideSure',
          wrong: 'The carbon monoxide alarm is older than {alarm.monoxideSure}.',
          because: 'Some are made for no longer, others for {alarm.monoxideLife}.',
          do: 'Read the replace-by date on its back; if there is none, replace it.',
          proviso: 'the replace-by date on the carbon monoxide alarm’s back is ahead',
        },
      ],
      otherwise: 'The alarms are within their dates; press their test buttons.',
      open: { wrong: 'Read the dates on the backs of both alarms before anyone sleeps inside.' },
      source: alarmDates,
    },
  },
});

/** An age counts where no date to replace by is told, as makers print one that wins. */
export const alarmAssumptions: readonly Assumption[] = [
  {
    when: 'assumed.gasMade',
    says: 'The gas alarm has no replace-by date printed: its making counts, and {alarm.gasLife} from it.',
    source: alarmDates,
  },
  {
    when: 'assumed.monoxideMade',
    says: 'The carbon monoxide alarm has no replace-by date printed: its making counts.',
    source: alarmDates,
  },
];
