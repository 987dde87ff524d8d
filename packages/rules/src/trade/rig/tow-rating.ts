import { part } from '../../engine/define/topic';
import { grossRatings } from '../bibliography/common';
import { altitudeLoss, makersRating, ratedForTwo } from '../bibliography/rig';

/**
 * What it may pull: on a pin by that rating of its own where there is one, on a ball without weight
 * distribution no more than it may pull so.
 */
export const towRating = part({
  parameters: {
    'rating.peopleAssumed': {
      label: 'People that the tow rating was tested with',
      noun: 'the people it was tested with',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 300 }],
      source: ratedForTwo,
    },
  },
  formulas: {
    'coupling.isBall': {
      label: 'It rides on a ball',
      unit: 'yes-no',
      is: "trailer.coupling == 'ball'",
      source: makersRating,
    },
    'coupling.isPin': {
      label: 'It rides on a fifth-wheel pin',
      unit: 'yes-no',
      is: "trailer.coupling == 'fifth-wheel'",
      source: makersRating,
    },
    'trailerWeight.onPin': {
      label: 'Tow rating on a fifth-wheel hitch',
      noun: 'the tow rating on a fifth-wheel hitch',
      unit: 'lb',
      is: 'choose(given(vehicle.maxFifthWheel), vehicle.maxFifthWheel, vehicle.maxTrailerWeight)',
      source: makersRating,
    },
    'trailerWeight.bare': {
      label: 'Tow rating without weight distribution',
      noun: 'the tow rating without weight distribution',
      unit: 'lb',
      is: 'choose(given(vehicle.maxTrailerCarried), choose(given(vehicle.maxTrailerWeight), min(vehicle.maxTrailerWeight, vehicle.maxTrailerCarried), between(0, vehicle.maxTrailerCarried)), vehicle.maxTrailerWeight)',
      source: makersRating,
    },
    'trailerWeight.limit': {
      label: 'Tow rating that counts',
      noun: 'the tow rating',
      unit: 'lb',
      is: 'choose(coupling.isPin, trailerWeight.onPin, choose(distribution.isUsed, vehicle.maxTrailerWeight, trailerWeight.bare))',
      source: makersRating,
    },
    'trailerWeight.isKnown': {
      label: 'The tow rating is known',
      unit: 'yes-no',
      is: 'known(trailerWeight.limit) && (given(vehicle.maxTrailerWeight) || (coupling.isPin && given(vehicle.maxFifthWheel)))',
      source: makersRating,
    },
    'trailerWeight.mayBeMore': {
      label: 'Bars would count with the tow rating',
      unit: 'yes-no',
      is: 'distribution.mayBe && known(vehicle.maxTrailerWeight)',
      source: makersRating,
    },
    'grossRating.isCompared': {
      label: 'Tow rating and trailer’s own are known',
      unit: 'yes-no',
      is: 'trailerWeight.isKnown && known(trailer.gvwr)',
      source: grossRatings,
    },
    'rating.isAlone': {
      label: 'The tow rating is known, the combined one untold',
      unit: 'yes-no',
      is: '!given(vehicle.gcwr) && trailerWeight.isKnown',
      source: ratedForTwo,
    },
    'rating.extraLoad': {
      label: 'Load in the vehicle beyond what it was tested with',
      noun: 'the load beyond what it was tested with',
      unit: 'lb',
      is: 'load.aboard - rating.peopleAssumed',
      source: ratedForTwo,
    },
    'rating.withExtra': {
      label: 'Loaded trailer, and the load in the vehicle that it was not tested with',
      noun: 'the trailer and that load',
      unit: 'lb',
      is: 'trailer.loaded + rating.extraLoad',
      source: ratedForTwo,
    },
    'rating.left': {
      label: 'Tow rating less the load it was not tested with',
      noun: 'what that leaves of the tow rating',
      unit: 'lb',
      is: 'trailerWeight.limit - rating.extraLoad',
      source: ratedForTwo,
    },
    'altitude.thins': {
      label: 'The engine loses power on this road',
      unit: 'yes-no',
      is: 'combined.derated && trip.altitude > 0',
      source: altitudeLoss,
    },
    'rating.atAltitude': {
      label: 'Tow rating in thin air',
      noun: 'the tow rating in thin air',
      unit: 'lb',
      is: 'trailerWeight.limit * (1 - altitude.loss * max(0, trip.altitude))',
      source: altitudeLoss,
    },
  },
  limits: {
    'trailer-weight': {
      label: 'Trailer weight',
      short: 'the tow rating',
      do: 'Tow a lighter trailer, or take out what is loaded where that is enough.',
      exceeded: true,
      used: 'trailer.loaded',
      limit: 'trailerWeight.limit',
      margin: 'margin.towRating',
      relief: {
        when: 'trailerWeight.mayBeMore',
        limit: 'vehicle.maxTrailerWeight',
      },
      source: makersRating,
    },
  },
  findings: {
    'gross-over-rating': {
      label: 'Trailer’s own rating against the tow rating',
      askedBy: ['trailer.gvwr'],
      askedWhen: 'grossRating.isCompared',
      saidOpen: true,
      care: {
        when: 'trailer.gvwr > trailerWeight.limit',
        wrong:
          'The trailer may be loaded to {trailer.gvwr}, more than the {trailerWeight.limit} that may be pulled.',
        because: 'Filled to its own rating it is too heavy for this vehicle.',
        do: 'Weigh it before every long trip, and stay below the tow rating.',
      },
      otherwise: 'The trailer’s own rating is within the tow rating.',
      source: makersRating,
    },
    'rating-assumes': {
      label: 'Load that the tow rating was not tested with',
      askedWhen: 'rating.isAlone',
      care: {
        when: 'rating.extraLoad > tongue.none && rating.withExtra > trailerWeight.limit',
        wrong: 'With what rides in the vehicle the tow rating shrinks to about {rating.left}.',
        because:
          'It was tested with {rating.peopleAssumed} of people; what is aboard beyond that comes off.',
        do: 'Read the combined rating in the manual: it settles it.',
      },
      otherwise: 'No more rides in the vehicle than the tow rating leaves room for.',
      source: ratedForTwo,
    },
    'altitude-unasked': {
      label: 'Tow rating in thin air',
      askedWhen: 'rating.isAlone',
      care: {
        when: 'altitude.thins && trailer.loaded > rating.atAltitude',
        wrong: 'In thin air the engine pulls as if the tow rating were {rating.atAltitude}.',
        because: 'An engine without forced induction loses power with every thousand feet.',
        do: 'Read the combined rating and what the manual takes off it for altitude.',
      },
      otherwise: 'Thin air takes nothing off the tow rating that this trailer needs.',
      source: altitudeLoss,
    },
  },
});
