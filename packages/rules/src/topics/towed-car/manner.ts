import { part } from '../../engine/define/topic';
import { lightBrakes } from '../../trade/bibliography/rig';
import { carBrake, carsManual, chassisRating } from '../../trade/bibliography/towed-car';

const untold = (fact: string): string => `!known(${fact})`;

/**
 * How the car may roll, by its own manual and never by its gearbox, and what brakes it.
 *
 *     all four down ── the manual allows it? ──► as it says, before and on the way
 *     dolly ────────── the manual allows it? ──► driven wheels up, unless it says otherwise
 *     trailer ──────── all four up
 */
export const manner = part({
  parameters: {
    'carBrake.wantedAbove': {
      label: 'Weight above which a brake is asked for',
      noun: 'the weight above which a brake is asked for',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 1000 }],
      source: carBrake,
    },
    'carBrake.stopAbove': {
      label: 'Weight above which it is not towed without a brake',
      noun: 'the weight above which it is not towed without one',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 3000 }],
      range: [1000, 3000],
      source: lightBrakes,
    },
  },
  formulas: {
    'manner.isUntold': {
      label: 'Nobody told how it is towed',
      unit: 'yes-no',
      is: untold('towed.manner'),
      source: carsManual,
    },
    'fourDown.isMeant': {
      label: 'All four wheels are meant to roll',
      unit: 'yes-no',
      is: "known(towed.manner) && towed.manner == 'four-down'",
      source: carsManual,
    },
    'dolly.isMeant': {
      label: 'A dolly is meant',
      unit: 'yes-no',
      is: "known(towed.manner) && towed.manner == 'dolly'",
      source: carsManual,
    },
    'bar.isMeant': {
      label: 'It rolls on its own wheels behind a bar, or nobody told otherwise',
      unit: 'yes-no',
      is: '!carried.isMeant',
      source: carsManual,
    },
    'assumed.bar': {
      label: 'A tow bar was told of, and not how the car is towed',
      unit: 'yes-no',
      is: 'manner.isUntold && (given(towBar.rating) || given(towBar.rise))',
      source: carsManual,
    },
    'assumed.carried': {
      label: 'A tongue weight was told of, and not how the car is towed',
      unit: 'yes-no',
      is: 'manner.isUntold && given(towed.tongue)',
      source: carsManual,
    },
    'carried.isMeant': {
      label: 'A dolly or trailer is meant',
      unit: 'yes-no',
      is: "known(towed.manner) && towed.manner != 'four-down'",
      source: carsManual,
    },
    'fourDown.isUnread': {
      label: 'Nobody read whether all four may roll',
      unit: 'yes-no',
      is: untold('towed.fourDown'),
      source: carsManual,
    },
    'dolly.isUnread': {
      label: 'Nobody read whether a dolly is allowed',
      unit: 'yes-no',
      is: untold('towed.dollyAllowed'),
      source: carsManual,
    },
    'carBrake.isUntold': {
      label: 'Nobody told whether the car is braked',
      unit: 'yes-no',
      is: untold('towed.brake'),
      source: carBrake,
    },
    'carrierBrakes.areUntold': {
      label: 'Nobody told whether dolly or trailer has brakes',
      unit: 'yes-no',
      is: untold('carrier.brakes'),
      source: carBrake,
    },
    'towed.isUnbraked': {
      label: 'Nothing brakes what is towed',
      unit: 'yes-no',
      is: "(fourDown.isMeant && !carBrake.isUntold && towed.brake == 'no') || (carried.isMeant && !carrierBrakes.areUntold && carrier.brakes == 'no')",
      source: carBrake,
    },
    'car.isUnbraked': {
      label: 'The car has no brake, and nobody told how it is towed',
      unit: 'yes-no',
      is: "manner.isUntold && !carBrake.isUntold && towed.brake == 'no'",
      source: carBrake,
    },
    'towed.brakeUntold': {
      label: 'Nobody told whether what is towed is braked',
      unit: 'yes-no',
      is: '(fourDown.isMeant && carBrake.isUntold) || (carried.isMeant && carrierBrakes.areUntold)',
      source: carBrake,
    },
  },
  limits: {
    'unbraked-rating': {
      label: 'Rating without brakes in what is towed',
      short: 'the rating without brakes in what is towed',
      do: 'Have a brake fitted in the car, or take a dolly or trailer that brakes.',
      near: 'Put nothing more into the car; a brake is the better answer.',
      exceeded: true,
      used: 'towed.all',
      limit: 'vehicle.maxUnbraked',
      margin: 'margin.other',
      askedBy: ['vehicle.maxUnbraked'],
      askedWhen: 'towed.isUnbraked',
      source: chassisRating,
    },
  },
  findings: {
    'manner-untold': {
      label: 'How it is towed',
      unknown: {
        when: 'manner.isUntold',
        wrong:
          'Whether the car rolls on all four wheels, on a dolly or rides on a trailer is not known yet.',
        because:
          'The car’s manual allows one and forbids another, and each weighs and brakes differently.',
        do: 'Read the car’s manual first; then choose.',
      },
      otherwise: 'It was told how the car is towed.',
      source: carsManual,
    },
    'four-down': {
      label: 'All four wheels on the road',
      askedBy: ['towed.manner'],
      askedWhen: 'fourDown.isMeant',
      stop: {
        when: "!fourDown.isUnread && towed.fourDown == 'no'",
        wrong: 'The car’s own manual forbids towing it with all four wheels on the road.',
        because:
          'Its gearbox is not oiled or its wheels are braked so, and it burns out within miles.',
        do: 'Tow it on a trailer, or on a dolly if the manual allows that.',
      },
      if: {
        when: 'fourDown.isUnread',
        wrong: 'Whether the car’s manual allows all four wheels on the road is not known yet.',
        because: 'The kind of gearbox does not tell; the manual of that very car does.',
        do: 'Read the manual’s chapter on towing behind a motorhome, with what it wants done before and on the way. Until then tow nothing.',
        proviso: 'the car’s own manual allows all four wheels on the road',
      },
      otherwise:
        'The car’s manual allows all four wheels on the road; do what it says before and on the way.',
      source: carsManual,
    },
    dolly: {
      label: 'On a dolly',
      askedBy: ['towed.manner'],
      askedWhen: 'dolly.isMeant',
      stop: {
        when: "!dolly.isUnread && towed.dollyAllowed == 'no'",
        wrong: 'The car’s own manual forbids a dolly.',
        because: 'The wheels that stay down turn what must not turn.',
        do: 'Tow it on a trailer, all four wheels up.',
      },
      if: {
        when: 'dolly.isUnread',
        wrong: 'Whether the car’s manual allows a dolly is not known yet.',
        do: 'Read it, and which wheels must be up. Until then tow nothing.',
        proviso: 'the car’s own manual allows a dolly with those wheels up',
      },
      otherwise: 'The car’s manual allows a dolly.',
      source: carsManual,
    },
    brake: {
      label: 'Brake in what is towed',
      first: true,
      askedBy: ['towed.manner', 'towed.brake'],
      stop: {
        when: 'towed.isUnbraked && towed.all > carBrake.stopAbove',
        wrong: '{towed.all} is towed without any brake of its own.',
        because: 'The motorhome’s brakes were not made to stop both, and it comes from behind.',
        do: 'Fit an auxiliary brake with a breakaway switch, or a dolly or trailer that brakes.',
      },
      unknown: {
        when: 'car.isUnbraked && towed.weight > carBrake.stopAbove',
        wrong: 'The car weighs {towed.weight} and has no brake of its own.',
        because: 'On its own wheels above {carBrake.stopAbove} it is not towed so.',
        do: 'Have an auxiliary brake with a breakaway switch fitted, or take a dolly or trailer that brakes.',
      },
      if: [
        {
          when: 'car.isUnbraked && towed.weight > carBrake.wantedAbove',
          wrong: 'The car weighs {towed.weight} and has no brake of its own.',
          because:
            'Most states and makers ask for one from {carBrake.wantedAbove} to {carBrake.stopAbove}.',
          do: 'Check your state and both manuals; a brake is the better answer.',
          proviso: 'your state and both manuals allow {towed.weight} without a brake',
        },
        {
          when: 'towed.brakeUntold && towed.all > carBrake.wantedAbove',
          wrong:
            'Whether what is towed brakes by itself is not known yet; on a dolly or trailer its own brakes count.',
          because:
            'Most states and makers ask for one from {carBrake.wantedAbove} to {carBrake.stopAbove}.',
          do: 'Look, and try it from the driver’s seat.',
          proviso: 'what is towed has a brake that works from the motorhome',
        },
        {
          when: 'towed.isUnbraked && towed.all > carBrake.wantedAbove',
          wrong: '{towed.all} is towed without a brake.',
          because:
            'Most states and makers ask for one from {carBrake.wantedAbove} to {carBrake.stopAbove}.',
          do: 'Check your state and both manuals; a brake is the better answer.',
          proviso: 'your state and both manuals allow {towed.all} without a brake',
        },
      ],
      care: {
        when: 'towed.isUnbraked',
        wrong: 'What is towed, {towed.all}, has no brake of its own.',
        because: 'Every stop takes longer, downhill above all.',
        do: 'Leave more room to stop, and ask your state from what weight a towed car must have one.',
      },
      open: {
        wrong: 'Whether what is towed must have a brake of its own is not known.',
        because:
          'Most states and makers ask for one from {carBrake.wantedAbove} to {carBrake.stopAbove}.',
        do: 'Find out what it weighs and whether it brakes by itself.',
      },
      otherwise: 'What is towed has a brake of its own, or is light enough to do without.',
      source: carBrake,
    },
  },
});
