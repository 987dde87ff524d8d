import { part } from '../../engine/define/topic';
import { payloadLabel, statics } from '../../trade/bibliography/common';
import { camperLoading, seatsOfTrucks } from '../../trade/bibliography/truck-camper';

const seats = (label: string, value: number) =>
  ({ label, unit: '', values: [{ from: '2020-01-01', value }], source: seatsOfTrucks }) as const;

/**
 * Two ratings, never mixed.
 *
 *     door label    ├─ people, in full ──────────┼─ camper and all cargo ─┤
 *     cargo rating  ├ 150 lb a seat ┤ ├ the rest ┼─ camper and all cargo ─┤
 *                     already off       counts
 *
 * The cargo weight rating has an allowance for each seat taken off, so that only what people weigh
 * beyond it counts against it; the payload on the door label has nothing taken off.
 */
export const ratings = part({
  parameters: {
    'seat.allowance': {
      label: 'What the cargo weight rating leaves for each seat',
      noun: 'what the rating leaves for a seat',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 150 }],
      source: camperLoading,
    },
    'seats.fewest': seats('Fewest belted seats of a pickup', 2),
    'seats.most': seats('Most belted seats of a pickup', 6),
    'people.none': {
      label: 'Nothing over',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 0 }],
      source: statics,
    },
  },
  formulas: {
    'people.count': {
      label: 'People told of',
      noun: 'the people told of',
      unit: '',
      is: 'count(load.occupants)',
      source: payloadLabel,
    },
    'rating.isSheetAlone': {
      label: 'Only the rating of the truck’s camper sheet was told',
      unit: 'yes-no',
      is: 'given(vehicle.cargoRating) && !payload.isRated',
      source: payloadLabel,
    },
    'ratings.areMixed': {
      label: 'The cargo weight rating is higher than the door label allows',
      unit: 'yes-no',
      is: 'given(vehicle.cargoRating, vehicle.placardPayload, vehicle.seats) && vehicle.cargoRating > rating.mostCargo',
      source: camperLoading,
    },
    'seats.counted': {
      label: 'Belted seats; where nobody told, as few or many as pickups have',
      noun: 'the belted seats',
      unit: '',
      is: 'choose(known(vehicle.seats), vehicle.seats, max(seats.fewest, min(vehicle.seats, seats.most)))',
      source: seatsOfTrucks,
    },
    'people.over': {
      label: 'What the people weigh beyond what the cargo weight rating leaves for them',
      noun: 'what the people weigh beyond it',
      unit: 'lb',
      is: 'max(0, load.people - seats.counted * seat.allowance)',
      source: camperLoading,
    },
    'cargoRating.counted': {
      label: 'Cargo weight rating that counts',
      noun: 'the cargo weight rating that counts',
      unit: 'lb',
      is: 'vehicle.cargoRating - people.over',
      source: camperLoading,
    },
    'rating.mostCargo': {
      label: 'Most that a cargo weight rating can be beside this door label',
      unit: 'lb',
      is: 'vehicle.placardPayload - seats.counted * seat.allowance',
      source: camperLoading,
    },
    'payload.isRated': {
      label: 'A rating for people and cargo together was told',
      unit: 'yes-no',
      is: 'given(vehicle.placardPayload) || given(vehicle.gvwr)',
      source: payloadLabel,
    },
    'rating.isUntold': {
      label: 'No rating was told',
      unit: 'yes-no',
      is: '!given(vehicle.cargoRating) && !payload.isRated',
      source: payloadLabel,
    },
    'payload.mayBeOver': {
      label: 'People and camper weigh more than the truck may carry',
      unit: 'yes-no',
      is: 'payload.used > payload.available',
      source: payloadLabel,
    },
  },
  limits: {
    'cargo-rating': {
      label: 'Cargo weight rating',
      short: 'the cargo weight rating',
      do: 'Take load out of the camper, water first if the site has some, or choose a lighter one.',
      near: 'Take nothing more into the camper, and weigh the loaded truck before the trip.',
      exceeded: true,
      used: 'bed.load',
      limit: 'cargoRating.counted',
      margin: 'margin.other',
      askedBy: ['vehicle.cargoRating'],
      source: camperLoading,
    },
  },
  findings: {
    'rating-untold': {
      label: 'A rating to carry it by',
      unknown: {
        when: 'rating.isUntold && payload.mayBeOver',
        wrong: 'What the truck may carry is not known yet.',
        do: 'Read the label in the driver’s door, and the cargo weight rating from the camper papers.',
      },
      open: {
        wrong: 'What the truck may carry is not known yet.',
        do: 'Read the label in the driver’s door, and the cargo weight rating from the camper papers.',
      },
      otherwise: 'What the truck may carry was told.',
      source: payloadLabel,
    },
    'seat-belts': {
      label: 'Seats with a belt',
      first: true,
      askedByKnown: ['vehicle.seats'],
      stop: {
        when: 'people.count > vehicle.seats',
        wrong:
          'More ride along than there are seats with a belt: {people.count}, and {vehicle.seats}.',
        do: 'Nobody rides without a belt, and nobody in the camper.',
      },
      otherwise: 'There is a belt for everybody who was told of.',
      source: payloadLabel,
    },
    'heavier-people': {
      label: 'People heavier than the rating allows for',
      askedBy: ['vehicle.cargoRating'],
      care: {
        when: 'people.over > people.none',
        wrong:
          'The people weigh {people.over} more than the {seat.allowance} a seat that the cargo weight rating leaves for them.',
        because: 'What is over comes off the rating, and was taken off it here.',
        do: 'Let nobody else ride along, and weigh the loaded truck.',
      },
      open: {
        wrong: 'The people may weigh more than the cargo weight rating leaves for them.',
        do: 'Count the belted seats and ask everybody’s weight: what is over comes off the rating.',
      },
      otherwise: 'The people weigh no more than the cargo weight rating leaves for them.',
      source: camperLoading,
    },
    'ratings-mixed': {
      label: 'The two ratings against each other',
      askedByKnown: ['vehicle.cargoRating', 'vehicle.placardPayload', 'vehicle.seats'],
      care: {
        when: 'vehicle.cargoRating > rating.mostCargo',
        wrong: 'The cargo weight rating on the sheet is higher than the door label allows.',
        because: 'One of the two was read off the other’s label, or this truck’s label is newer.',
        do: 'Read door label and sheet again, on this very truck; until then the lower one counts.',
      },
      otherwise: 'The two ratings can both be right.',
      source: camperLoading,
    },
  },
});
