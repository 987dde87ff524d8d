import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask how far a battery tows and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  descent: {
    rule: 'Go down slower than up, with the trailer’s brakes set and the drive holding the speed; stop and let hot brakes cool.',
    because:
      'A full battery takes nothing back, and what it does not take goes into the brakes as heat.',
    look: ['trip.steepestGrade'],
    otherwise: 'If you are not sure, go down at the speed of loaded trucks.',
  },
  climb: {
    rule: 'What a grade asks of the drive grows with weight, grade and speed alike: climb slower, and it asks for less.',
    because: 'A drive that gives its most for long gets hot, and then gives less.',
    look: ['trip.steepestGrade', 'trip.climbSpeed'],
    otherwise: 'If you do not know, climb at the speed of loaded trucks, and stop if it gets hot.',
  },
  tank: {
    rule: 'With a trailer a mile takes {towing.leastTimes} to {towing.mostTimes} of what it takes alone, so a tank lasts about half as far. Keep {range.reserve} of the tank.',
    because: 'A tall front pushes air the whole way; speed and wind count more than weight.',
    look: [],
    otherwise:
      'If you do not know, fill up at half a tank, and read the display after the first miles.',
  },
  charging: {
    rule: 'Charge from low, and no further than {window.top}: above that it goes slowly. Look for chargers that one drives through; at a stall the trailer comes off first, which takes about {unhitch.time}.',
    because: 'A battery takes its most while it is rather empty.',
    look: [],
    otherwise: 'If you do not know a charger, have a second one within reach of the first.',
  },
  any: {
    rule: 'With a trailer a mile takes {towing.leastTimes} to {towing.mostTimes} of what it takes alone, so plan half as far. Keep {range.reserve} in reserve.',
    because:
      'A tall front pushes air the whole way; speed, headwind and cold count more than weight.',
    look: ['trip.distance'],
    given: { 'vehicle.usableBattery': '100 kWh', 'solo.consumption': '0.45 kWh/mi' },
    givenSays:
      'for a battery of 100 kilowatt-hours that takes 0.45 of them a mile alone, where not told',
    clauses: { 'trip.distance': 'the way is {value}' },
    worked: {
      says: 'Say {vehicle.usableBattery} can be used, and alone a mile takes {solo.consumption}. With a trailer it goes {range.told}.',
      given: { 'vehicle.usableBattery': '100 kWh', 'solo.consumption': '0.45 kWh/mi' },
    },
    fromTold: [
      {
        says: 'For {trip.distance} with a trailer plan as if they were twice as many; {range.reserve} stays in reserve.',
      },
    ],
    otherwise:
      'If you do not know, drive twenty miles with the trailer on, and plan with the miles the display shows.',
  },
};
