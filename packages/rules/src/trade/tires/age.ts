import { part } from '../../engine/define/topic';
import { calendar, dateCode, tireAge, trailerTireAge } from '../bibliography/tires';

const years = (label: string, value: number, more: object = {}) => ({
  label,
  unit: 'yr',
  values: [{ from: '2020-01-01', value }],
  ...more,
});

/** The week of a date code; one that nobody read is any week of its year. */
export const weekOf = (week: string): string =>
  `choose(known(${week}), ${week}, max(week.first, min(${week}, week.last)))`;

/**
 * How old, from the date code.
 *
 *     DOT ····  35 21      week 35 of 2021
 *               418        three digits: before 2000
 *
 * A trailer's tires stand loaded in the sun more than they roll, and are done sooner.
 */
export const age = part({
  parameters: {
    'year.one': { ...years('A year', 1), source: calendar },
    'year.weeks': {
      label: 'Weeks of a year',
      unit: '',
      values: [{ from: '2020-01-01', value: 52.1775 }],
      source: calendar,
    },
    'week.first': {
      label: 'First week of a year',
      unit: '',
      values: [{ from: '2020-01-01', value: 1 }],
      source: calendar,
    },
    'week.last': {
      label: 'Last week of a year',
      unit: '',
      values: [{ from: '2020-01-01', value: 53 }],
      source: calendar,
    },
    'code.from': {
      label: 'First year of the four digits',
      unit: '',
      year: true,
      values: [{ from: '2020-01-01', value: 2000 }],
      source: dateCode,
    },
    'age.care': {
      ...years('Age from which a vehicle’s tire is watched', 5),
      source: tireAge,
    },
    'age.replace': {
      ...years('Age at which a vehicle’s tire is done', 7),
      range: [6, 7],
      source: tireAge,
    },
    'age.trailerCare': {
      ...years('Age from which a trailer’s tire is watched', 4),
      noun: 'the age from which it is watched',
      source: trailerTireAge,
    },
    'age.trailerReplace': {
      ...years('Age at which a trailer’s tire is done', 6),
      noun: 'the age at which it is done',
      range: [5, 6],
      source: trailerTireAge,
    },
    'age.none': { ...years('No age', 0), source: calendar },
  },
  formulas: {
    'tire.codeStarts': {
      label: 'When the time begins that the date code may mean',
      unit: '',
      year: true,
      is: 'code.from + tire.codeYear + choose(known(tire.codeWeek), (tire.codeWeek - 1) / year.weeks, 0)',
      within: ['code.from + tire.codeYear', 'code.from + tire.codeYear + 1'],
      source: dateCode,
    },
    'tire.codeMisread': {
      label: 'The date code lies in the future',
      unit: 'yes-no',
      is: "tire.codeDigits == 'four' && given(tire.codeYear) && tire.codeStarts > asOf.year",
      source: dateCode,
    },
    'tire.built': {
      label: 'Made, by the date code (three digits: at the latest)',
      unit: '',
      year: true,
      is: `choose(tire.codeDigits == 'three', code.from, code.from + tire.codeYear + (${weekOf('tire.codeWeek')} - 1) / year.weeks)`,
      source: dateCode,
    },
    'tire.age': {
      label: 'Age of the tire (three digits: at the least)',
      noun: 'the tire’s age',
      unit: 'yr',
      is: 'choose(tire.codeMisread, between(age.none, unlimited), max(age.none, (asOf.year - tire.built) * year.one))',
      source: dateCode,
    },
    'tire.watchedFrom': {
      label: 'Age from which this tire is watched',
      noun: 'the age from which it is watched',
      unit: 'yr',
      is: "choose(tire.place == 'trailer', age.trailerCare, age.care)",
      source: trailerTireAge,
    },
    'tire.doneAt': {
      label: 'Age at which this tire is done',
      noun: 'the age at which it is done',
      unit: 'yr',
      is: "choose(tire.place == 'trailer', age.trailerReplace, age.replace)",
      source: trailerTireAge,
    },
  },
  findings: {
    age: {
      label: 'Age',
      askedBy: ['tire.codeYear', 'tire.codeDigits'],
      stop: {
        when: 'tire.age >= tire.doneAt',
        wrong:
          'The tire is {tire.age} old and past its years: it is done at {tire.doneAt}, whatever its tread.',
        because: 'Old rubber comes apart at speed, on the hottest day, without a warning.',
        do: 'Replace it before it tows.',
      },
      care: {
        when: 'tire.age >= tire.watchedFrom',
        wrong: 'The tire is {tire.age} old, and at {tire.doneAt} it is done, whatever its tread.',
        do: 'Have it looked at before each long trip.',
      },
      open: {
        wrong: 'The tire may be past its years.',
        do: 'Read the date code, four digits in the oval after DOT.',
      },
      otherwise: 'The tire is young enough.',
      source: trailerTireAge,
    },
    'date-code': {
      label: 'Date code',
      askedBy: ['tire.codeYear'],
      unknown: {
        when: 'tire.codeMisread',
        wrong: 'The date code lies in the future, so it was misread.',
        because: 'Nothing can be said about the tire’s age.',
        do: 'Read all its digits again, with a lamp, on both sidewalls.',
      },
      open: {
        wrong: 'The date code may have been misread.',
        do: 'Read its digits again.',
      },
      otherwise: 'The date code can be right.',
      source: dateCode,
    },
  },
});
