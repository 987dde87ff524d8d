import { part } from '../../engine/define/topic';
import { house, statics, tongueBand } from '../bibliography/common';

const asked = {
  askedBy: ['trailer.dryTongueWeight', 'trailer.measuredTongueWeight'],
  askedWhen: 'tongue.isKnown',
} as const;

const light = 'Too light a tongue lets the trailer sway.';
const guess = 'The tenth on the dry tongue knows nothing of how it is packed.';
const heavy = 'Too heavy a tongue presses the rear down and takes load off the front wheels.';

/** Heavier on the ball than is usual; one by itself, as sway has it only of a loaded trailer. */
export const heavyOnBall = {
  when: 'coupling.isBall && tongue.share > tongue.highEdge',
  wrong:
    '{tongue.share} of the trailer rests on the ball, as told; {tongue.lowEdge} to {tongue.highEdge} is usual.',
  because: heavy,
  do: 'If a scale agrees, move load back toward the axles, not behind them.',
} as const;

/** What the tongue’s share says, and how well it is known. */
export const tongueFindings = part({
  findings: {
    'tongue-share': {
      ...asked,
      label: 'Tongue share',
      stop: [
        {
          when: 'coupling.isBall && tongue.share < tongue.stopEdge',
          wrong: '{tongue.share} of the trailer rests on the ball: the trailer is likely to sway.',
          because:
            '{tongue.lowEdge} to {tongue.highEdge} is usual; below {tongue.stopEdge} a gust or a passing truck is enough.',
          do: 'Do not tow so. Take load out behind or move it ahead of the axles, until a tenth rests on the ball, and weigh the tongue again.',
        },
        {
          when: 'coupling.isPin && tongue.share < tongue.stopEdge',
          wrong: '{tongue.share} of the trailer rests on the pin: the trailer is likely to sway.',
          because: '{tongue.lowEdge} to {tongue.highEdge} is usual on a pin.',
          do: 'Do not tow so: move load ahead of the axles and weigh the pin again.',
        },
        {
          when: 'tongue.share < tongue.stopEdge',
          wrong:
            '{tongue.share} of the trailer rests on its coupling: the trailer is likely to sway.',
          do: 'Do not tow so: move load ahead of the axles and weigh the tongue again.',
        },
      ],
      care: [
        {
          when: 'coupling.isBall && tongue.share < tongue.lowEdge',
          wrong:
            'Only {tongue.share} of the trailer rests on the ball, as told; {tongue.lowEdge} to {tongue.highEdge} is usual.',
          because: light,
          do: 'If a scale agrees, load ahead of the axles.',
        },
        heavyOnBall,
        {
          when: 'coupling.isPin && tongue.share < tongue.lowEdge',
          wrong:
            'Only {tongue.share} of the trailer rests on the pin, as told; {tongue.lowEdge} to {tongue.highEdge} is usual.',
          because: light,
          do: 'If a scale agrees, load ahead of the axles.',
        },
        {
          when: 'coupling.isPin && tongue.share > tongue.highEdge',
          wrong:
            '{tongue.share} of the trailer rests on the pin, as told; {tongue.lowEdge} to {tongue.highEdge} is usual.',
          because: 'Too heavy a pin overloads the rear axle.',
          do: 'If a scale agrees, move load back toward the axles, not behind them.',
        },
        {
          when: 'tongue.share < tongue.lowEdge || tongue.share > tongue.highEdge',
          wrong: '{tongue.share} of the trailer rests on its coupling, outside the usual band.',
          do: 'Find out whether it rides on a ball or a pin, and weigh the tongue.',
        },
      ],
      open: {
        wrong:
          'What share of the trailer rests on the ball or pin is not certain; {tongue.lowEdge} to {tongue.highEdge} is usual.',
        because: `${light} ${heavy}`,
        do: 'Weigh the tongue and the trailer as they are loaded for the road.',
      },
      otherwise: 'The tongue carries {tongue.share} of the trailer, which is usual.',
      source: tongueBand,
    },
    'tail-unreckoned': {
      label: 'Load behind the axles',
      first: true,
      askedWhen: 'tail.isUnreckoned',
      unknown: {
        when: 'tail.isUnreckoned',
        wrong: 'Load behind the axles lightens the ball; by how much is not known yet.',
        do: 'Weigh the tongue, loaded as for the road, before you count on it.',
      },
      otherwise: 'None is left out.',
      source: statics,
    },
    'tongue-estimate': {
      ...asked,
      label: 'Tongue, weighed or not',
      care: [
        {
          when: 'coupling.isBall && tongue.isEstimate && tongue.limitKnown && tongue.heavyOnBall > tongue.limit',
          wrong:
            'The tongue weight is only estimated: {tongue.heavyOnBall} would be as common, and no more than {tongue.limit} may rest on the ball.',
          because: guess,
          do: 'Weigh the tongue, loaded as for the road, before you count on it.',
        },
        {
          when: 'coupling.isPin && tongue.isEstimate && pin.limitKnown && tongue.heavyOnPin > pin.limit',
          wrong:
            'The pin weight is only estimated: {tongue.heavyOnPin} would be as common, and no more than {pin.limit} may rest there.',
          because: guess,
          do: 'Weigh the tongue, loaded as for the road, before you count on it.',
        },
        {
          when: 'tongue.isEstimate && payload.availableKnown && payload.heavy > payload.available',
          wrong:
            'The tongue weight is only estimated: {tongue.heavy} would be as common, and would break the payload.',
          because: guess,
          do: 'Weigh the tongue, loaded as for the road, before you count on it.',
        },
        {
          when: 'tongue.isEstimate && tongue.lightShare < tongue.stopEdge',
          wrong:
            'The tongue weight is only estimated; with the water aboard behind the axles its share could be {tongue.lightShare}.',
          because: light,
          do: 'Weigh the tongue with the tanks as they will be on the road.',
        },
      ],
      open: {
        wrong: 'The tongue weight is only estimated, and may be heavier or lighter than is good.',
        because: guess,
        do: 'Weigh the tongue, loaded as for the road, before you count on it.',
      },
      otherwise:
        'A common heavier tongue would still be within its limits, or the tongue is known.',
      source: house,
    },
    'tongue-negative': {
      ...asked,
      label: 'Tongue lifts',
      stop: {
        when: 'tongue.loaded < tongue.none',
        wrong: 'The tongue lifts on the ball instead of pressing on it.',
        because: 'The trailer is loaded too far back: it will sway, and may lift the rear wheels.',
        do: 'Do not tow the trailer so; move load ahead of the axles.',
      },
      open: {
        wrong: 'The tongue may lift on the ball instead of pressing on it.',
        because: 'That hangs on where things ride in the trailer.',
        do: 'Tell where the heavy things ride, or weigh the tongue.',
      },
      otherwise: 'The tongue presses down on the ball.',
      source: statics,
    },
  },
});
