import type { Asking } from '../../engine/define/shapes';

/** What people ask about a camper in a bed; what they told says which is answered first. */
export const askings = {
  balance: {
    label: 'Where must its weight sit?',
    results: [
      'camper.centerLoaded',
      'camper.behindAxle',
      'zone.aft',
      'zone.fore',
      'finding.center-behind',
    ],
    impliedBy: [
      'camper.center',
      'camper.centerBehindBoard',
      'vehicle.zoneFore',
      'vehicle.zoneForeBehindBoard',
    ],
    says: [
      {
        when: 'center.isAheadOfAxle',
        says: 'Loaded, the camper’s center of gravity lies {camper.centerLoaded} ahead of the rear axle. The truck’s maker allows {zone.aft} to {zone.fore}.',
      },
      {
        when: 'center.isBehindAxle',
        says: 'Loaded, the camper’s center of gravity lies {camper.behindAxle} behind the rear axle.',
      },
      {
        when: 'center.isAheadOfAxle',
        says: 'Loaded, the camper’s center of gravity lies {camper.centerLoaded} ahead of the rear axle.',
      },
      {
        says: 'By the truck’s maker the loaded camper’s center of gravity must lie {zone.range} ahead of the rear axle. Never behind it.',
      },
      {
        says: 'By the truck’s maker the loaded camper’s center of gravity must lie at the most {zone.fore} ahead of the rear axle. Never behind it.',
      },
      {
        says: 'By the truck’s maker the loaded camper’s center of gravity must lie at least {zone.aft} ahead of the rear axle. Never behind it.',
      },
    ],
  },
  carries: {
    label: 'Does my truck carry this camper?',
    yesOrNo: true,
    usual: true,
    results: [
      'limit.payload',
      'limit.cargo-rating',
      'limit.rear-axle',
      'camper.loaded',
      'bed.load',
      'payload.used',
    ],
    impliedBy: ['camper.weight'],
    says: [
      {
        when: 'ratings.areMixed',
        says: 'In the bed lie {bed.load}, and with the people {payload.used} ride on the truck. The sheet allows more than this door label does with all seats taken: read both again.',
      },
      {
        says: 'In the bed lie {bed.load}, and the sheet allows {cargoRating.counted} there, with room left for the people. With them {payload.used} ride on the truck.',
      },
      {
        says: 'Loaded, the camper weighs {camper.loaded}; with {load.people} of people and with things {payload.used} ride on the truck.',
      },
      { says: 'Loaded, the camper weighs {camper.loaded}; people and things come on top.' },
    ],
  },
  heaviest: {
    label: 'How heavy may a camper for this truck be?',
    results: ['camper.heaviest'],
    impliedBy: ['vehicle.placardPayload', 'vehicle.cargoRating', 'vehicle.gvwr'],
    says: [
      {
        when: 'rating.isSheetAlone',
        says: 'Look for a camper of {camper.heaviest} at the most, loaded. The rating on the truck’s camper sheet already leaves the weight of one occupant for each seat. Bags come off it, and what people weigh above that.',
      },
      {
        says: 'Look for a camper of {camper.heaviest} at the most, loaded. Each passenger and bag comes off that.',
      },
    ],
  },
  people: {
    label: 'How much do the people count?',
    results: ['people.over', 'cargoRating.counted', 'finding.heavier-people'],
    says: [
      {
        when: 'load.isUntold',
        says: 'The cargo weight rating leaves {seat.allowance} for each seat with a belt: what people weigh above that comes off it. Ask everybody’s weight.',
      },
      {
        says: 'The people weigh {people.over} more than the rating leaves for them, so {cargoRating.counted} of it counts.',
      },
    ],
  },
  behind: {
    label: 'May I tow something behind it?',
    results: ['limit.extension', 'axle.rear', 'finding.front-light'],
    says: 'With what is towed the rear axle carries {axle.rear} and the front {axle.front}.',
  },
  tieDowns: {
    label: 'How is it held in the bed?',
    results: ['finding.tie-downs', 'finding.bed-length'],
  },
} satisfies Record<string, Asking>;
