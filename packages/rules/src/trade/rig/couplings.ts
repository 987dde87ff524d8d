import { part } from '../../engine/define/topic';
import { ballSizes, extensionLoss, makersRating } from '../bibliography/rig';

const onBall = { margin: 'margin.other', askedWhen: 'coupling.isBall' } as const;
const ofTrailer = { ...onBall, used: 'trailer.loaded', source: makersRating } as const;
const ofTongue = { ...onBall, used: 'tongue.loaded', source: makersRating } as const;

/** With bars, a rating that nobody told is at least what it carries without them. */
const withBars = (full: string, bare: string): string =>
  `choose(given(${full}) || !known(${bare}), ${full}, max(${full}, ${bare}))`;
/** Without bars, the smaller of its two ratings. */
const withoutBars = (full: string, bare: string): string =>
  `choose(given(${full}) && given(${bare}), min(${full}, ${bare}), choose(given(${full}), ${full}, ${bare}))`;

const ratings = ['hitch.receiverRating', 'hitch.receiverCarried'] as const;
const tongueRatings = ['hitch.receiverTongueRating', 'hitch.receiverTongueCarried'] as const;

/** Receiver: the smaller of its two ratings where no weight distribution is in use. */
export const receiver = part({
  formulas: {
    'receiver.withBars': {
      label: 'Receiver rating with weight distribution',
      noun: 'the receiver’s rating with weight distribution',
      unit: 'lb',
      is: withBars(...ratings),
      source: makersRating,
    },
    'receiver.bare': {
      label: 'Receiver rating without weight distribution',
      noun: 'the receiver’s rating without weight distribution',
      unit: 'lb',
      is: withoutBars(...ratings),
      source: makersRating,
    },
    'receiver.limit': {
      label: 'Receiver rating that counts',
      noun: 'the receiver’s rating',
      unit: 'lb',
      is: 'choose(distribution.isUsed, receiver.withBars, receiver.bare)',
      source: makersRating,
    },
    'receiver.mayBeMore': {
      label: 'Bars would count with the receiver’s rating',
      unit: 'yes-no',
      is: 'distribution.mayBe && known(hitch.receiverRating)',
      source: makersRating,
    },
    'receiverTongue.withBars': {
      label: 'Receiver tongue rating with weight distribution',
      noun: 'the receiver’s tongue rating with weight distribution',
      unit: 'lb',
      is: withBars(...tongueRatings),
      source: makersRating,
    },
    'receiverTongue.bare': {
      label: 'Receiver tongue rating without weight distribution',
      noun: 'the receiver’s tongue rating without weight distribution',
      unit: 'lb',
      is: withoutBars(...tongueRatings),
      source: makersRating,
    },
    'receiverTongue.limit': {
      label: 'Receiver tongue rating that counts',
      noun: 'the receiver’s tongue rating',
      unit: 'lb',
      is: 'choose(distribution.isUsed, receiverTongue.withBars, receiverTongue.bare)',
      source: makersRating,
    },
    'receiverTongue.mayBeMore': {
      label: 'Bars would count with the receiver tongue rating',
      unit: 'yes-no',
      is: 'distribution.mayBe && known(hitch.receiverTongueRating)',
      source: makersRating,
    },
  },
  limits: {
    receiver: {
      ...ofTrailer,
      label: 'Receiver',
      short: 'the receiver',
      do: 'Tow a lighter trailer, or have a receiver rated for this one fitted.',
      limit: 'receiver.limit',
      askedBy: ratings,
      relief: { when: 'receiver.mayBeMore', limit: 'hitch.receiverRating' },
    },
    'receiver-tongue': {
      ...ofTongue,
      label: 'Receiver’s tongue rating',
      short: 'the receiver’s tongue rating',
      do: 'Take load from the trailer’s nose, keep a tenth of the trailer on the ball, and weigh it again.',
      exceeded: true,
      limit: 'receiverTongue.limit',
      askedBy: tongueRatings,
      relief: { when: 'receiverTongue.mayBeMore', limit: 'hitch.receiverTongueRating' },
    },
  },
});

/** An extension carries the ball further back, and the receiver then carries less. */
export const extension = part({
  formulas: {
    'extension.isTold': {
      label: 'Somebody told of a hitch extension',
      unit: 'yes-no',
      is: 'given(hitch.extensionRating) || (known(hitch.extension) && may(hitch.extension > 0))',
      source: extensionLoss,
    },
    'extension.isAsked': {
      label: 'There is a hitch extension',
      unit: 'yes-no',
      is: 'coupling.isBall && extension.isTold',
      source: extensionLoss,
    },
    'extension.isMentioned': {
      label: 'There is or may be a hitch extension',
      unit: 'yes-no',
      is: 'extension.isAsked || (coupling.isBall && given(hitch.extension) && !known(hitch.extension))',
      source: extensionLoss,
    },
    'extension.isRated': {
      label: 'The extension’s rating is known',
      unit: 'yes-no',
      is: 'known(hitch.extensionRating)',
      source: extensionLoss,
    },
  },
  limits: {
    extension: {
      ...ofTongue,
      label: 'Tongue weight on the extension',
      short: 'the extension',
      do: 'Take the extension out, or fit one rated for what rests on the ball.',
      limit: 'hitch.extensionRating',
      askedWhen: 'extension.isAsked',
      source: extensionLoss,
    },
  },
  findings: {
    'extension-rating': {
      label: 'Rating with the extension',
      first: true,
      askedWhen: 'extension.isMentioned',
      if: {
        when: '!extension.isRated',
        wrong: 'What may rest on the ball with the extension in is not known yet.',
        because: 'With one, receivers lose a third to a half of their rating.',
        do: 'Read the extension’s own label, or ask the receiver’s maker, before it is towed so.',
        proviso: 'what rests on the ball stays within the rating with the extension in',
      },
      open: {
        wrong: 'There may be an extension in, and its rating is not known yet.',
        do: 'Look, and read its own label.',
      },
      otherwise: 'It is told what may rest on the ball with the extension in.',
      source: extensionLoss,
    },
  },
});

/** Ball mount, ball and coupler, each by what is stamped on it; mounts and couplers have two stamps. */
export const couplings = part({
  formulas: {
    'ballSize.isAsked': {
      label: 'Both ball and coupler were mentioned',
      unit: 'yes-no',
      is: 'coupling.isBall && given(hitch.ballSize, trailer.couplerSize)',
      source: ballSizes,
    },
    'ballSize.isKnown': {
      label: 'The sizes of ball and coupler are known',
      unit: 'yes-no',
      is: 'known(hitch.ballSize, trailer.couplerSize)',
      source: ballSizes,
    },
  },
  limits: {
    'ball-mount': {
      ...ofTrailer,
      label: 'Ball mount',
      short: 'the ball mount',
      do: 'Fit a ball mount rated for this trailer before it moves.',
      limit: 'hitch.mountRating',
      askedBy: ['hitch.mountRating'],
    },
    'ball-mount-tongue': {
      ...ofTongue,
      label: 'Ball mount’s tongue rating',
      short: 'the ball mount’s tongue rating',
      do: 'Fit a ball mount with a higher tongue stamp before it moves.',
      exceeded: true,
      limit: 'hitch.mountTongueRating',
      askedBy: ['hitch.mountTongueRating'],
    },
    ball: {
      ...ofTrailer,
      label: 'Ball',
      short: 'the ball',
      do: 'Fit a ball rated for this trailer before it moves.',
      limit: 'hitch.ballRating',
      askedBy: ['hitch.ballRating'],
    },
    coupler: {
      ...ofTrailer,
      label: 'Coupler',
      short: 'the coupler',
      do: 'Take load out, or have a coupler rated for this trailer fitted.',
      limit: 'trailer.couplerRating',
      askedBy: ['trailer.couplerRating'],
    },
    'coupler-tongue': {
      ...ofTongue,
      label: 'Coupler’s tongue rating',
      short: 'the coupler’s tongue rating',
      do: 'Take load from the trailer’s nose, keep a tenth of the trailer on the ball, and weigh it again.',
      exceeded: true,
      limit: 'trailer.couplerTongueRating',
      askedBy: ['trailer.couplerTongueRating'],
    },
  },
  findings: {
    'ball-size': {
      label: 'Ball size',
      askedBy: ['hitch.ballSize', 'trailer.couplerSize'],
      askedWhen: 'ballSize.isAsked',
      stop: {
        when: 'ballSize.isKnown && hitch.ballSize != trailer.couplerSize',
        wrong: 'The ball is {hitch.ballSize}, and the coupler takes {trailer.couplerSize}.',
        because: 'The coupler can come off the ball on the road.',
        // Either may be what is wrong.
        do: 'Ball and coupler must be of one size before it moves: the one that the trailer’s weight takes.',
      },
      if: {
        when: '!ballSize.isKnown',
        wrong: 'Whether ball and coupler are of one size is not known.',
        because: 'A coupler on too small a ball latches, and comes off on the road.',
        do: 'Read the stamp on the ball and the one on the coupler.',
        proviso: 'ball and coupler are of one size',
      },
      open: {
        wrong: 'The ball may not be the size that the coupler takes.',
        because: 'A coupler on too small a ball latches, and comes off on the road.',
        do: 'Read the stamp on the ball and the one on the coupler.',
      },
      otherwise: 'The ball is the size the coupler takes.',
      source: ballSizes,
    },
  },
});
