import { part } from '../../engine/define/topic';
import { custom, grossRatings, house, payloadLabel, weights } from '../bibliography/common';
import { cargoLabel, occupantMass, waterWeight } from '../bibliography/rig';

/** How much of a rating is kept free: a matter of the house, within bounds. */
export const margins = part({
  parameters: {
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
    'margin.least': {
      label: 'Least that is kept free where people load by hand',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 50 }],
      range: [0, 200],
      source: house,
    },
  },
});

/**
 * What trailer and vehicle weigh, loaded.
 *
 *     ├─ dry ─┼─ options ─┼─ cargo ─┼ water ┼ gas ┤      trailer.loaded
 *     ├── or GVWR − label ┤                              trailer.unloaded
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
    'occupant.weight': {
      label: 'Weight of an occupant',
      noun: 'the weight of an occupant',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 150 }],
      source: occupantMass,
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
    'trailer.byBrochure': {
      label: 'Dry weight with its options',
      noun: 'the dry weight with its options',
      unit: 'lb',
      is: 'trailer.dryWeight + sum(trailer.options.weight)',
      source: weights,
    },
    'trailer.byLabel': {
      label: 'Trailer unloaded, by its own cargo label',
      noun: 'its own label’s word on it',
      unit: 'lb',
      is: 'trailer.gvwr - trailer.cargoCapacity',
      source: cargoLabel,
    },
    'trailer.unloaded': {
      label: 'Trailer weight, unloaded',
      noun: 'the trailer unloaded',
      unit: 'lb',
      // An option nobody has weighed leaves the brochure’s figure open above, and what it proves stands.
      is: 'choose(known(trailer.dryWeight), choose(known(trailer.byLabel), max(trailer.byBrochure, trailer.byLabel), trailer.byBrochure), choose(known(trailer.byLabel), trailer.byLabel, needs(trailer.byBrochure, trailer.dryWeight)))',
      source: cargoLabel,
    },
    'trailer.loaded': {
      label: 'Trailer weight, loaded',
      noun: 'the loaded trailer',
      unit: 'lb',
      is: 'trailer.unloaded + sum(trailer.cargo.weight) + trailer.waterWeight + trailer.propane',
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
      is: 'choose(given(load.occupants), sum(load.occupants.weight), occupant.weight)',
      within: ['0', 'unlimited'],
      source: occupantMass,
    },
    'load.things': {
      label: 'Cargo in the vehicle',
      unit: 'lb',
      is: 'sum(load.cargo.weight)',
      source: weights,
    },
    'load.aboard': {
      label: 'Load in the vehicle: people, cargo, hitch hardware and a camper in the bed',
      noun: 'the load in the vehicle',
      unit: 'lb',
      is: 'load.people + load.things + hitch.hardwareWeight + camper.aboard',
      source: payloadLabel,
    },
  },
});

/** The trailer's own rating. */
export const trailerGross = part({
  limits: {
    'trailer-gross': {
      label: 'Trailer’s own rating',
      short: 'the trailer’s own rating',
      do: 'Take load out of the trailer, water first if the site has some, and weigh it again.',
      exceeded: true,
      used: 'trailer.loaded',
      limit: 'trailer.gvwr',
      empty: 'trailer.unloaded',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      source: grossRatings,
    },
  },
});
