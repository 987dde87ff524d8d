import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask how far a battery tows and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  descent: {
    rule: 'Go down slower than up, with the trailer’s brakes set and the drive holding the speed; stop and let hot brakes cool.',
    because:
      'A full battery takes nothing back, and what it does not take goes into the brakes as heat.',
    look: [],
    otherwise: 'Whoever does not know the grade goes down at the speed of loaded trucks.',
  },
  tank: {
    rule: 'With a trailer a mile takes {towing.leastTimes} to {towing.mostTimes} of what it takes alone, so a tank goes about half as far; keep {range.reserve} of it.',
    because: 'A tall front pushes air the whole way; speed and wind count more than weight.',
    look: [],
    otherwise:
      'Whoever does not know fills up at half a tank, and reads the display after the first miles.',
  },
  any: {
    rule: 'With a trailer a mile takes {towing.leastTimes} to {towing.mostTimes} of what it takes alone, so it goes about half as far; keep {range.reserve} in reserve.',
    because:
      'A tall front pushes air the whole way; speed, headwind and cold count more than weight.',
    look: ['trip.distance'],
    given: { 'vehicle.usableBattery': '100 kWh', 'solo.consumption': '0.45 kWh/mi' },
    givenSays:
      'for a battery of 100 kilowatt-hours that takes 0.45 of them a mile alone, where not told',
    clauses: { 'trip.distance': 'the way is {value}' },
    worked: {
      says: 'Of a battery with {vehicle.usableBattery} to use that takes {solo.consumption} alone, {range.towing} are left with a trailer.',
      given: { 'vehicle.usableBattery': '100 kWh', 'solo.consumption': '0.45 kWh/mi' },
    },
    otherwise:
      'Whoever does not know drives twenty miles with the trailer on, and plans with what the display shows.',
  },
};
