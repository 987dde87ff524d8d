import { part } from '../../engine/define/topic';
import {
  custom,
  grossRatings,
  partsRating as makersRating,
  statics,
} from '../../trade/bibliography/common';

/**
 * Axle loads by moments: the camper at its center of gravity c, a tongue on an extension e behind
 * the ball's usual place.
 *
 *     front           c   rear   ball
 *       ├──────── w ──┴────┤── b ──┤─ e ─┤
 *
 * A tongue out on an extension lifts the front by V·(b + e)/w and puts V·(1 + (b + e)/w) on the rear.
 */
export const axles = part({
  formulas: {
    'axle.front': {
      label: 'Front axle',
      noun: 'the front axle',
      unit: 'lb',
      is: 'front.withoutCamper + camper.moment / vehicle.wheelbase + choose(trailer.isTold, tongue.onFront, 0)',
      source: statics,
    },
    'axle.rear': {
      label: 'Rear axle',
      noun: 'the rear axle',
      unit: 'lb',
      is: 'rear.withoutCamper + camper.loaded - camper.moment / vehicle.wheelbase + choose(trailer.isTold, tongue.onRear, 0)',
      source: statics,
    },
    'tire.rear': {
      label: 'One rear tire',
      noun: 'one rear tire',
      unit: 'lb',
      is: 'axle.rear / tire.rearCount',
      source: statics,
    },
    'tire.rearEmpty': {
      label: 'One rear tire, empty',
      noun: 'one rear tire, empty',
      unit: 'lb',
      is: 'curb.rear / tire.rearCount',
      source: statics,
    },
  },
  limits: {
    'front-axle': {
      label: 'Front axle',
      short: 'the front axle',
      do: 'Take load out, and weigh each axle again.',
      near: 'Take nothing more aboard, and weigh each axle before the trip.',
      used: 'axle.front',
      limit: 'vehicle.gawrFront',
      empty: 'curb.front',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.gawrFront'],
      source: grossRatings,
    },
    'rear-axle': {
      label: 'Rear axle',
      short: 'the rear axle',
      do: 'Take out what rides behind the rear axle, and weigh each axle again.',
      near: 'Take nothing more aboard, and weigh each axle before the trip.',
      used: 'axle.rear',
      limit: 'vehicle.gawrRear',
      empty: 'curb.rear',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['vehicle.gawrRear'],
      source: grossRatings,
    },
    'vehicle-tires-rear': {
      label: 'Rear tires',
      short: 'the rear tires',
      do: 'Take load out, or have a tire shop fit tires rated for more.',
      near: 'Take nothing more aboard, and check these tires cold before every drive.',
      plural: true,
      used: 'tire.rear',
      limit: 'tire.rearCapacity',
      empty: 'tire.rearEmpty',
      margin: 'margin.other',
      askedBy: ['vehicle.tireCapacityRear'],
      source: makersRating,
    },
  },
  findings: {
    'front-light': {
      label: 'Front axle lighter than empty',
      askedBy: ['vehicle.curbFront'],
      care: {
        when: 'axle.front < curb.front',
        wrong:
          'The front axle carries less than it does empty: {axle.front} instead of {curb.front}.',
        because: 'The steering and the front brakes go light.',
        do: 'Move weight forward, or leave the extension and what hangs on it.',
      },
      open: { wrong: 'The front axle may carry less than it does empty.', do: 'Weigh both axles.' },
      otherwise: 'The front axle carries at least what it does empty.',
      source: custom,
    },
  },
});
