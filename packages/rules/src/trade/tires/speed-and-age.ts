import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';
import { calendar, dateCode, speedSymbols, tireAge } from '../bibliography/tires';

/** How fast: the slowest-rated tire of the rig sets it. */
export const speed = part({
  parameters: {
    'speed.unmarked': {
      label: 'Speed of a trailer tire without a symbol',
      unit: 'mph',
      values: [{ from: '2020-01-01', value: 65 }],
      source: speedSymbols,
    },
  },
  wordTables: {
    symbolSpeed: {
      label: 'Speed of each symbol',
      valueUnit: 'km/h',
      values: {
        l: 120,
        m: 130,
        n: 140,
        p: 150,
        q: 160,
        r: 170,
        s: 180,
        t: 190,
        u: 200,
        h: 210,
        v: 240,
        w: 270,
        y: 300,
        none: 104.6,
      },
      source: speedSymbols,
    },
  },
  formulas: {
    'tire.fastest': {
      label: 'Speed of this tire',
      unit: 'mph',
      is: "needs(choose(tire.speedSymbol == 'none', speed.unmarked, pick(symbolSpeed, tire.speedSymbol)), tire.speedSymbol)",
      source: speedSymbols,
    },
    'speed.allowed': {
      label: 'Speed the tires allow',
      noun: 'the speed the tires allow',
      unit: 'mph',
      is: 'choose(given(tire.slowestOther), min(tire.fastest, tire.slowestOther), tire.fastest)',
      source: custom,
    },
  },
  limits: {
    speed: {
      label: 'Speed',
      short: 'the slowest tire’s speed',
      used: 'trip.speed',
      limit: 'speed.allowed',
      askedBy: ['trip.speed'],
      source: speedSymbols,
    },
  },
});

/**
 * How old, from the date code.
 *
 *     DOT ····  35 21      week 35 of 2021
 *               418        three digits: before 2000
 */
export const age = part({
  parameters: {
    'year.one': {
      label: 'A year',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 1 }],
      source: calendar,
    },
    'year.weeks': {
      label: 'Weeks of a year',
      unit: '',
      values: [{ from: '2020-01-01', value: 52.1775 }],
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
      label: 'Age from which a tire is watched',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 5 }],
      source: tireAge,
    },
    'age.replace': {
      label: 'Age at which a tire is done',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 7 }],
      range: [6, 7],
      source: tireAge,
    },
    'age.none': {
      label: 'No age',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 0 }],
      source: calendar,
    },
  },
  formulas: {
    'tire.built': {
      label: 'Made, by the date code (three digits: at the latest)',
      unit: '',
      year: true,
      is: "choose(tire.codeDigits == 'three', code.from, code.from + tire.codeYear + choose(known(tire.codeWeek), (tire.codeWeek - 1) / year.weeks, 0))",
      source: dateCode,
    },
    'tire.age': {
      label: 'Age of the tire',
      noun: 'the tire’s age',
      unit: 'yr',
      is: '(asOf.year - tire.built) * year.one',
      source: dateCode,
    },
  },
  findings: {
    age: {
      label: 'Age',
      askedBy: ['tire.codeYear', 'tire.codeDigits'],
      stop: {
        when: {
          all: [
            {
              fact: 'tire.age',
              operator: 'greaterThanInclusive',
              value: { fact: 'age.replace' },
            },
          ],
        },
        wrong: 'The tire is past its years, whatever its tread.',
        do: 'Replace it before it tows.',
      },
      care: {
        when: {
          all: [
            { fact: 'tire.age', operator: 'greaterThanInclusive', value: { fact: 'age.care' } },
          ],
        },
        wrong: 'The tire is in its last years.',
        do: 'Have it looked at before each long trip, and replace it by the sixth to seventh year, whatever its tread.',
      },
      open: { wrong: 'Read the date code.', do: 'The tire may be past its years.' },
      otherwise: 'The tire is young enough.',
      source: tireAge,
    },
    'date-code': {
      label: 'Date code',
      askedBy: ['tire.codeYear'],
      stop: {
        when: {
          all: [{ fact: 'tire.age', operator: 'lessThan', value: { fact: 'age.none' } }],
        },
        wrong: 'The date code lies in the future, so it was misread.',
        do: 'Read all its digits again before you rely on the tire.',
      },
      open: { wrong: 'Read the digits of the date code again.' },
      otherwise: 'The date code can be right.',
      source: dateCode,
    },
  },
});
