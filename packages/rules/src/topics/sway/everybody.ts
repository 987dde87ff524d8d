import type { ForEverybody } from '../../engine/define/shapes';

const rule =
  'When it begins: off the pedal, the trailer’s brakes by hand, the wheel held straight, no brakes of the vehicle, no speeding up; then stop, and find the cause.';
const otherwise =
  'Whoever has not weighed the tongue empties racks and rear storage, puts the heavy things just ahead of the axles, and weighs it before the trip.';

/** What is said to all who ask about sway and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  any: {
    rule,
    because:
      'What lets a trailer sway, before all else, is too little weight on the ball; then speed, wind, soft tires and weight at its ends.',
    look: ['trailer.measuredTongueWeight'],
    given: {
      'trailer.dryWeight': '5,000 lb',
      'trailer.cargo': [],
      'sway.felt': 'never',
      'tires.pressures': 'as-labeled',
    },
    givenSays:
      'for a trailer of 5,000 pounds as it rolls, which has not swayed and has its tires at their labels’ pressures, where not told',
    clauses: { 'trailer.measuredTongueWeight': 'the loaded tongue weighs {value}' },
    otherwise,
  },
};
