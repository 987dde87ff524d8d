import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';
import { launchGrade, lightBrakes, makersRating } from '../bibliography/rig';

const yes = (fact: string) => ({ fact, operator: 'equal', value: 'yes' }) as const;
const no = (fact: string) => ({ fact, operator: 'equal', value: 'no' }) as const;

/** What must be fitted, and what the trip asks of it. */
export const equipment = part({
  parameters: {
    'unbraked.careAbove': {
      label: 'Loaded weight above which brakes are wanted',
      noun: 'the weight above which brakes are wanted',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 1000 }],
      source: custom,
    },
    'unbraked.stopAbove': {
      label: 'Loaded weight above which brakes are required',
      noun: 'the weight above which brakes are required',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 3000 }],
      source: lightBrakes,
    },
    'grade.launch': {
      label: 'Launch grade of the rated tow test',
      noun: 'the launch grade of the rated tow test',
      unit: '%',
      values: [{ from: '2020-01-01', value: 12 }],
      source: launchGrade,
    },
  },
  formulas: {
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
    'distributionRequired.isKnown': {
      label: 'It is known above what weight distribution is required',
      unit: 'yes-no',
      is: 'known(vehicle.distributionRequiredAbove)',
      source: makersRating,
    },
  },
  findings: {
    'tow-package': {
      label: 'Tow package',
      askedBy: ['vehicle.towPackageNeeded'],
      stop: {
        when: { all: [yes('vehicle.towPackageNeeded'), no('vehicle.towPackage')] },
        wrong: 'The rating needs the factory tow package, and this vehicle has none.',
        do: 'A hitch fitted later does not raise it.',
      },
      open: {
        wrong: 'The rating may hang on the factory tow package.',
        do: 'Find out whether it is needed and fitted.',
      },
      otherwise: 'The tow package that the rating needs is there, or none is needed.',
      source: makersRating,
    },
    'brake-controller': {
      label: 'Brake controller',
      askedBy: ['trailer.electricBrakes'],
      stop: {
        when: {
          all: [
            yes('trailer.electricBrakes'),
            yes('brakeController.isKnown'),
            no('vehicle.brakeController'),
          ],
        },
        wrong: 'The trailer has electric brakes and the vehicle nothing to work them.',
        do: 'Fit a brake controller first.',
      },
      care: {
        when: { all: [yes('trailer.electricBrakes'), no('brakeController.isKnown')] },
        wrong: 'Make sure that a brake controller is fitted.',
        do: 'Without one the trailer’s brakes do nothing.',
      },
      open: {
        wrong:
          'Make sure whether the trailer has electric brakes, and that a brake controller is fitted.',
      },
      otherwise: 'A brake controller is fitted, or the trailer needs none.',
      source: custom,
    },
    'seven-way': {
      label: 'Seven-way connector',
      askedBy: ['trailer.electricBrakes'],
      stop: {
        when: {
          all: [yes('trailer.electricBrakes'), yes('sevenWay.isKnown'), no('vehicle.sevenWay')],
        },
        wrong: 'The trailer has electric brakes and the vehicle no seven-way connector.',
        do: 'Their current has no way to them.',
      },
      care: {
        when: { all: [yes('trailer.electricBrakes'), no('sevenWay.isKnown')] },
        wrong: 'Make sure that there is a seven-way connector.',
        do: 'The trailer’s brakes get their current through it.',
      },
      open: {
        wrong:
          'Make sure whether the trailer has electric brakes, and that there is a seven-way connector.',
      },
      otherwise: 'There is a seven-way connector, or the trailer needs none.',
      source: custom,
    },
    'distribution-allowed': {
      label: 'Weight distribution allowed',
      askedBy: ['hitch.distribution'],
      stop: {
        when: { all: [yes('hitch.distribution'), no('distribution.allowed')] },
        wrong: 'The maker does not allow a weight-distributing hitch on this vehicle.',
        do: 'Take the bars off.',
      },
      open: {
        wrong: 'The maker may not allow a weight-distributing hitch.',
        do: 'Read the manual first.',
      },
      otherwise: 'The maker does not forbid the weight distribution used, or none is used.',
      source: makersRating,
    },
    'distribution-required': {
      label: 'Weight distribution required',
      askedBy: ['vehicle.distributionRequiredAbove'],
      stop: {
        when: {
          all: [
            yes('distributionRequired.isKnown'),
            no('distribution.inUse'),
            {
              fact: 'trailer.loaded',
              operator: 'greaterThan',
              value: { fact: 'vehicle.distributionRequiredAbove' },
            },
          ],
        },
        wrong: 'At this weight the maker requires a weight-distributing hitch, and none is in use.',
      },
      care: {
        when: { all: [no('distributionRequired.isKnown'), no('distribution.inUse')] },
        wrong: 'Find out above what weight the maker requires a weight-distributing hitch.',
      },
      open: { wrong: 'At this weight the maker may require a weight-distributing hitch.' },
      otherwise: 'Weight distribution is in use, or not required at this weight.',
      source: makersRating,
    },
    unbraked: {
      label: 'Trailer brakes',
      askedBy: ['trailer.electricBrakes'],
      stop: {
        when: {
          all: [
            no('trailer.electricBrakes'),
            {
              fact: 'trailer.loaded',
              operator: 'greaterThan',
              value: { fact: 'unbraked.stopAbove' },
            },
          ],
        },
        wrong: 'A trailer of this weight needs brakes of its own.',
        do: 'Check your state for its rule.',
      },
      care: {
        when: {
          all: [
            no('trailer.electricBrakes'),
            {
              fact: 'trailer.loaded',
              operator: 'greaterThan',
              value: { fact: 'unbraked.careAbove' },
            },
          ],
        },
        wrong: 'The trailer has no brakes of its own.',
        do: 'Leave much more room to stop, and check your state for its rule.',
      },
      open: {
        wrong: 'The trailer may need brakes of its own.',
        do: 'Find out its loaded weight and whether it has any.',
      },
      otherwise: 'The trailer has brakes, or is light enough without.',
      source: lightBrakes,
    },
    grade: {
      label: 'Steepest grade',
      askedBy: ['trip.steepestGrade'],
      care: {
        when: {
          all: [
            {
              fact: 'trip.steepestGrade',
              operator: 'greaterThan',
              value: { fact: 'grade.launch' },
            },
          ],
        },
        wrong: 'The grade is steeper than the one the rated tow test starts on.',
        do: 'Plan another road, or expect not to get away on it.',
      },
      otherwise: 'No grade is steeper than the one the rated tow test starts on.',
      source: launchGrade,
    },
  },
});

/** The frontal area a maker may state; no margin is kept below it. */
export const frontalArea = part({
  limits: {
    'frontal-area': {
      label: 'Frontal area',
      short: 'the frontal area',
      used: 'trailer.frontalArea',
      limit: 'vehicle.maxFrontalArea',
      askedBy: ['vehicle.maxFrontalArea'],
      source: makersRating,
    },
  },
});
