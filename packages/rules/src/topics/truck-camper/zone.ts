import { part } from '../../engine/define/topic';
import { custom, house, statics } from '../../trade/bibliography/common';
import { camperLoading, zoneDrawing } from '../../trade/bibliography/truck-camper';

/**
 * The center of gravity of the loaded camper must lie inside the maker's zone; all places are
 * reckoned from the rear axle, ahead +, behind −.
 *
 *     rear     zone.aft       zone.fore                 headboard
 *     ────●───────┼══════════════┼─────────────────────────┤  front
 *     rear axle          ▲ camper.centerLoaded
 *         ├────────────── vehicle.headboardAhead ──────────┤
 *                        the sheet's drawing counts from here ◄┘
 */
export const zone = part({
  parameters: {
    'zone.near': {
      label: 'How near an end of the zone is worth a word',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 2 }],
      range: [0, 6],
      source: house,
    },
  },
  formulas: {
    'zone.foreByBoard': {
      label: 'Front end of the zone, by the drawing from the headboard',
      unit: 'in',
      is: 'vehicle.headboardAhead - vehicle.zoneForeBehindBoard',
      source: zoneDrawing,
    },
    'zone.aftByBoard': {
      label: 'Rear end of the zone, by the drawing from the headboard',
      unit: 'in',
      is: 'vehicle.headboardAhead - vehicle.zoneAftBehindBoard',
      source: zoneDrawing,
    },
    'zone.fore': {
      label: 'Front end of the zone, ahead of the rear axle',
      noun: 'the front end of the zone',
      unit: 'in',
      is: 'choose(given(vehicle.zoneFore), choose(known(zone.foreByBoard), min(vehicle.zoneFore, zone.foreByBoard), vehicle.zoneFore), zone.foreByBoard)',
      source: camperLoading,
    },
    'zone.range': {
      label: 'Zone ahead of the rear axle',
      noun: 'the zone',
      unit: 'in',
      is: 'between(zone.aft, zone.fore)',
      source: camperLoading,
    },
    'zone.aft': {
      label: 'Rear end of the zone, ahead of the rear axle',
      noun: 'the rear end of the zone',
      unit: 'in',
      is: 'choose(given(vehicle.zoneAft), choose(known(zone.aftByBoard), max(vehicle.zoneAft, zone.aftByBoard), vehicle.zoneAft), zone.aftByBoard)',
      source: camperLoading,
    },
    'zone.foreTold': {
      label: 'The front end of the zone was told',
      unit: 'yes-no',
      is: 'given(vehicle.zoneFore) || given(vehicle.zoneForeBehindBoard)',
      source: camperLoading,
    },
    'zone.aftTold': {
      label: 'The rear end of the zone was told',
      unit: 'yes-no',
      is: 'given(vehicle.zoneAft) || given(vehicle.zoneAftBehindBoard)',
      source: camperLoading,
    },
    'camper.centerLoaded': {
      label: 'Center of gravity of the loaded camper, ahead of the rear axle',
      noun: 'the center of gravity',
      unit: 'in',
      // Where nothing lies in it beyond its label, the mark is the place, whatever the camper weighs.
      is: 'choose(camper.loads > 0, camper.moment / camper.loaded, camper.ownCenter)',
      source: camperLoading,
    },
    'camper.behindAxle': {
      label: 'How far behind the rear axle the loaded camper’s center of gravity lies',
      noun: 'how far behind the axle it lies',
      unit: 'in',
      is: 'max(0, -camper.centerLoaded)',
      source: statics,
    },
    'center.isBehindAxle': {
      label: 'The loaded camper’s center of gravity lies behind the rear axle',
      unit: 'yes-no',
      is: 'camper.centerTold && camper.centerLoaded < 0',
      source: statics,
    },
    'center.isAheadOfAxle': {
      label: 'The loaded camper’s center of gravity lies ahead of the rear axle',
      unit: 'yes-no',
      is: 'camper.centerLoaded >= 0',
      source: statics,
    },
    'center.mayMiss': {
      label: 'It may lie outside a zone that nobody told',
      unit: 'yes-no',
      is: '(!zone.aftTold && camper.centerLoaded < zone.aft) || (!zone.foreTold && camper.centerLoaded > zone.fore)',
      source: camperLoading,
    },
    'zone.nearFore': {
      label: 'Near the front end of the zone',
      unit: 'in',
      is: 'zone.fore - zone.near',
      source: house,
    },
    'zone.nearAft': {
      label: 'Near the rear end of the zone',
      unit: 'in',
      is: 'zone.aft + zone.near',
      source: house,
    },
  },
  findings: {
    'behind-axle': {
      label: 'Center of gravity against the rear axle',
      first: true,
      askedBy: ['camper.center', 'camper.centerBehindBoard'],
      unknown: {
        when: 'center.isBehindAxle && !zone.aftTold',
        wrong:
          'Its center lies {camper.behindAxle} behind the rear axle and takes weight off the front wheels. How far back the truck’s maker allows is not known yet.',
        because:
          'Behind the axle it lifts the front wheels, which steer and brake; few zones reach there.',
        do: 'Do not drive it so before you have read in the truck’s camper papers how far back the center may lie.',
      },
      care: {
        when: 'center.isBehindAxle',
        wrong:
          'The loaded camper’s center of gravity lies {camper.behindAxle} behind the rear axle.',
        because: 'It takes weight off the front wheels, which steer and brake.',
        do: 'Pack heavy things forward, and weigh both axles before the road.',
      },
      otherwise: 'The loaded camper’s center of gravity does not lie behind the rear axle.',
      open: {
        wrong: 'The loaded camper’s center of gravity may lie behind the rear axle.',
        because: 'There it lifts the front wheels, which steer and brake.',
        do: 'Find out where the weights sit, and how far back the truck’s maker allows.',
      },
      source: custom,
    },
    'center-behind': {
      label: 'Center of gravity toward the rear',
      askedBy: ['vehicle.zoneAft', 'vehicle.zoneAftBehindBoard'],
      stop: [
        {
          when: 'camper.centerLoaded < zone.aft && center.isAheadOfAxle',
          wrong:
            'The loaded camper’s center of gravity lies too far back: {camper.centerLoaded} ahead of the rear axle, and the truck’s maker asks for {zone.aft}.',
          because: 'It lifts the front wheels, and the truck steers and brakes badly.',
          do: 'This camper does not go on this truck as loaded: move what is heavy forward, or leave it.',
        },
        {
          when: 'camper.centerLoaded < zone.aft',
          wrong:
            'The loaded camper’s center of gravity lies {camper.behindAxle} behind the rear axle, farther back than the truck’s maker allows.',
          because: 'It lifts the front wheels, and the truck steers and brakes badly.',
          do: 'This camper does not go on this truck as loaded: move what is heavy forward, or leave it.',
        },
      ],
      care: [
        {
          when: 'camper.centerLoaded < zone.nearAft && center.isAheadOfAxle',
          wrong:
            'The center of gravity, {camper.centerLoaded} ahead of the rear axle, is close to the rear end of the maker’s zone.',
          do: 'Pack heavy things forward, and weigh the axles.',
        },
        {
          when: 'camper.centerLoaded < zone.nearAft',
          wrong: 'The center of gravity is close to the rear end of the maker’s zone.',
          do: 'Pack heavy things forward, and weigh the axles.',
        },
      ],
      open: {
        wrong: 'The center of gravity may lie behind the maker’s zone.',
        do: 'Find out where the camper’s mark stands and where the weights sit.',
      },
      otherwise: 'The center of gravity is well ahead of the rear end of the zone.',
      source: camperLoading,
    },
    'center-ahead': {
      label: 'Center of gravity toward the front',
      askedBy: ['vehicle.zoneFore', 'vehicle.zoneForeBehindBoard'],
      stop: {
        when: 'camper.centerLoaded > zone.fore',
        wrong:
          'The loaded camper’s center of gravity lies too far forward: {camper.centerLoaded} ahead of the rear axle, and the truck’s maker allows {zone.fore}.',
        because: 'The front axle and its tires take what they were not built for.',
        do: 'This camper does not go on this truck as loaded: it belongs on a longer bed.',
      },
      care: {
        when: 'camper.centerLoaded > zone.nearFore',
        wrong:
          'The center of gravity, {camper.centerLoaded} ahead of the rear axle, is close to the front end of the maker’s zone.',
        do: 'Weigh the front axle.',
      },
      open: {
        wrong: 'The center of gravity may lie ahead of the maker’s zone.',
        do: 'Find out where the camper’s mark stands and where the weights sit.',
      },
      otherwise: 'The center of gravity is well behind the front end of the zone.',
      source: camperLoading,
    },
    'zone-untold': {
      label: 'The maker’s zone',
      if: {
        when: 'center.mayMiss',
        wrong:
          'The loaded camper’s center of gravity was not set against what the truck’s maker allows.',
        because: 'A camper within every weight can still lift the front wheels or crush the rear.',
        do: 'Read both ends of the zone from the truck’s camper papers, and where the camper’s mark stands.',
        proviso: 'the loaded camper’s center of gravity lies where the truck’s maker allows it',
      },
      open: {
        wrong:
          'The loaded camper’s center of gravity was not set against what the truck’s maker allows.',
        because: 'A camper within every weight can still lift the front wheels or crush the rear.',
        do: 'Read both ends of the zone from the truck’s camper papers, and where the camper’s mark stands.',
      },
      otherwise: 'The center of gravity was set against the maker’s zone.',
      source: camperLoading,
    },
  },
});
