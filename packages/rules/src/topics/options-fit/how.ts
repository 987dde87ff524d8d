import type { HowTo } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/common';
import { dryWeightMeans, orderSheet } from '../../trade/bibliography/options-fit';

/** How an order sheet and a label are read. */
export const how = {
  'read-the-sheet': {
    label: 'How an order sheet is read',
    steps: [
      'Look for the model year first: the sheet changes every summer.',
      'Standard is in the price and in the dry weight; optional is in neither; what is not listed is not offered.',
      'Follow every line that says requires or not with, until nothing new comes along.',
      'Write down what comes along unasked, and tell the buyer.',
    ],
    caution:
      'What stands on the lot may be last year’s: its label, not the sheet, says what is in it.',
    source: orderSheet,
  },
  'weigh-a-build': {
    label: 'How the weight of a build is found',
    steps: [
      'Take the dry weight of that model year, which has the standard equipment in it.',
      'Add each option that is ordered, and full gas cylinders.',
      'What is left to the trailer’s own rating is for water and everything packed.',
    ],
    caution: 'The yellow label on that very trailer, and a scale, win over the sum.',
    source: dryWeightMeans,
  },
  'compare-two-plans': {
    label: 'How two floor plans are compared',
    steps: [
      'Give both the same wishes and the same model year.',
      'Compare what each has left for water and cargo, and what each puts on the ball.',
      'Never set the weight of one against the rating of the other.',
    ],
    caution: 'Whether the vehicle can pull it is a question of tow fit.',
    source: custom,
  },
} satisfies Record<string, HowTo>;
