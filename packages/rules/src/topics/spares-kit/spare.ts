import { part } from '../../engine/define/topic';
import { partsRating as makersRating, statics } from '../../trade/bibliography/common';
import { baseList } from '../../trade/bibliography/spares-kit';
import { dateCode, tireAge } from '../../trade/bibliography/tires';

/** The spare wheel: there, strong enough, young enough. */
export const spare = part({
  formulas: {
    'spare.load': {
      label: 'What the spare would carry',
      noun: 'the spare’s load',
      unit: 'lb',
      is: 'side.load / trailer.axles',
      source: statics,
    },
    'spare.age': {
      label: 'Age of the spare',
      noun: 'the spare’s age',
      unit: 'yr',
      is: '(asOf.year - code.from - spare.codeYear - choose(known(spare.codeWeek), (spare.codeWeek - 1) / year.weeks, 0)) * year.one',
      source: dateCode,
    },
  },
  limits: {
    spare: {
      label: 'Spare tire',
      short: 'the spare tire',
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
        when: { all: [{ fact: 'spare.present', operator: 'equal', value: 'no' }] },
        wrong: 'There is no spare wheel.',
        do: 'A trailer tire of the right size is seldom in stock by the road. Get one of the same size and load range.',
      },
      otherwise: 'There is a spare wheel.',
      source: baseList,
    },
    'spare-age': {
      label: 'Age of the spare',
      askedBy: ['spare.codeYear'],
      stop: {
        when: {
          all: [
            { fact: 'spare.age', operator: 'greaterThanInclusive', value: { fact: 'age.replace' } },
          ],
        },
        wrong: 'The spare is past its years.',
        do: 'It has aged in sun and rain like the others. Replace it before you count on it.',
      },
      care: {
        when: {
          all: [
            { fact: 'spare.age', operator: 'greaterThanInclusive', value: { fact: 'age.care' } },
          ],
        },
        wrong: 'The spare is in its last years.',
        do: 'To a shop with it, not through a summer.',
      },
      open: { wrong: 'Read the spare’s date code.', do: 'It may be past its years.' },
      otherwise: 'The spare is young enough.',
      source: tireAge,
    },
  },
});
