import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';

const tellWho = 'Tell who rides along, and what each weighs.';
const tellWhat = 'Tell what is built and packed into the trailer, and where it rides.';
const tellBoth =
  'Tell who rides along and what each weighs, and what is built and packed into the trailer.';

const leftWhere = (rating: string, left: string): string =>
  `choose(given(${rating}), ${left}, unlimited)`;
const ofCombined = leftWhere('vehicle.gcwr', 'combined.limit - combined.gross');

/** Who rides along and what is packed, where nobody said: counted as little, and told so. */
export const untold = part({
  formulas: {
    'load.trailerUntold': {
      label: 'What is packed in the trailer is not told',
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
      label: 'Payload left, by all ratings of the vehicle',
      noun: 'the payload left',
      unit: 'lb',
      is: `max(0, min(payload.available - payload.used, ${leftWhere('vehicle.gvwr', 'vehicle.gvwr - vehicle.gross')}, ${ofCombined}))`,
      source: custom,
    },
    'trailerWeight.left': {
      label: 'Trailer weight left, by the tow rating, its own and the combined one',
      noun: 'the trailer weight left',
      unit: 'lb',
      // Without brakes no more than what may be pulled so, or what nobody has to look up.
      is: `max(0, min(trailerWeight.limit - trailer.loaded, trailer.gvwr - trailer.loaded, choose(brakes.areNone, choose(unbraked.isRated, min(vehicle.maxUnbraked, unbraked.stopAbove), unbraked.askAbove) - trailer.loaded, unlimited), ${ofCombined}))`,
      source: custom,
    },
    // What may still rest on ball or pin: its own rating runs out before the payload as often as not.
    'tongue.left': {
      label: 'Tongue weight left, by its rating and the payload',
      noun: 'the tongue weight left',
      unit: 'lb',
      is: 'max(0, min(payload.left, tongue.highEdge * (trailer.loaded + trailerWeight.left) - tongue.loaded, choose(coupling.isPin, choose(given(vehicle.maxPin) || given(hitch.pinRating), pin.limit - tongue.loaded, unlimited), tongue.limit - tongue.loaded)))',
      source: custom,
    },
    'combined.left': {
      label: 'Combined weight left',
      noun: 'the combined weight left',
      unit: 'lb',
      is: 'max(0, combined.limit - combined.gross)',
      source: custom,
    },
    'combined.isLeftKnown': {
      label: 'It is known what combined weight is left',
      unit: 'yes-no',
      is: 'given(vehicle.gcwr) && known(combined.left)',
      source: custom,
    },
    'load.isLeftKnown': {
      label: 'It is known how much more may be loaded',
      unit: 'yes-no',
      is: 'known(payload.left) && known(trailerWeight.left) && known(tongue.left) && !load.isLeftOpen',
      source: custom,
    },
    // A label of which only a least is told leaves no amount that could be said.
    'load.isLeftOpen': {
      label: 'What may be loaded is told only from one side',
      unit: 'yes-no',
      is: 'known(payload.left) && may(payload.left > trailer.loaded) && may(payload.left <= trailer.loaded)',
      source: custom,
    },
  },
  findings: {
    'load-untold': {
      label: 'Load, not told',
      if: [
        {
          when: 'load.peopleUntold && load.trailerUntold && load.isLeftKnown && combined.isLeftKnown',
          wrong:
            'Only a driver is counted, and the trailer is counted empty; that leaves {payload.left} of payload, {trailerWeight.left} of trailer weight and {tongue.left} on the tongue, all of it together {combined.left}.',
          do: tellBoth,
          proviso:
            'people, cargo and what packing adds to the tongue stay within {payload.left} of payload, what is packed within {trailerWeight.left}, no more than {tongue.left} of it on the tongue, and all together within {combined.left}',
        },
        {
          when: 'load.peopleUntold && load.trailerUntold && load.isLeftKnown',
          wrong:
            'Only a driver is counted, and the trailer is counted empty; that leaves {payload.left} of payload, {trailerWeight.left} of trailer weight and {tongue.left} on the tongue.',
          do: tellBoth,
          proviso:
            'people, cargo and what packing adds to the tongue stay within {payload.left} of payload, and what is packed within {trailerWeight.left}, no more than {tongue.left} of it on the tongue',
        },
        {
          when: 'load.peopleUntold && !load.trailerUntold && load.isLeftKnown',
          wrong: 'Only a driver is counted; that leaves {payload.left} of payload.',
          do: tellWho,
          proviso: 'everybody else who rides along stays within {payload.left} of payload',
        },
        {
          when: 'load.trailerUntold && !load.peopleUntold && load.isLeftKnown',
          wrong:
            'The trailer is counted empty; that leaves {trailerWeight.left} of trailer weight, of which {tongue.left} may come onto the tongue.',
          do: tellWhat,
          proviso:
            'what is packed stays within {trailerWeight.left}, no more than {tongue.left} of it on the tongue',
        },
        {
          when: 'load.peopleUntold && load.trailerUntold && load.isLeftOpen',
          wrong: 'Only a driver is counted, and the trailer is counted empty.',
          do: tellBoth,
          proviso: 'everybody else aboard and what is packed stay within the ratings',
        },
        {
          when: 'load.peopleUntold && !load.trailerUntold && load.isLeftOpen',
          wrong: 'Only a driver is counted.',
          do: tellWho,
          proviso: 'everybody else who rides along stays within the payload',
        },
        {
          when: 'load.trailerUntold && !load.peopleUntold && load.isLeftOpen',
          wrong: 'The trailer is counted empty.',
          do: tellWhat,
          proviso: 'what is packed stays within the ratings',
        },
        {
          when: 'load.peopleUntold && load.trailerUntold',
          wrong: 'Only a driver is counted, and the trailer is counted empty.',
          do: tellBoth,
          proviso: 'no one else rides along and nothing is packed',
        },
        {
          when: 'load.peopleUntold',
          wrong: 'Only a driver is counted.',
          do: tellWho,
          proviso: 'no one else rides along',
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
