import { part } from '../../engine/define/topic';
import { partsRating as makersRating, statics } from '../../trade/bibliography/common';
import { baseList } from '../../trade/bibliography/spares-kit';
import { dateCode, trailerTireAge } from '../../trade/bibliography/tires';
import { weekOf } from '../../trade/tires/age';

/** The spare wheel: there, as strong as those it stands in for, young enough. */
export const spare = part({
  formulas: {
    'spare.isUnread': {
      label: 'Neither age nor load of the spare is told',
      unit: 'yes-no',
      is: '!given(spare.codeYear) && !given(spare.capacity)',
      source: statics,
    },
    'spare.isMissing': {
      label: 'There is no spare wheel',
      unit: 'yes-no',
      is: "given(spare.present) && spare.present == 'no'",
      source: statics,
    },
    'spare.load': {
      label: 'What the spare would carry',
      noun: 'the spare’s load',
      unit: 'lb',
      is: 'side.load / trailer.axles',
      source: statics,
    },
    'spare.codeStarts': {
      label: 'When the time begins that the spare’s date code may mean',
      unit: '',
      year: true,
      is: 'code.from + spare.codeYear + choose(known(spare.codeWeek), (spare.codeWeek - 1) / year.weeks, 0)',
      within: ['code.from + spare.codeYear', 'code.from + spare.codeYear + 1'],
      source: dateCode,
    },
    'spare.codeMisread': {
      label: 'The spare’s date code lies in the future',
      unit: 'yes-no',
      is: 'given(spare.codeYear) && spare.codeStarts > asOf.year',
      source: dateCode,
    },
    'spare.built': {
      label: 'When the spare was made, by its date code',
      unit: '',
      year: true,
      is: `code.from + spare.codeYear + (${weekOf('spare.codeWeek')} - 1) / year.weeks`,
      source: dateCode,
    },
    'spare.age': {
      label: 'Age of the spare',
      noun: 'the spare’s age',
      unit: 'yr',
      is: 'choose(spare.codeMisread, between(age.none, unlimited), max(age.none, (asOf.year - spare.built) * year.one))',
      source: dateCode,
    },
  },
  limits: {
    spare: {
      label: 'Spare tire',
      short: 'the spare tire',
      do: 'Get a spare of the size and load range of the others.',
      near: 'Drive slowly on it, and only to a shop.',
      used: 'spare.load',
      limit: 'spare.capacity',
      margin: 'margin.other',
      askedBy: ['spare.capacity'],
      source: makersRating,
    },
  },
  findings: {
    'spare-there': {
      label: 'Spare wheel',
      askedBy: ['spare.present'],
      care: {
        when: "spare.present == 'no'",
        wrong: 'There is no spare wheel.',
        because: 'A trailer tire of the right size is seldom in stock by the road.',
        do: 'Get one of the same size and load range.',
      },
      open: { wrong: 'Whether there is a spare wheel is not known.', do: 'Look before the trip.' },
      otherwise: 'There is a spare wheel.',
      source: baseList,
    },
    'spare-range': {
      label: 'Spare against the tires it stands in for',
      askedByKnown: ['spare.capacity', 'trailer.tireCapacity'],
      care: {
        when: 'spare.capacity < trailer.tireCapacity',
        wrong:
          'The spare is rated {spare.capacity} and the tires it stands in for {trailer.tireCapacity}.',
        because: 'On two axles its neighbor takes over what it gives way, and then there are two.',
        do: 'A spare has the size and the load range of the others.',
      },
      otherwise: 'The spare is rated for what the other tires are.',
      source: baseList,
    },
    'spare-age': {
      label: 'Age of the spare',
      askedBy: ['spare.codeYear'],
      stop: {
        when: 'spare.age >= age.trailerReplace',
        wrong: 'The spare is {spare.age} old and past its years.',
        because: 'It has aged in sun and rain like the others, whether it rolled or not.',
        do: 'Replace it before you count on it.',
      },
      unknown: {
        when: 'spare.codeMisread',
        wrong: 'The spare’s date code lies in the future, so it was misread.',
        do: 'Read all its digits again.',
      },
      care: {
        when: 'spare.age >= age.trailerCare',
        wrong: 'The spare is {spare.age} old and in its last years.',
        do: 'Such a spare is to reach a shop with, not to finish a summer on.',
      },
      open: { wrong: 'The spare may be past its years.', do: 'Read its date code.' },
      otherwise: 'The spare is young enough.',
      source: trailerTireAge,
    },
  },
});
