import { part } from '../../engine/define/topic';
import { launchGrade, makersRating } from '../bibliography/rig';

/** What must be fitted or may not be, and what the trip asks. */
export const equipment = part({
  parameters: {
    'grade.launch': {
      label: 'Launch grade of the rated tow test',
      noun: 'the launch grade of the rated tow test',
      unit: '%',
      values: [{ from: '2020-01-01', value: 12 }],
      source: launchGrade,
    },
  },
  formulas: {
    'towPackage.isNeeded': {
      label: 'The rating needs the factory tow package',
      unit: 'yes-no',
      is: "vehicle.towPackageNeeded == 'yes'",
      source: makersRating,
    },
    'towPackage.isKnown': {
      label: 'It is known whether the tow package is fitted',
      unit: 'yes-no',
      is: 'known(vehicle.towPackage)',
      source: makersRating,
    },
    'permission.isKnown': {
      label: 'It is known whether the maker allows weight distribution',
      unit: 'yes-no',
      is: 'known(vehicle.distributionAllowed)',
      source: makersRating,
    },
    'distributionRequired.isKnown': {
      label: 'It is known from when on weight distribution is required',
      unit: 'yes-no',
      is: 'known(vehicle.distributionRequiredAbove)',
      source: makersRating,
    },
  },
  findings: {
    'tow-package': {
      label: 'Tow package',
      first: true,
      askedBy: ['vehicle.towPackageNeeded'],
      askedWhen: 'towPackage.isNeeded',
      stop: {
        when: "towPackage.isNeeded && towPackage.isKnown && vehicle.towPackage == 'no'",
        wrong: 'The rating needs the factory tow package, and this vehicle has none.',
        because:
          'Cooling, springs and wiring come with it; a hitch fitted later does not raise the rating.',
        do: 'Do not tow before the maker says what it may pull as it is.',
      },
      if: {
        when: 'towPackage.isNeeded && !towPackage.isKnown',
        wrong:
          'The rating needs the factory tow package, and whether that is fitted is not known yet.',
        because: 'A hitch fitted later does not raise the rating.',
        do: 'Have the dealer look it up by the vehicle’s identification number.',
        proviso: 'the factory tow package is fitted',
      },
      open: {
        wrong: 'The rating may hang on the factory tow package, and this vehicle has none.',
        do: 'Find out in the manual whether it is needed.',
      },
      otherwise: 'The tow package that the rating needs is there.',
      source: makersRating,
    },
    'distribution-allowed': {
      label: 'Weight distribution allowed',
      askedBy: ['hitch.distribution'],
      askedWhen: 'distribution.isTold',
      stop: {
        when: "permission.isKnown && vehicle.distributionAllowed == 'no'",
        wrong: 'The maker does not allow a weight-distributing hitch on this vehicle.',
        because: 'Its body is not made for the moment that the bars put into it.',
        do: 'Take the bars off, and tow what it may carry without them.',
      },
      if: {
        when: '!permission.isKnown',
        wrong: 'Whether the maker allows a weight-distributing hitch is not known yet.',
        because: 'Many unit-body makers forbid it: ask.',
        do: 'Read the manual’s towing chapter before the bars go on; with surge brakes ask too whether the actuator is approved for bars.',
        proviso: 'the vehicle’s maker allows weight distribution',
      },
      open: {
        wrong: 'The maker may not allow a weight-distributing hitch.',
        because: 'Many unit-body makers forbid it: ask.',
        do: 'Read the manual’s towing chapter before the bars go on.',
      },
      otherwise: 'The maker allows the weight distribution used.',
      source: makersRating,
    },
    'distribution-required': {
      label: 'Weight distribution required',
      askedBy: ['vehicle.distributionRequiredAbove'],
      askedWhen: 'coupling.isBall',
      stop: {
        when: 'distributionRequired.isKnown && !distribution.isUsed && !distribution.mayBe && trailer.loaded > vehicle.distributionRequiredAbove',
        wrong:
          'Above {vehicle.distributionRequiredAbove} the maker requires a weight-distributing hitch, and none is in use.',
        because: 'Without one the front wheels lose more load than they may.',
        do: 'Tow a lighter trailer, or use a hitch that both makers approve.',
      },
      unknown: {
        when: 'distributionRequired.isKnown && !distribution.isUsed && distribution.mayBe && trailer.loaded > vehicle.distributionRequiredAbove',
        wrong:
          'Above {vehicle.distributionRequiredAbove} the maker wants a weight-distributing hitch; whether one is used is not known yet.',
        because: 'The maker requires it at this weight.',
        do: 'Look whether spring bars run from the ball mount to the trailer’s frame.',
      },
      care: {
        when: '!distributionRequired.isKnown && !distribution.isUsed',
        wrong: 'Above what weight the maker requires a weight-distributing hitch is not known.',
        do: 'Find it in the manual’s towing chapter.',
      },
      open: {
        wrong: 'At this weight the maker may require a weight-distributing hitch.',
        do: 'Find out the loaded weight, and whether a weight-distributing hitch is used.',
      },
      otherwise: 'Weight distribution is in use, or not required at this weight.',
      source: makersRating,
    },
    grade: {
      label: 'Steepest grade',
      askedBy: ['trip.steepestGrade'],
      care: {
        when: 'trip.steepestGrade > grade.launch',
        wrong:
          'A grade of {trip.steepestGrade} is steeper than the {grade.launch} that the rated tow test starts on.',
        because: 'Once stopped on it the rig may not get away.',
        do: 'Plan another road.',
      },
      open: {
        wrong: 'The steepest grade may be steeper than the one the rated tow test starts on.',
        do: 'Look it up before the trip.',
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
      do: 'Tow a trailer with a smaller front.',
      near: 'Go no faster than you must, and stay home in a strong headwind.',
      used: 'trailer.frontalArea',
      limit: 'vehicle.maxFrontalArea',
      askedBy: ['vehicle.maxFrontalArea'],
      source: makersRating,
    },
  },
});
