import { part } from '../../engine/define/topic';
import { ballSizes, makersRating } from '../bibliography/rig';

const rated = { used: 'trailer.loaded', margin: 'margin.other', source: makersRating } as const;

/** Receiver: the smaller of its two ratings where no weight distribution is in use. */
export const receiver = part({
  formulas: {
    'receiver.limit': {
      label: 'Receiver rating that counts',
      noun: 'the receiver’s rating',
      unit: 'lb',
      is: 'choose(distribution.inUse || !given(hitch.receiverCarried), hitch.receiverRating, choose(given(hitch.receiverRating), min(hitch.receiverRating, hitch.receiverCarried), hitch.receiverCarried))',
      source: makersRating,
    },
    'receiverTongue.limit': {
      label: 'Receiver tongue rating that counts',
      noun: 'the receiver’s tongue rating',
      unit: 'lb',
      is: 'choose(distribution.inUse || !given(hitch.receiverTongueCarried), hitch.receiverTongueRating, choose(given(hitch.receiverTongueRating), min(hitch.receiverTongueRating, hitch.receiverTongueCarried), hitch.receiverTongueCarried))',
      source: makersRating,
    },
  },
  limits: {
    receiver: {
      ...rated,
      label: 'Receiver',
      short: 'the receiver',
      limit: 'receiver.limit',
      askedBy: ['hitch.receiverRating', 'hitch.receiverCarried'],
    },
    'receiver-tongue': {
      ...rated,
      label: 'Receiver’s tongue rating',
      short: 'the receiver’s tongue rating',
      exceeded: true,
      used: 'tongue.loaded',
      limit: 'receiverTongue.limit',
      askedBy: ['hitch.receiverTongueRating', 'hitch.receiverTongueCarried'],
    },
  },
});

/** Ball mount, ball and coupler, each by the rating stamped on it. */
export const couplings = part({
  limits: {
    'ball-mount': {
      ...rated,
      label: 'Ball mount',
      short: 'the ball mount',
      limit: 'hitch.mountRating',
      askedBy: ['hitch.mountRating'],
    },
    ball: {
      ...rated,
      label: 'Ball',
      short: 'the ball',
      limit: 'hitch.ballRating',
      askedBy: ['hitch.ballRating'],
    },
    coupler: {
      ...rated,
      label: 'Coupler',
      short: 'the coupler',
      limit: 'trailer.couplerRating',
      askedBy: ['trailer.couplerRating'],
    },
  },
  findings: {
    'ball-size': {
      label: 'Ball size',
      askedByKnown: ['hitch.ballSize', 'trailer.couplerSize'],
      stop: {
        when: {
          all: [
            { fact: 'trailer.coupling', operator: 'equal', value: 'ball' },
            {
              fact: 'hitch.ballSize',
              operator: 'notEqual',
              value: { fact: 'trailer.couplerSize' },
            },
          ],
        },
        wrong: 'The ball is not the size the coupler takes.',
        do: 'The coupler can come off the ball. Fit the right ball before it moves.',
      },
      otherwise: 'The ball is the size the coupler takes.',
      source: ballSizes,
    },
  },
});
