import { part } from '../../engine/define/topic';
import { grossRatings, payloadLabel } from '../../trade/bibliography/common';

const over = (label: string, known: string, used: string, rating: string) =>
  ({
    label,
    unit: 'yes-no',
    is: `known(${known}, ${rating}) && ${used} > ${rating}`,
    source: grossRatings,
  }) as const;

/**
 * A vehicle that is over a rating of its own before anything is hitched to it. What the trailer then
 * puts on it or takes off it is another question, and leaves this one answered.
 */
export const aloneOver = part({
  formulas: {
    'alone.rearIsOver': over(
      'The vehicle alone is over its rear axle’s rating',
      'alone.rear',
      'read.aloneRear',
      'vehicle.gawrRear',
    ),
    'alone.frontIsOver': over(
      'The vehicle alone is over its front axle’s rating',
      'alone.front',
      'read.aloneFront',
      'vehicle.gawrFront',
    ),
    'alone.grossIsOver': {
      label: 'The vehicle alone is over its gross rating',
      unit: 'yes-no',
      is: '(known(alone.front) || known(alone.rear)) && known(vehicle.gvwr) && vehicle.aloneLeast > vehicle.gvwr',
      source: grossRatings,
    },
    'vehicle.aloneLeast': {
      label: 'Vehicle alone, as far as it was weighed',
      noun: 'the vehicle alone, as far as it was weighed',
      unit: 'lb',
      is: 'choose(known(alone.front), read.aloneFront, 0) + choose(known(alone.rear), read.aloneRear, 0)',
      within: ['0', 'unlimited'],
      source: grossRatings,
    },
    'alone.payloadUsed': {
      label: 'Payload used by the vehicle alone, as weighed',
      noun: 'the payload used without the trailer',
      unit: 'lb',
      is: 'vehicle.aloneLeast - vehicle.curb',
      source: payloadLabel,
    },
    'alone.payloadIsOver': {
      label: 'The vehicle alone uses more than its payload',
      unit: 'yes-no',
      is: '(known(alone.front) || known(alone.rear)) && known(vehicle.placardPayload) && alone.payloadUsed > vehicle.placardPayload',
      source: payloadLabel,
    },
  },
  findings: {
    'alone-over': {
      label: 'Vehicle alone against its ratings',
      first: true,
      askedBy: ['alone.front', 'alone.rear'],
      stop: [
        {
          when: 'alone.rearIsOver',
          wrong:
            'Weighed alone, without the trailer, the vehicle puts {read.aloneRear} on its rear axle, over the rating of {vehicle.gawrRear}.',
          because: 'What presses on its hitch comes on top.',
          do: 'Take load out of the vehicle, from behind the rear axle first, and weigh it again before you hitch up.',
        },
        {
          when: 'alone.frontIsOver',
          wrong:
            'Weighed alone, without the trailer, the vehicle puts {read.aloneFront} on its front axle, over the rating of {vehicle.gawrFront}.',
          do: 'Take load out of the vehicle, up front first, and weigh it again before you hitch up.',
        },
        {
          when: 'alone.grossIsOver',
          wrong:
            'Weighed alone, without the trailer, the vehicle comes to {vehicle.aloneLeast} by what was weighed, over its gross rating of {vehicle.gvwr}.',
          because: 'What presses on its hitch comes on top.',
          do: 'Take load out of the vehicle, and weigh it again before you hitch up.',
        },
        {
          when: 'alone.payloadIsOver',
          wrong:
            'Weighed alone, without the trailer, the vehicle uses {alone.payloadUsed} of a payload of {vehicle.placardPayload}.',
          because: 'What presses on its hitch comes on top.',
          do: 'Take load out of the vehicle, and weigh it again before you hitch up.',
        },
      ],
      open: {
        wrong: 'Weighed alone, without the trailer, the vehicle may already be over a rating.',
        do: 'The scale cannot tell closer: take load out of the vehicle until it is clearly within.',
      },
      otherwise: 'By what was told, the vehicle alone is within its ratings.',
      source: grossRatings,
    },
  },
});
