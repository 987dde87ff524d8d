import { part } from '../../engine/define/topic';
import {
  custom,
  grossRatings,
  payloadLabel,
  statics,
  tongueBand,
} from '../../trade/bibliography/common';
import { combinedRating, makersRating } from '../../trade/bibliography/rig';

/**
 * The largest trailer, as loaded, that keeps every asked limit of vehicle and hitch within its
 * rating. Its tongue is the present share, but not under the least usual one; what belongs to the
 * present trailer is left out. Each line below is one limit solved for the trailer's weight.
 */
export const largest = part({
  parameters: {
    'shopping.fromShare': {
      label: 'Shopping window, lower end, of the tow rating',
      unit: '1',
      values: [{ from: '2020-01-01', value: 5 / 6 }],
      source: custom,
    },
    'shopping.toShare': {
      label: 'Shopping window, upper end, of the tow rating',
      unit: '1',
      values: [{ from: '2020-01-01', value: 11 / 12 }],
      source: custom,
    },
  },
  formulas: {
    'shopping.from': {
      label: 'Shop from a maximum trailer weight of',
      unit: 'lb',
      is: 'vehicle.maxTrailerWeight * shopping.fromShare',
      source: custom,
    },
    'shopping.to': {
      label: 'Shop to a maximum trailer weight of',
      unit: 'lb',
      is: 'vehicle.maxTrailerWeight * shopping.toShare',
      source: custom,
    },
    'largest.share': {
      label: 'Tongue share of the largest trailer',
      unit: '1',
      is: 'max(tongue.share, tongue.leastShare)',
      source: tongueBand,
    },
    'largest.byTongue': {
      label: 'Largest trailer by tongue rating',
      unit: 'lb',
      is: 'tongue.limit / largest.share',
      source: makersRating,
    },
    'largest.byPayload': {
      label: 'Largest trailer by payload',
      unit: 'lb',
      is: '(payload.available - load.aboard) / largest.share',
      source: payloadLabel,
    },
    'largest.byVehicleGross': {
      label: 'Largest trailer by the vehicle’s gross rating',
      unit: 'lb',
      is: 'choose(given(vehicle.gvwr), (vehicle.gvwr - vehicle.curb - load.aboard) / largest.share, unlimited)',
      source: grossRatings,
    },
    'largest.byCombined': {
      label: 'Largest trailer by combined rating',
      unit: 'lb',
      is: 'choose(given(vehicle.gcwr), combined.limit - vehicle.curb - load.aboard, unlimited)',
      source: combinedRating,
    },
    'front.perTongue': {
      label: 'What a pound of tongue takes off the front axle',
      unit: '1',
      is: 'vehicle.overhang / vehicle.wheelbase * (1 - choose(distribution.inUse, needs(hitch.restored, hitch.restored, vehicle.overhang, trailer.ballToAxle), 0))',
      source: statics,
    },
    'rear.perTongue': {
      label: 'What a pound of tongue puts on the rear axle',
      unit: '1',
      is: '1 + vehicle.overhang / vehicle.wheelbase - choose(distribution.inUse, needs(hitch.restored * (vehicle.overhang / (trailer.ballToAxle + vehicle.overhang) + vehicle.overhang / vehicle.wheelbase), hitch.restored, vehicle.overhang, trailer.ballToAxle), 0)',
      source: statics,
    },
    'largest.byRearAxle': {
      label: 'Largest trailer by the rear axle',
      unit: 'lb',
      is: 'choose(given(vehicle.gawrRear), (vehicle.gawrRear - rear.withoutTongue) / (largest.share * rear.perTongue), unlimited)',
      source: grossRatings,
    },
    'largest.byRearTires': {
      label: 'Largest trailer by the rear tires',
      unit: 'lb',
      is: 'choose(given(vehicle.tireCapacityRear), (vehicle.tireCapacityRear * tire.rearCount - rear.withoutTongue) / (largest.share * rear.perTongue), unlimited)',
      source: makersRating,
    },
    'largest.byReceiver': {
      label: 'Largest trailer by the receiver',
      unit: 'lb',
      is: 'choose(given(hitch.receiverRating) || given(hitch.receiverCarried), receiver.limit, unlimited)',
      source: makersRating,
    },
    'largest.byReceiverTongue': {
      label: 'Largest trailer by the receiver’s tongue rating',
      unit: 'lb',
      is: 'choose(given(hitch.receiverTongueRating) || given(hitch.receiverTongueCarried), receiverTongue.limit / largest.share, unlimited)',
      source: makersRating,
    },
    'largest.byMount': {
      label: 'Largest trailer by the ball mount',
      unit: 'lb',
      is: 'choose(given(hitch.mountRating), hitch.mountRating, unlimited)',
      source: makersRating,
    },
    'largest.byBall': {
      label: 'Largest trailer by the ball',
      unit: 'lb',
      is: 'choose(given(hitch.ballRating), hitch.ballRating, unlimited)',
      source: makersRating,
    },
    'largest.byDistribution': {
      label: 'Largest trailer without weight distribution',
      unit: 'lb',
      is: 'choose(distribution.inUse || !given(vehicle.distributionRequiredAbove), unlimited, vehicle.distributionRequiredAbove)',
      source: makersRating,
    },
    'largest.atMost': {
      label: 'Largest trailer by all that it loads',
      unit: 'lb',
      is: 'min(trailerWeight.limit, largest.byTongue, largest.byPayload, largest.byVehicleGross, largest.byCombined, largest.byRearAxle, largest.byRearTires, largest.byReceiver, largest.byReceiverTongue, largest.byMount, largest.byBall, largest.byDistribution)',
      source: statics,
    },
    'front.atLargest': {
      label: 'Front axle with the largest trailer',
      unit: 'lb',
      is: 'front.withoutTongue - largest.share * largest.atMost * front.perTongue',
      source: statics,
    },
    'largest.frontFits': {
      label: 'The front axle is within its ratings with the largest trailer',
      unit: 'yes-no',
      is: '(!given(vehicle.gawrFront) || front.atLargest <= vehicle.gawrFront) && (!given(vehicle.tireCapacityFront) || front.atLargest / 2 <= vehicle.tireCapacityFront)',
      source: grossRatings,
    },
    'largest.trailer': {
      label: 'Largest trailer that fits, as loaded',
      unit: 'lb',
      is: 'needs(choose(largest.frontFits, largest.atMost, 0), tongue.share)',
      source: statics,
    },
  },
});
