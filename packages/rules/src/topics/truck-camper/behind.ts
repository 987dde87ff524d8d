import { part } from '../../engine/define/topic';
import { custom, statics } from '../../trade/bibliography/common';
import { extensionLoss } from '../../trade/bibliography/rig';

/** What is towed behind the camper: reckoned as for towing, and nothing where nobody told of a trailer. */
export const behind = part({
  formulas: {
    'trailer.isTold': {
      label: 'Something is towed behind the camper',
      unit: 'yes-no',
      is: 'given(trailer.measuredTongueWeight) || given(trailer.dryTongueWeight) || given(trailer.dryWeight) || given(trailer.gvwr)',
      source: custom,
    },
    'trailer.isUntold': {
      label: 'Nobody told of a trailer',
      unit: 'yes-no',
      is: '!trailer.isTold',
      source: custom,
    },
    'camper.tongueBehind': {
      label: 'Tongue weight of what is towed as well',
      noun: 'the tongue behind',
      unit: 'lb',
      is: 'choose(trailer.isTold, tongue.loaded, 0)',
      source: statics,
    },
    'camper.extends': {
      label: 'It is towed on a hitch extension',
      unit: 'yes-no',
      is: 'trailer.isTold && extension.isAsked',
      source: extensionLoss,
    },
  },
});
