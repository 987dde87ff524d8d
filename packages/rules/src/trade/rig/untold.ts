import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';

const tellWho = 'Tell who rides along, and what each weighs.';
const tellWhat = 'Tell what is built and packed into the trailer, and where it rides.';
const tellBoth =
  'Tell who rides along and what each weighs, and what is built and packed into the trailer.';

/** Who rides along and what is packed, where nobody said: counted as little, and told so. */
export const untold = part({
  formulas: {
    'load.trailerUntold': {
      label: 'Nobody told what is built or packed into the trailer',
      unit: 'yes-no',
      is: '!given(trailer.cargo) && !given(trailer.options)',
      source: custom,
    },
    'load.peopleUntold': {
      label: 'Nobody told who rides along',
      unit: 'yes-no',
      is: '!given(load.occupants)',
      source: custom,
    },
    'payload.left': {
      label: 'Payload left',
      noun: 'the payload left',
      unit: 'lb',
      is: 'max(0, payload.available - payload.used)',
      source: custom,
    },
    'trailerWeight.left': {
      label: 'Trailer weight left, by the tow rating and its own',
      noun: 'the trailer weight left',
      unit: 'lb',
      is: 'max(0, min(trailerWeight.limit, trailer.gvwr) - trailer.loaded)',
      source: custom,
    },
    'load.isLeftKnown': {
      label: 'It is known how much more may be loaded',
      unit: 'yes-no',
      is: 'known(payload.left) && known(trailerWeight.left)',
      source: custom,
    },
  },
  findings: {
    'load-untold': {
      label: 'Load, not told',
      if: [
        {
          when: 'load.peopleUntold && load.trailerUntold && load.isLeftKnown',
          wrong:
            'Only a driver is counted, and the trailer is counted empty; that leaves {payload.left} of payload and {trailerWeight.left} of trailer weight.',
          do: tellBoth,
          proviso:
            'all who ride along and all that is packed stay within {payload.left} of payload and {trailerWeight.left} of trailer weight',
        },
        {
          when: 'load.peopleUntold && !load.trailerUntold && load.isLeftKnown',
          wrong: 'Only a driver is counted; that leaves {payload.left} of payload.',
          do: tellWho,
          proviso: 'all others who ride along stay within {payload.left} of payload',
        },
        {
          when: 'load.trailerUntold && !load.peopleUntold && load.isLeftKnown',
          wrong:
            'The trailer is counted empty; that leaves {trailerWeight.left} of trailer weight, and {payload.left} of payload for what packing adds to the tongue.',
          do: tellWhat,
          proviso:
            'what is packed stays within {trailerWeight.left}, and within {payload.left} on the tongue',
        },
        {
          when: 'load.peopleUntold && load.trailerUntold',
          wrong: 'Only a driver is counted, and the trailer is counted empty.',
          do: tellBoth,
          proviso: 'nobody else rides along and nothing is packed',
        },
        {
          when: 'load.peopleUntold',
          wrong: 'Only a driver is counted.',
          do: tellWho,
          proviso: 'nobody else rides along',
        },
        {
          when: 'load.trailerUntold',
          wrong: 'The trailer is counted empty.',
          do: tellWhat,
          proviso: 'nothing is packed in the trailer',
        },
      ],
      otherwise: 'Who rides along and what is packed was told.',
      source: custom,
    },
  },
});
