import { part } from '../../engine/define/topic';
import { makersRating } from '../bibliography/rig';

/** More than the rating without bars and no more than the one with them, and nobody told of any. */
const wanted = (label: string, used: string, relief: string, bare: string, full: string) => ({
  label,
  unit: 'yes-no' as const,
  is: `${relief} && known(${bare}) && ${used} > ${bare} && ${used} <= ${full}`,
  source: makersRating,
});

const because = 'Without one that is more than the maker allows.';
const look =
  'Look whether spring bars run from the ball mount to the trailer’s frame; without them do not tow it so.';

/** Says in words what the limits with a relief leave open. */
export const onlyWithBars = part({
  formulas: {
    'bars.wantedForTongue': wanted(
      'The tongue wants weight distribution, of which nobody told',
      ...(['tongue.loaded', 'tongue.mayBeMore', 'vehicle.maxTongueCarried'] as const),
      'vehicle.maxTongueDistributed',
    ),
    'bars.wantedForTrailer': wanted(
      'The trailer wants weight distribution, of which nobody told',
      ...(['trailer.loaded', 'trailerWeight.mayBeMore', 'vehicle.maxTrailerCarried'] as const),
      'vehicle.maxTrailerWeight',
    ),
    'bars.wantedForReceiver': wanted(
      'The receiver wants weight distribution, of which nobody told',
      ...(['trailer.loaded', 'receiver.mayBeMore', 'hitch.receiverCarried'] as const),
      'hitch.receiverRating',
    ),
    'bars.wantedForReceiverTongue': wanted(
      'The receiver’s tongue rating wants weight distribution, of which nobody told',
      ...(['tongue.loaded', 'receiverTongue.mayBeMore', 'hitch.receiverTongueCarried'] as const),
      'hitch.receiverTongueRating',
    ),
  },
  findings: {
    'only-with-bars': {
      label: 'Only with weight distribution',
      first: true,
      askedWhen: 'distribution.mayBe',
      unknown: [
        {
          when: 'bars.wantedForTongue',
          wrong:
            'On the ball {tongue.loaded} are more than the {tongue.limit} allowed. Only a weight-distributing hitch raises that to {vehicle.maxTongueDistributed}.',
          ...{ because, do: look },
        },
        {
          when: 'bars.wantedForTrailer',
          wrong:
            'Loaded it weighs {trailer.loaded}, more than the {trailerWeight.limit} the vehicle may pull without a weight-distributing hitch.',
          ...{ because, do: look },
        },
        {
          when: 'bars.wantedForReceiverTongue',
          wrong:
            'The receiver may carry {receiverTongue.limit} of tongue; {tongue.loaded} want a weight-distributing hitch.',
          ...{ because, do: look },
        },
        {
          when: 'bars.wantedForReceiver',
          wrong:
            'The receiver may pull {receiver.limit}; {trailer.loaded} want a weight-distributing hitch.',
          ...{ because, do: look },
        },
      ],
      open: {
        wrong:
          'Some of its ratings count only with a weight-distributing hitch; whether one is used is not known yet.',
        do: 'Look whether spring bars run from the ball mount to the trailer’s frame.',
      },
      otherwise: 'No rating is told that only weight distribution would give.',
      source: makersRating,
    },
  },
});
