import { part } from '../../engine/define/topic';
import { custom, house } from '../bibliography/common';
import { lightBrakes, makersRating } from '../bibliography/rig';

/** Which brakes the trailer has, whether the vehicle works them, and how heavy it may be without. */
export const brakes = part({
  parameters: {
    'unbraked.careAbove': {
      label: 'Loaded weight above which brakes are wanted',
      noun: 'the weight above which brakes are wanted',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 1000 }],
      source: custom,
    },
    'unbraked.askAbove': {
      label: 'Loaded weight above which the manual’s limit without brakes must be known',
      noun: 'the weight above which the manual’s limit must be known',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 1500 }],
      range: [1000, 2000],
      source: house,
    },
    'unbraked.stopAbove': {
      label: 'Loaded weight above which brakes are required',
      noun: 'the weight above which brakes are required',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 3000 }],
      source: lightBrakes,
    },
  },
  formulas: {
    'brakes.areKnown': {
      label: 'It is known which brakes the trailer has',
      unit: 'yes-no',
      is: 'known(trailer.brakes)',
      source: custom,
    },
    'brakes.areUntold': {
      label: 'Nobody knows which brakes the trailer has',
      unit: 'yes-no',
      is: '!known(trailer.brakes)',
      source: custom,
    },
    'brakes.areElectric': {
      label: 'The trailer has electric brakes',
      unit: 'yes-no',
      is: "trailer.brakes == 'electric'",
      source: custom,
    },
    'brakes.areSurge': {
      label: 'The trailer has surge brakes',
      unit: 'yes-no',
      is: "trailer.brakes == 'surge'",
      source: custom,
    },
    'brakes.areNone': {
      label: 'The trailer has no brakes',
      unit: 'yes-no',
      is: "known(trailer.brakes) && trailer.brakes == 'none'",
      source: custom,
    },
    'brakes.wantedAbove': {
      label: 'Loaded weight above which the brakes must be known',
      noun: 'the weight above which brakes are asked for',
      unit: 'lb',
      is: 'choose(given(vehicle.maxUnbraked), min(unbraked.careAbove, vehicle.maxUnbraked), unbraked.careAbove)',
      source: custom,
    },
    'brakeController.isKnown': {
      label: 'It is known whether a brake controller is fitted',
      unit: 'yes-no',
      is: 'known(vehicle.brakeController)',
      source: custom,
    },
    'sevenWay.isKnown': {
      label: 'It is known whether there is a seven-way connector',
      unit: 'yes-no',
      is: 'known(vehicle.sevenWay)',
      source: custom,
    },
    'unbraked.isRated': {
      label: 'The manual’s limit without trailer brakes is known',
      unit: 'yes-no',
      is: 'known(vehicle.maxUnbraked)',
      source: makersRating,
    },
  },
  findings: {
    'brakes-untold': {
      label: 'Trailer brakes, not told',
      askedWhen: 'brakes.areUntold',
      if: {
        when: 'trailer.loaded > brakes.wantedAbove',
        wrong: 'Which brakes the trailer has is not known yet.',
        because: 'At this weight the vehicle’s own brakes alone are not meant to stop both.',
        do: 'Ask which brakes the trailer has, and whether the vehicle works them.',
        proviso: 'the trailer has brakes that the vehicle works',
      },
      open: {
        wrong: 'Loaded, the trailer may be heavy enough to want brakes of its own.',
        do: 'Ask which brakes the trailer has, and whether the vehicle works them.',
      },
      otherwise: 'The trailer is light enough to do without brakes of its own.',
      source: custom,
    },
    'brake-controller': {
      label: 'Brake controller',
      askedBy: ['trailer.brakes'],
      stop: {
        when: "brakes.areElectric && brakeController.isKnown && vehicle.brakeController == 'no'",
        wrong: 'The trailer has electric brakes and the vehicle nothing to work them.',
        because: 'Without a controller they do nothing.',
        do: 'Fit a brake controller first.',
      },
      if: {
        when: 'brakes.areElectric && !brakeController.isKnown',
        wrong: 'Whether a brake controller is fitted is not known yet.',
        because: 'Without one the trailer’s electric brakes do nothing.',
        do: 'Set the brake controller with the trailer loaded.',
        proviso: 'a brake controller is fitted',
      },
      open: {
        wrong: 'If the trailer’s brakes are electric, the vehicle must work them.',
        do: 'Find out which brakes it has.',
      },
      otherwise: 'A brake controller is fitted, or the trailer needs none.',
      source: custom,
    },
    'seven-way': {
      label: 'Seven-way connector',
      askedBy: ['trailer.brakes'],
      stop: {
        when: "brakes.areElectric && sevenWay.isKnown && vehicle.sevenWay == 'no'",
        wrong: 'The trailer has electric brakes and the vehicle no seven-way connector.',
        because: 'Their current has no way to them.',
        do: 'Have a seven-way connector fitted first.',
      },
      if: {
        when: 'brakes.areElectric && !sevenWay.isKnown',
        wrong: 'Whether there is a seven-way connector is not known yet.',
        because: 'The trailer’s brakes get their current through it.',
        do: 'Look at the bumper: seven blades, not four pins.',
        proviso: 'there is a seven-way connector',
      },
      open: {
        wrong: 'If the trailer’s brakes are electric, they need a seven-way connector.',
        do: 'Find out which brakes it has.',
      },
      otherwise: 'There is a seven-way connector, or the trailer needs none.',
      source: custom,
    },
    'surge-bars': {
      label: 'Surge brakes and bars',
      first: true,
      askedBy: ['trailer.brakes'],
      askedWhen: 'distribution.isTold',
      if: {
        when: 'brakes.areSurge',
        wrong:
          'Whether the surge brakes’ actuator is approved for a weight-distributing hitch is not known yet.',
        because: 'Bars can keep a coupler that has to slide from sliding, and then nothing brakes.',
        do: 'Ask the actuator’s maker before the bars go on.',
        proviso: 'the surge brakes’ actuator is approved for a weight-distributing hitch',
      },
      open: {
        wrong: 'If its brakes are surge brakes, the bars may keep them from working.',
        do: 'Look at the coupler: one that slides, with a brake line to it, is a surge brake’s actuator.',
      },
      otherwise: 'The bars are in the way of no surge brakes.',
      source: custom,
    },
    unbraked: {
      label: 'Trailer without brakes',
      askedBy: ['trailer.brakes'],
      askedWhen: 'brakes.areKnown',
      stop: {
        when: 'brakes.areNone && trailer.loaded > unbraked.stopAbove',
        wrong: 'A trailer of {trailer.loaded} needs brakes of its own, and this one has none.',
        because: 'Above {unbraked.stopAbove} they are required in commerce and in most states.',
        do: 'Have brakes fitted, and check your state for its rule.',
      },
      unknown: {
        when: 'brakes.areNone && !unbraked.isRated && trailer.loaded > unbraked.askAbove',
        wrong:
          'The manual’s limit without trailer brakes decides, and that limit is not known yet.',
        because: 'Above {unbraked.askAbove} many makers ask for trailer brakes.',
        do: 'Read it in the manual’s towing chapter.',
      },
      care: {
        when: 'brakes.areNone && trailer.loaded > unbraked.careAbove',
        wrong: 'The trailer has no brakes of its own.',
        because: 'The vehicle’s brakes stop both, and the trailer pushes.',
        do: 'Leave much more room to stop, and check your state for its rule.',
      },
      open: {
        wrong: 'The trailer may need brakes of its own.',
        do: 'Find out its loaded weight, and what the manual allows without brakes.',
      },
      otherwise: 'The trailer has brakes, or is light enough without.',
      source: lightBrakes,
    },
  },
  limits: {
    'unbraked-rating': {
      label: 'Rating without trailer brakes',
      short: 'the rating without trailer brakes',
      do: 'Take load off, or have brakes fitted to the trailer.',
      near: 'Add nothing more, and leave twice the room to stop.',
      exceeded: true,
      used: 'trailer.loaded',
      limit: 'vehicle.maxUnbraked',
      margin: 'margin.other',
      askedBy: ['vehicle.maxUnbraked'],
      askedWhen: 'brakes.areNone',
      source: makersRating,
    },
  },
});
