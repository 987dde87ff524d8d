import type { Assumption } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { makersRating } from '../../trade/bibliography/rig';

/** When something is taken for granted because a place or a permission was not told. */
export const assumed = part({
  formulas: {
    'assumed.propanePlace': {
      label: 'Propane has no place told, and it counts',
      unit: 'yes-no',
      is: '!known(trailer.measuredTongueWeight) && tongue.momentsKnown && !known(trailer.propaneAhead) && trailer.propane > 0',
      source: custom,
    },
    'assumed.waterPlace': {
      label: 'Fresh water has no place told, and it counts',
      unit: 'yes-no',
      is: '!known(trailer.measuredTongueWeight) && tongue.momentsKnown && !known(trailer.freshWaterAhead) && trailer.freshWater > 0',
      source: custom,
    },
    'assumed.distributionAllowed': {
      label: 'Weight distribution is used and nobody said whether it is allowed',
      unit: 'yes-no',
      is: "hitch.distribution == 'yes' && !given(vehicle.distributionAllowed)",
      source: makersRating,
    },
  },
});

export const assumptions: readonly Assumption[] = [
  {
    when: 'assumed.propanePlace',
    says: 'Propane rides on the A-frame, at 0.8 of the way from axle to ball.',
    source: custom,
  },
  { when: 'assumed.waterPlace', says: 'Fresh water rides at the axle.', source: custom },
  {
    when: 'assumed.distributionAllowed',
    says: 'The maker allows weight distribution; nobody said so.',
    source: makersRating,
  },
];
