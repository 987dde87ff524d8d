import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { barLevel, barParts, carsManual } from '../../trade/bibliography/towed-car';

const known = (label: string, fact: string) =>
  ({ label, unit: 'yes-no', is: `known(${fact})`, source: barParts }) as const;

/**
 * What joins car and motorhome.
 *
 *     receiver ─────── bar ─────── base plate       level within 3 in, never up toward the motorhome
 */
export const joined = part({
  parameters: {
    'towBar.mostDrop': {
      label: 'How far the bar may fall toward the motorhome',
      noun: 'how far it may fall',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 3 }],
      source: barLevel,
    },
    'towBar.level': {
      label: 'A level bar',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 0 }],
      source: barLevel,
    },
  },
  formulas: {
    'manual.isUnread': {
      label: 'What the car’s manual allows was not told',
      unit: 'yes-no',
      is: '!given(towed.fourDown) && !given(towed.dollyAllowed)',
      source: custom,
    },
    'towBar.fall': {
      label: 'How far the bar falls toward the motorhome',
      noun: 'how far it falls',
      unit: 'in',
      is: '-towBar.rise',
      source: barLevel,
    },
    'cables.areKnown': known('It is known whether the cables are on', 'towed.cables'),
    'breakaway.isKnown': known('It is known whether there is a breakaway', 'towed.breakaway'),
    'lights.areKnown': known('It is known whether the lights work', 'towed.lights'),
    'steering.isKnown': known('It is known whether the steering is unlocked', 'towed.steeringFree'),
    'joined.isUntold': {
      label: 'Of cables, breakaway or lights nobody told',
      unit: 'yes-no',
      is: '!known(towed.cables) || !known(towed.breakaway) || !known(towed.lights)',
      source: barParts,
    },
    'rolling.isUntold': {
      label: 'Of the steering or the bar’s level nobody told',
      unit: 'yes-no',
      is: 'fourDown.isMeant && (!known(towed.steeringFree) || !known(towBar.rise))',
      source: barParts,
    },
  },
  findings: {
    'bar-level': {
      label: 'Level of the tow bar',
      askedBy: ['towBar.rise'],
      askedWhen: 'bar.isMeant',
      stop: [
        {
          when: 'towBar.rise > towBar.level',
          wrong: 'The tow bar rises toward the motorhome, by {towBar.rise}.',
          because: 'In a hard stop the car climbs under it and lifts the rear axle.',
          do: 'Fit a drop receiver of the bar’s maker, rated for the car, and measure again.',
        },
        {
          when: 'towBar.fall > towBar.mostDrop',
          wrong:
            'The tow bar falls toward the motorhome by {towBar.fall}, and {towBar.mostDrop} is the most.',
          because: 'In a hard stop the car is pushed upward at its front.',
          do: 'Fit a receiver of the bar’s maker that stands higher, and measure again.',
        },
      ],
      open: {
        wrong: 'The tow bar may stand too far off level.',
        do: 'Measure both ends, hitched.',
      },
      otherwise: 'The tow bar is level enough.',
      source: barLevel,
    },
    cables: {
      label: 'Safety cables',
      askedBy: ['towed.cables'],
      askedWhen: 'cables.areKnown',
      stop: {
        when: "cables.areKnown && towed.cables == 'no'",
        wrong: 'There are no safety cables on.',
        because: 'If pin or bar lets go, they alone hold the car.',
        do: 'Hook cables rated for the car, crossed, before it moves.',
      },
      open: { wrong: 'Safety cables may be missing.', do: 'Look.' },
      otherwise: 'Safety cables are on.',
      source: barParts,
    },
    breakaway: {
      label: 'Breakaway switch',
      askedBy: ['towed.breakaway'],
      askedWhen: 'breakaway.isKnown',
      stop: {
        when: "breakaway.isKnown && towed.breakaway == 'no' && towed.all > carBrake.wantedAbove",
        wrong: 'No breakaway switch brakes the car if it comes loose.',
        because: 'A car that comes loose rolls on by itself.',
        do: 'Have one fitted, and try it standing still.',
      },
      care: {
        when: "breakaway.isKnown && towed.breakaway == 'no'",
        wrong: 'No breakaway switch brakes the car if it comes loose.',
        do: 'Only the safety cables would hold it then: hook them crossed, and ask your state whether it wants a switch.',
      },
      open: {
        wrong: 'There is no breakaway switch.',
        because: 'A car that comes loose rolls on by itself.',
        do: 'Have one fitted, and try it standing still.',
      },
      otherwise: 'There is a breakaway switch, or it is not needed.',
      source: barParts,
    },
    lights: {
      label: 'Lights',
      askedBy: ['towed.lights'],
      askedWhen: 'lights.areKnown',
      stop: {
        when: "lights.areKnown && towed.lights == 'no'",
        wrong: 'The lights at the rear do not work from the motorhome.',
        because: 'Drivers behind do not see that the car brakes or turns.',
        do: 'Have them wired before it is towed.',
      },
      open: {
        wrong: 'The rear lights may not work.',
        do: 'Try them, one at the pedal, one behind.',
      },
      otherwise: 'The rear lights work.',
      source: barParts,
    },
    steering: {
      label: 'Steering of the car',
      first: true,
      askedBy: ['towed.steeringFree'],
      askedWhen: 'bar.isMeant',
      stop: {
        when: "fourDown.isMeant && steering.isKnown && towed.steeringFree == 'no'",
        wrong: 'The car’s steering is locked.',
        because: 'Its front wheels slide around every bend, and bar and tires give way.',
        do: 'Unlock it as the car’s manual says, and turn the wheels a little by hand.',
      },
      unknown: {
        when: "manner.isUntold && steering.isKnown && towed.steeringFree == 'no'",
        wrong: 'The car’s steering is locked.',
        because: 'On the road its front wheels would slide around every bend.',
        do: 'Unlock it as the car’s manual says before the car’s wheels roll.',
      },
      open: { wrong: 'The car’s steering may be locked.', do: 'Turn its wheels by hand.' },
      otherwise: 'The car’s steering is unlocked.',
      source: carsManual,
    },
    battery: {
      label: 'Battery of the car',
      askedBy: ['towed.batteryKept'],
      care: {
        when: "towed.batteryKept == 'no'",
        wrong: 'Nothing keeps the car’s battery up on the road.',
        because:
          'The unlocked key, the brake and the lights drain it; an electric brake and the steering lock may need it.',
        do: 'Have a charge line run, or do what its manual says at each stop.',
      },
      open: { wrong: 'The car’s battery may run down.', do: 'Ask for a charge line.' },
      otherwise: 'The car’s battery is kept up.',
      source: carsManual,
    },
    'joined-untold': {
      label: 'Cables, breakaway, lights, steering, level',
      if: [
        {
          when: 'joined.isUntold && rolling.isUntold',
          wrong: 'Not all was told of cables, breakaway, lights, steering and the bar’s level.',
          do: 'Look at each before it moves.',
          proviso:
            'cables, breakaway and lights are on and tried, the steering is free and the bar level',
        },
        {
          when: 'joined.isUntold',
          wrong: 'Not all was told of cables, breakaway and lights.',
          do: 'Look at each before it moves.',
          proviso: 'cables, breakaway and lights are on and tried',
        },
        {
          when: 'rolling.isUntold',
          wrong: 'Not all was told of the steering and the bar’s level.',
          do: 'Look at both before it moves.',
          proviso: 'the steering is free and the bar level',
        },
      ],
      otherwise: 'Cables, breakaway, lights and steering were told.',
      source: barParts,
    },
  },
});
