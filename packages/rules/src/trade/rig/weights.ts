import { part } from '../../engine/define/topic';
import { custom, grossRatings, house, weights } from '../bibliography/common';
import { makersRating, occupantMass, waterWeight } from '../bibliography/rig';

/**
 * What trailer and vehicle weigh, loaded.
 *
 *     ├─ dry ─┼─ options ─┼─ cargo ─┼ water ┼ gas ┤      trailer.loaded
 */
export const loadedWeights = part({
  parameters: {
    'water.density': {
      label: 'Weight of water',
      noun: 'the weight of water',
      unit: 'lb/gal',
      values: [{ from: '2020-01-01', value: 8.34 }],
      source: waterWeight,
    },
    'margin.towRating': {
      label: 'Margin kept below the tow rating',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [5, 25],
      source: house,
    },
    'margin.other': {
      label: 'Margin kept below every other weight limit',
      unit: '%',
      values: [{ from: '2020-01-01', value: 5 }],
      range: [0, 15],
      source: house,
    },
  },
  formulas: {
    'trailer.waterWeight': {
      label: 'Water aboard the trailer',
      noun: 'water aboard',
      unit: 'lb',
      is: '(trailer.freshWater + trailer.grayWater + trailer.blackWater) * water.density',
      source: waterWeight,
    },
    'trailer.loaded': {
      label: 'Trailer weight, loaded',
      noun: 'the loaded trailer',
      unit: 'lb',
      is: 'trailer.dryWeight + sum(trailer.options.weight) + sum(trailer.cargo.weight) + trailer.waterWeight + trailer.propane',
      source: weights,
    },
    'vehicle.curb': {
      label: 'Curb weight that counts',
      noun: 'the empty vehicle',
      unit: 'lb',
      is: 'largestKnown(vehicle.curbWeight, vehicle.curbFront + vehicle.curbRear, vehicle.gvwr - vehicle.placardPayload)',
      source: custom,
    },
    'load.people': {
      label: 'People and animals',
      unit: 'lb',
      is: 'sum(load.occupants.weight)',
      source: occupantMass,
    },
    'load.things': {
      label: 'Cargo in the vehicle',
      unit: 'lb',
      is: 'sum(load.cargo.weight)',
      source: weights,
    },
    'load.aboard': {
      label: 'People, cargo and hitch hardware',
      unit: 'lb',
      is: 'load.people + load.things + hitch.hardwareWeight',
      source: weights,
    },
    'trailerWeight.limit': {
      label: 'Tow rating that counts',
      noun: 'the tow rating',
      unit: 'lb',
      is: 'choose(distribution.inUse || !given(vehicle.maxTrailerCarried), vehicle.maxTrailerWeight, min(vehicle.maxTrailerWeight, vehicle.maxTrailerCarried))',
      source: makersRating,
    },
  },
  limits: {
    'trailer-weight': {
      label: 'Trailer weight',
      short: 'the tow rating',
      exceeded: true,
      used: 'trailer.loaded',
      limit: 'trailerWeight.limit',
      margin: 'margin.towRating',
      source: makersRating,
    },
  },
});

/** The trailer's own rating. */
export const trailerGross = part({
  limits: {
    'trailer-gross': {
      label: 'Trailer’s own rating',
      short: 'the trailer’s own rating',
      exceeded: true,
      used: 'trailer.loaded',
      limit: 'trailer.gvwr',
      empty: 'trailer.dryWeight',
      margin: 'margin.other',
      source: grossRatings,
    },
  },
});
