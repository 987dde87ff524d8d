import { part } from '../../engine/define/topic';
import {
  custom,
  grossRatings,
  partsRating as makersRating,
  payloadLabel,
  statics,
} from '../../trade/bibliography/common';
import { camperLoading } from '../../trade/bibliography/truck-camper';

/**
 * What the camper weighs on the road, and what may carry it.
 *
 *     ├─ camper ─┼ options ┼ cargo ┼ water ┼ gas ┼ riders ┤             camper.loaded
 *     ├─────────────────────── camper.loaded ─────────────┼ things ┼ tongue ┤   bed.load
 *     ├──────────────────────────── bed.load ──────────────────────┼ people ┤   payload.used
 *
 * Two ratings, never mixed: the cargo weight rating has 150 lb for each seat taken off already; the
 * payload on the door label has nothing taken off, so that people count in full.
 */
export const camperLoad = part({
  parameters: {
    'seat.allowance': {
      label: 'What the cargo weight rating leaves for each seat',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 150 }],
      source: camperLoading,
    },
  },
  formulas: {
    'camper.water': {
      label: 'Fresh water, by weight',
      noun: 'the water',
      unit: 'lb',
      is: 'camper.freshWater * water.density',
      source: statics,
    },
    'camper.loaded': {
      label: 'Camper, loaded',
      noun: 'the loaded camper',
      unit: 'lb',
      is: 'camper.weight + sum(camper.options.weight) + sum(camper.cargo.weight) + camper.water + camper.propane + sum(camper.riders.weight)',
      source: camperLoading,
    },
    'bed.load': {
      label: 'Camper and all cargo',
      noun: 'the camper and all cargo',
      unit: 'lb',
      is: 'camper.loaded + load.things + hitch.hardwareWeight + towed.tongue',
      source: camperLoading,
    },
    'cab.people': {
      label: 'People and animals in the cab',
      noun: 'the people in the cab',
      unit: 'lb',
      is: 'load.people',
      source: payloadLabel,
    },
    'cab.allowed': {
      label: 'What the cargo weight rating allows for people',
      noun: 'what the rating allows for people',
      unit: 'lb',
      is: 'vehicle.seats * seat.allowance',
      source: camperLoading,
    },
    'payload.used': {
      label: 'Payload used',
      noun: 'the payload used',
      unit: 'lb',
      is: 'load.people + bed.load',
      source: payloadLabel,
    },
    'vehicle.gross': {
      label: 'Truck weight, loaded',
      noun: 'the loaded truck',
      unit: 'lb',
      is: 'vehicle.curb + payload.used',
      source: statics,
    },
  },
  limits: {
    payload: {
      label: 'Payload',
      short: 'payload',
      used: 'payload.used',
      limit: 'payload.available',
      margin: 'margin.other',
      source: payloadLabel,
    },
    'cargo-rating': {
      label: 'Cargo weight rating',
      short: 'the cargo weight rating',
      exceeded: true,
      used: 'bed.load',
      limit: 'vehicle.cargoRating',
      margin: 'margin.other',
      askedBy: ['vehicle.cargoRating'],
      source: camperLoading,
    },
    'vehicle-gross': {
      label: 'Vehicle gross weight',
      short: 'the truck’s gross rating',
      exceeded: true,
      used: 'vehicle.gross',
      limit: 'vehicle.gvwr',
      empty: 'vehicle.curb',
      margin: 'margin.other',
      askedBy: ['vehicle.gvwr'],
      source: grossRatings,
    },
    extension: {
      label: 'Hitch extension',
      short: 'the hitch extension',
      used: 'towed.tongue',
      limit: 'hitch.extensionRating',
      margin: 'margin.other',
      askedBy: ['hitch.extensionRating'],
      source: makersRating,
    },
  },
  findings: {
    'heavier-people': {
      label: 'People heavier than the rating allows for',
      askedBy: ['vehicle.seats'],
      care: {
        when: {
          all: [{ fact: 'cab.people', operator: 'greaterThan', value: { fact: 'cab.allowed' } }],
        },
        wrong:
          'The people weigh more than the 150 lb a seat that the cargo weight rating leaves for them.',
        do: 'Take what is over off the cargo.',
      },
      otherwise: 'The people weigh no more than the cargo weight rating leaves for them.',
      source: camperLoading,
    },
    'tie-downs': {
      label: 'Tie-downs',
      askedBy: ['camper.tieDowns'],
      stop: {
        when: { all: [{ fact: 'camper.tieDowns', operator: 'equal', value: 'none' }] },
        wrong: 'A camper that is not tied down leaves the bed in a hard turn or stop.',
        do: 'Do not drive it so.',
      },
      care: {
        when: { all: [{ fact: 'camper.tieDowns', operator: 'equal', value: 'bed' }] },
        wrong: 'Tie-downs that hold at the bed can tear it.',
        do: 'Use them only where both makers say so, and look at the metal around them.',
      },
      open: { wrong: 'Look where the tie-downs hold before it drives.' },
      otherwise: 'The tie-downs hold at the frame.',
      source: custom,
    },
    'bed-length': {
      label: 'Bed length',
      askedBy: ['camper.floorLength'],
      care: {
        when: {
          all: [
            {
              fact: 'camper.floorLength',
              operator: 'greaterThan',
              value: { fact: 'vehicle.bedLength' },
            },
          ],
        },
        wrong: 'The camper’s floor is longer than the bed.',
        do: 'The tailgate comes off, the centre of gravity moves back, and the camper’s maker must allow this bed.',
      },
      open: { wrong: 'Measure the bed: the camper’s floor may be longer.' },
      otherwise: 'The camper’s floor is no longer than the bed.',
      source: custom,
    },
  },
});
