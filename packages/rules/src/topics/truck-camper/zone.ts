import { part } from '../../engine/define/topic';
import { house, statics } from '../../trade/bibliography/common';
import { camperLoading } from '../../trade/bibliography/truck-camper';

/**
 * The centre of gravity of the loaded camper must lie inside the maker's zone; all places are
 * measured from the rear axle, ahead +, behind −.
 *
 *                 zoneAft        zoneFore
 *        ────●───────┼══════════════┼────────  front
 *        rear axle          ▲ camper.centreLoaded
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
    'camper.moment': {
      label: 'Moment of the loaded camper about the rear axle',
      noun: 'its moment about the rear axle',
      unit: 'lb·in',
      is: 'camper.weight * camper.centre + sum(camper.options.weight * camper.options.ahead) + sum(camper.cargo.weight * camper.cargo.ahead) + choose(camper.freshWater > 0, camper.water * camper.waterAhead, 0) + choose(camper.propane > 0, camper.propane * camper.propaneAhead, 0) + sum(camper.riders.weight * camper.riders.ahead)',
      source: statics,
    },
    'camper.centreLoaded': {
      label: 'Centre of gravity of the loaded camper, ahead of the rear axle',
      noun: 'the centre of gravity',
      unit: 'in',
      is: 'camper.moment / camper.loaded',
      source: camperLoading,
    },
    'zone.nearFore': {
      label: 'Near the front end of the zone',
      unit: 'in',
      is: 'vehicle.zoneFore - zone.near',
      source: house,
    },
    'zone.nearAft': {
      label: 'Near the rear end of the zone',
      unit: 'in',
      is: 'vehicle.zoneAft + zone.near',
      source: house,
    },
  },
  findings: {
    'centre-behind': {
      label: 'Centre of gravity towards the rear',
      askedBy: ['vehicle.zoneAft'],
      stop: {
        when: {
          all: [
            {
              fact: 'camper.centreLoaded',
              operator: 'lessThan',
              value: { fact: 'vehicle.zoneAft' },
            },
          ],
        },
        wrong: 'The loaded camper’s centre of gravity lies behind the maker’s zone.',
        do: 'It lifts the front wheels, and the truck steers and brakes badly. This camper does not go on this truck as loaded.',
      },
      care: {
        when: {
          all: [
            { fact: 'camper.centreLoaded', operator: 'lessThan', value: { fact: 'zone.nearAft' } },
          ],
        },
        wrong: 'The centre of gravity is close to the rear end of the maker’s zone.',
        do: 'Pack heavy things forward, and weigh the axles.',
      },
      open: {
        wrong: 'The centre of gravity may lie behind the maker’s zone.',
        do: 'Find out where the weights sit.',
      },
      otherwise: 'The centre of gravity is well ahead of the rear end of the zone.',
      source: camperLoading,
    },
    'centre-ahead': {
      label: 'Centre of gravity towards the front',
      askedBy: ['vehicle.zoneFore'],
      stop: {
        when: {
          all: [
            {
              fact: 'camper.centreLoaded',
              operator: 'greaterThan',
              value: { fact: 'vehicle.zoneFore' },
            },
          ],
        },
        wrong: 'The loaded camper’s centre of gravity lies ahead of the maker’s zone.',
        do: 'The front axle takes what it was not built for.',
      },
      care: {
        when: {
          all: [
            {
              fact: 'camper.centreLoaded',
              operator: 'greaterThan',
              value: { fact: 'zone.nearFore' },
            },
          ],
        },
        wrong: 'The centre of gravity is close to the front end of the maker’s zone.',
        do: 'Weigh the front axle.',
      },
      open: {
        wrong: 'The centre of gravity may lie ahead of the maker’s zone.',
        do: 'Find out where the weights sit.',
      },
      otherwise: 'The centre of gravity is well behind the front end of the zone.',
      source: camperLoading,
    },
  },
});
