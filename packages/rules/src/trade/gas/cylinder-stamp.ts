import { part } from '../../engine/define/topic';
import { datesFromMemory } from '../bibliography/gas';
import { calendar } from '../bibliography/tires';
import { age } from '../tires/age';

const collar = 'stamped on the collar; of several dates the latest counts';

/**
 * The date on a cylinder's collar, told as it is stamped: month and year.
 *
 *     06 14            made in June 2014
 *     03-21 E          requalified in March 2021, by a look from outside only
 *      ├─── life ───┤  12 years; 7 after an S, 5 after an E
 *
 * The day is stamped nowhere, so in the month in which its life ends it may be past or not.
 */
export const cylinderStamp = part({
  facts: {
    'cylinder.stampYear': {
      kind: 'quantity',
      label: 'Year of the latest date on the cylinder’s collar',
      noun: 'the year on the cylinder’s collar',
      unit: '',
      year: true,
      least: 1940,
      most: 2100,
      exact: true,
      ask: 'Which year does the latest date on the collar have, all four digits?',
      where: collar,
    },
    'cylinder.stampMonth': {
      kind: 'quantity',
      label: 'Month of that date',
      noun: 'the month on the cylinder’s collar',
      unit: '',
      least: 1,
      most: 12,
      counted: true,
      exact: true,
      ask: 'Which month does it have, as a number?',
      where: collar,
    },
    'cylinder.dateKind': {
      kind: 'choice',
      label: 'What that date is',
      noun: 'what the latest date on the collar is',
      options: ['made', 'requalified', 'requalified-s', 'requalified-e'],
      ask: 'What date is on the collar, of making or of a requalification, and does an S or an E follow?',
      where:
        'the letter behind the latest date on the collar: S after a proof-pressure test, E after a look from outside only; none after a full test, nor on one never requalified',
    },
  },
  parameters: {
    'year.one': age.parameters['year.one'],
    'year.months': {
      label: 'Months of a year',
      unit: '',
      values: [{ from: '2020-01-01', value: 12 }],
      source: calendar,
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
  formulas: {
    'cylinder.life': {
      label: 'Years it may be filled after that date',
      noun: 'how long its date is good',
      unit: 'yr',
      is: 'pick(cylinderLife, cylinder.dateKind)',
      source: datesFromMemory,
    },
    'stamp.starts': {
      label: 'When the stamped month begins; without one, the year',
      unit: '',
      year: true,
      is: 'cylinder.stampYear + choose(known(cylinder.stampMonth), (cylinder.stampMonth - 1) / year.months, 0)',
      within: ['cylinder.stampYear', 'cylinder.stampYear + 1'],
      source: calendar,
    },
    'stamp.isMisread': {
      label: 'The date on the collar lies in the future',
      unit: 'yes-no',
      is: 'given(cylinder.stampYear) && stamp.starts > asOf.year',
      source: calendar,
    },
    'stamp.on': {
      label: 'The day that is meant: any of the month, or of the year without one',
      unit: '',
      year: true,
      is: 'cylinder.stampYear + (choose(known(cylinder.stampMonth), cylinder.stampMonth, between(1, 12)) - between(0, 1)) / year.months',
      source: calendar,
    },
    'cylinder.sinceStamp': {
      label: 'Years since the date on the collar, by month and year',
      noun: 'the years since the date on the collar',
      unit: 'yr',
      is: 'choose(stamp.isMisread, between(0, unlimited), max(0, (asOf.year - stamp.on) * year.one))',
      source: calendar,
    },
  },
});
