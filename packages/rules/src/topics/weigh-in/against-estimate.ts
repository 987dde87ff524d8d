import { part } from '../../engine/define/topic';
import { house, statics } from '../../trade/bibliography/common';

const size = (label: string, of: string) =>
  ({ label, unit: 'lb', is: `max(0, ${of}, -${of})`, source: statics }) as const;
const off = (label: string, noun: string, is: string) =>
  ({ label, noun, unit: 'lb', is, source: statics }) as const;
const beyond = (fact: string) =>
  ({ all: [{ fact, operator: 'greaterThan', value: { fact: 'estimate.mostOff' } }] }) as const;

/**
 * The scale against what was estimated for towing from the same rig's facts, and which estimate was
 * off. Above zero: heavier on the scale.
 */
export const againstEstimate = part({
  parameters: {
    'estimate.mostOff': {
      label: 'How far an estimate may be off before it is worth a word',
      noun: 'how far an estimate may be off',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 150 }],
      range: [50, 500],
      source: house,
    },
  },
  formulas: {
    'off.trailer': off(
      'Trailer, weighed less estimated',
      'the trailer’s difference',
      'trailer.weighed - trailer.loaded',
    ),
    'off.tongue': off(
      'Tongue, weighed less estimated',
      'the tongue’s difference',
      'tongue.byScale - tongue.loaded',
    ),
    'tongue.byScale': {
      label: 'Tongue, by passes or lever',
      noun: 'the tongue by passes or lever',
      unit: 'lb',
      is: 'choose(tongue.isReckoned || !known(lever.reading), tongue.byPasses, tongue.byLever)',
      within: [
        '-vehicle.alone * (1 + (vehicle.wheelbase + max(0, vehicle.overhang)) / trailer.ballToAxle)',
        'unlimited',
      ],
      source: statics,
    },
    'off.vehicle': off(
      'Vehicle with people and cargo, weighed less estimated',
      'the vehicle’s difference',
      'vehicle.alone - (vehicle.curb + load.aboard)',
    ),
    'off.front': off(
      'Front axle, weighed less estimated',
      'the front axle’s difference',
      'axle.frontWeighed - axle.front',
    ),
    'off.rear': off(
      'Rear axle, weighed less estimated',
      'the rear axle’s difference',
      'axle.rearWeighed - axle.rear',
    ),
    'off.trailerSize': size('How far the trailer’s estimate was off', 'off.trailer'),
    'off.tongueSize': size('How far the tongue’s estimate was off', 'off.tongue'),
    'off.vehicleSize': size('How far the vehicle’s estimate was off', 'off.vehicle'),
  },
  findings: {
    'trailer-estimate': {
      label: 'Trailer against its estimate',
      askedBy: ['trailer.dryWeight'],
      care: {
        when: beyond('off.trailerSize'),
        wrong: 'The trailer’s estimate was off by {off.trailerSize}.',
        do: 'Ask what was packed or built in and not counted, and use the scale’s figure from now on.',
      },
      open: {
        wrong: 'Whether the trailer weighs what was estimated is not certain.',
        do: 'Use the scale’s figure from now on.',
      },
      otherwise: 'The trailer weighs about what was estimated.',
      source: house,
    },
    'tongue-estimate': {
      label: 'Tongue against its estimate',
      askedBy: ['trailer.dryTongueWeight', 'trailer.measuredTongueWeight'],
      askedWhen: 'tongue.isCompared',
      care: {
        when: beyond('off.tongueSize'),
        wrong: 'The tongue’s estimate was off by {off.tongueSize}.',
        because: 'Where things ride counts more than what they weigh.',
        do: 'Use the scale’s figure from now on.',
      },
      open: {
        wrong: 'Whether the tongue weighs what was estimated is not certain.',
        do: 'Weigh the tongue by itself.',
      },
      otherwise: 'The tongue weighs about what was estimated.',
      source: house,
    },
    'vehicle-estimate': {
      label: 'Vehicle against its estimate',
      askedBy: ['vehicle.curbWeight', 'vehicle.curbFront'],
      care: {
        when: beyond('off.vehicleSize'),
        wrong: 'The estimate of the vehicle with people and cargo was off by {off.vehicleSize}.',
        do: 'Use the scale’s figure from now on: a brochure’s curb weight is that of the plainest one.',
      },
      open: {
        wrong: 'The vehicle may not weigh what was estimated.',
        do: 'Weigh it empty, with full fuel.',
      },
      otherwise: 'The vehicle weighs about what was estimated.',
      source: house,
    },
  },
});
