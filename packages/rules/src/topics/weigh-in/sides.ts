import { part } from '../../engine/define/topic';
import { house, statics } from '../../trade/bibliography/common';

/** Side to side, by wheel scale: the heavier side against half of the whole. */
export const sides = part({
  parameters: {
    'side.most': {
      label: 'How much heavier than half one side may be',
      unit: '%',
      values: [{ from: '2020-01-01', value: 5 }],
      range: [2, 15],
      source: house,
    },
  },
  formulas: {
    'sides.read': {
      label: 'Trailer’s wheels of both sides, as far as they were weighed',
      noun: 'the wheels weighed',
      unit: 'lb',
      is: 'choose(known(trailer.leftWheels), read.leftWheels, 0) + choose(known(trailer.rightWheels), read.rightWheels, 0)',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'side.heavier': {
      label: 'Heavier side of the trailer',
      noun: 'the heavier side',
      unit: 'lb',
      is: 'max(trailer.leftWheels, trailer.rightWheels)',
      source: statics,
    },
    'side.allowed': {
      label: 'Half of both sides and what is allowed over it',
      noun: 'half and what is allowed over it',
      unit: 'lb',
      is: '(trailer.leftWheels + trailer.rightWheels) / 2 * (1 + side.most)',
      source: house,
    },
    'side.imbalance': {
      label: 'Imbalance, the heavier side over half',
      noun: 'the imbalance',
      unit: '1',
      is: 'side.heavier / ((trailer.leftWheels + trailer.rightWheels) / 2) - 1',
      source: statics,
    },
  },
  findings: {
    'side-to-side': {
      label: 'Side to side',
      askedBy: ['trailer.leftWheels', 'trailer.rightWheels'],
      care: {
        when: {
          all: [{ fact: 'side.heavier', operator: 'greaterThan', value: { fact: 'side.allowed' } }],
        },
        wrong:
          'One side carries clearly more than the other: {trailer.leftWheels} left, {trailer.rightWheels} right.',
        do: 'Shift load across, and look at what each tire may carry.',
      },
      open: {
        wrong: 'Whether both sides carry alike is not known yet.',
        do: 'Weigh wheel by wheel.',
      },
      otherwise: 'Both sides carry about the same.',
      source: house,
    },
  },
});
