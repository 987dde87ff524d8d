import { part } from '../../engine/define/topic';
import { custom, grossRatings, statics } from '../bibliography/common';
import { makersRating } from '../bibliography/rig';

/**
 * Axle loads by moments, and what the bars of a weight-distributing hitch move.
 *
 *     front      rear   ball               trailer axles
 *       ├─── w ───┤── b ──┤──────── L ────────┤
 *
 * With no bars the tongue V takes V·b/w off the front axle and puts V·(w + b)/w on the rear. Bars
 * that restore a share r of the front's loss give it back r·V·b/w, put r·V·b/(L + b) on the
 * trailer's axles, and take both off the rear. Their moment M is r·V·b / (1 + b/L).
 */
export const bars = part({
  formulas: {
    'distribution.allowed': {
      label: 'Weight distribution is allowed',
      unit: 'yes-no',
      is: "!given(vehicle.distributionAllowed) || vehicle.distributionAllowed == 'yes'",
      source: makersRating,
    },
    'distribution.inUse': {
      label: 'Weight distribution in use',
      unit: 'yes-no',
      is: "hitch.distribution == 'yes' && distribution.allowed",
      source: makersRating,
    },
    'bars.active': {
      label: 'The bars carry',
      unit: 'yes-no',
      is: 'distribution.inUse && tongue.loaded > 0',
      source: statics,
    },
    'bars.moment': {
      label: 'Moment of the bars',
      noun: 'the moment of the bars',
      unit: 'lb·ft',
      is: 'choose(bars.active, needs(hitch.restored * max(0, tongue.loaded) * vehicle.overhang / (1 + vehicle.overhang / trailer.ballToAxle), hitch.restored, vehicle.overhang, trailer.ballToAxle), 0)',
      source: statics,
    },
    'bars.ontoFront': {
      label: 'What the bars give back to the front axle',
      noun: 'what the bars give back to the front axle',
      unit: 'lb',
      is: 'choose(bars.active, needs(hitch.restored * max(0, tongue.loaded) * vehicle.overhang / vehicle.wheelbase, hitch.restored, vehicle.overhang, trailer.ballToAxle), 0)',
      source: statics,
    },
    'bars.ontoTrailer': {
      label: 'What the bars put on the trailer’s axles',
      noun: 'what the bars put on the trailer’s axles',
      unit: 'lb',
      is: 'choose(bars.active, needs(hitch.restored * max(0, tongue.loaded) * vehicle.overhang / (trailer.ballToAxle + vehicle.overhang), hitch.restored, vehicle.overhang, trailer.ballToAxle), 0)',
      source: statics,
    },
  },
});

export const vehicleAxles = part({
  formulas: {
    'curb.scale': {
      label: 'Curb weight that counts, against the axles’ own',
      unit: '1',
      is: 'largestKnown(1, vehicle.curbWeight / (vehicle.curbFront + vehicle.curbRear), (vehicle.gvwr - vehicle.placardPayload) / (vehicle.curbFront + vehicle.curbRear))',
      source: custom,
    },
    'curb.front': {
      label: 'Front axle, empty',
      noun: 'the empty front axle',
      unit: 'lb',
      is: 'vehicle.curbFront * curb.scale',
      source: statics,
    },
    'curb.rear': {
      label: 'Rear axle, empty',
      noun: 'the empty rear axle',
      unit: 'lb',
      is: 'vehicle.curbRear * curb.scale',
      source: statics,
    },
    'front.withoutTongue': {
      label: 'Front axle with people, cargo and hitch, no trailer',
      noun: 'the front axle without the trailer',
      unit: 'lb',
      is: 'needs(curb.front + sum(load.occupants.weight * load.occupants.ahead) / vehicle.wheelbase + sum(load.cargo.weight * load.cargo.ahead) / vehicle.wheelbase - hitch.hardwareWeight * vehicle.overhang / vehicle.wheelbase, vehicle.curbFront, vehicle.curbRear, vehicle.wheelbase, vehicle.overhang, load.occupants.ahead, load.cargo.ahead)',
      source: statics,
    },
    'rear.withoutTongue': {
      label: 'Rear axle with people, cargo and hitch, no trailer',
      noun: 'the rear axle without the trailer',
      unit: 'lb',
      is: 'needs(curb.rear + sum(load.occupants.weight * (1 - load.occupants.ahead / vehicle.wheelbase)) + sum(load.cargo.weight * (1 - load.cargo.ahead / vehicle.wheelbase)) + hitch.hardwareWeight * (1 + vehicle.overhang / vehicle.wheelbase), vehicle.curbFront, vehicle.curbRear, vehicle.wheelbase, vehicle.overhang, load.occupants.ahead, load.cargo.ahead)',
      source: statics,
    },
    'axle.front': {
      label: 'Front axle',
      noun: 'the front axle',
      unit: 'lb',
      is: 'needs(front.withoutTongue - tongue.loaded * vehicle.overhang / vehicle.wheelbase + bars.ontoFront, vehicle.curbFront, vehicle.curbRear, vehicle.wheelbase, vehicle.overhang, load.occupants.ahead, load.cargo.ahead)',
      source: statics,
    },
    'axle.rear': {
      label: 'Rear axle',
      noun: 'the rear axle',
      unit: 'lb',
      is: 'needs(rear.withoutTongue + tongue.loaded * (1 + vehicle.overhang / vehicle.wheelbase) - bars.ontoTrailer - bars.ontoFront, vehicle.curbFront, vehicle.curbRear, vehicle.wheelbase, vehicle.overhang, load.occupants.ahead, load.cargo.ahead)',
      source: statics,
    },
    'axle.trailer': {
      label: 'Trailer axles together',
      noun: 'the load on the trailer’s axles',
      unit: 'lb',
      is: 'trailer.loaded - tongue.loaded + bars.ontoTrailer',
      source: statics,
    },
  },
  limits: {
    'front-axle': {
      label: 'Front axle',
      short: 'the front axle',
      used: 'axle.front',
      limit: 'vehicle.gawrFront',
      empty: 'curb.front',
      margin: 'margin.other',
      askedBy: ['vehicle.gawrFront'],
      source: grossRatings,
    },
    'rear-axle': {
      label: 'Rear axle',
      short: 'the rear axle',
      used: 'axle.rear',
      limit: 'vehicle.gawrRear',
      empty: 'curb.rear',
      margin: 'margin.other',
      askedBy: ['vehicle.gawrRear'],
      source: grossRatings,
    },
  },
});

export const trailerAxles = part({
  formulas: {
    'trailerAxles.limit': {
      label: 'Rating of all trailer axles',
      noun: 'the rating of the trailer’s axles',
      unit: 'lb',
      is: 'trailer.axles * trailer.gawr',
      source: grossRatings,
    },
  },
  limits: {
    'trailer-axles': {
      label: 'Trailer axles',
      short: 'the trailer’s axles',
      plural: true,
      used: 'axle.trailer',
      limit: 'trailerAxles.limit',
      margin: 'margin.other',
      askedBy: ['trailer.gawr'],
      source: grossRatings,
    },
  },
});
