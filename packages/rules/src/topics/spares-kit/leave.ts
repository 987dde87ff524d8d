import { part } from '../../engine/define/topic';
import { house, statics } from '../../trade/bibliography/common';

const missed = (label: string, value: number) =>
  ({
    label: `How much it would be missed: ${label}`,
    unit: '',
    values: [{ from: '2020-01-01', value }],
    range: [1, 10],
    source: house,
  }) as const;
const freed = (label: string, is: string) =>
  ({ label: `Pounds freed for what is missed: ${label}`, unit: 'lb', is, source: house }) as const;

/**
 * What to leave at home when weight is short: what frees most for how much it would be missed. What
 * hands and eyes need, what lifts and what blocks a wheel is never among it.
 */
export const leave = part({
  parameters: {
    'missed.secondSpare': missed('second spare wheel', 4),
    'missed.hub': missed('hub', 3),
    'missed.grease': missed('grease and gun', 1),
    'missed.compressor': missed('compressor', 3),
    'missed.bearings': missed('bearings', 4),
  },
  formulas: {
    'leave.secondSpare': freed(
      'second spare wheel',
      'choose(need.secondSpare, spare.weight / missed.secondSpare, 0)',
    ),
    'leave.hub': freed('hub', 'choose(need.hub, weightOf.hub / missed.hub, 0)'),
    'leave.grease': freed(
      'grease and gun',
      'choose(need.grease, weightOf.grease / missed.grease, 0)',
    ),
    'leave.compressor': freed(
      'compressor',
      'choose(need.compressor, weightOf.compressor / missed.compressor, 0)',
    ),
    'leave.bearings': freed(
      'bearings',
      'choose(need.bearings, weightOf.bearings / missed.bearings, 0)',
    ),
    'leave.most': {
      label: 'What a lean kit frees',
      noun: 'what a lean kit frees',
      unit: 'lb',
      is: 'choose(need.secondSpare, spare.weight, 0) + choose(need.hub, weightOf.hub, 0) + choose(need.grease, weightOf.grease, 0) + choose(need.compressor, weightOf.compressor, 0) + choose(need.bearings, weightOf.bearings, 0)',
      source: statics,
    },
  },
  rankings: {
    'leave-first': {
      label: 'What to leave at home first, by pounds freed for how much it is missed',
      first: 'most',
      of: {
        secondSpare: {
          by: 'leave.secondSpare',
          says: 'The second spare wheel, if you will turn back at the first flat',
        },
        hub: { by: 'leave.hub', says: 'The made-up hub, if the bearings were packed this year' },
        grease: {
          by: 'leave.grease',
          says: 'Grease and gun, if the hubs are greased before you go',
        },
        compressor: { by: 'leave.compressor', says: 'The compressor, if the vehicle has one' },
        bearings: {
          by: 'leave.bearings',
          says: 'The bearings last: they are light, and no shop has yours',
        },
      },
      source: house,
    },
  },
});
