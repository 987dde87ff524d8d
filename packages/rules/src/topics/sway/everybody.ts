import type { ForEverybody } from '../../engine/define/shapes';

const looked = {
  look: ['sway.felt'],
  given: {
    'trailer.dryWeight': '5,000 lb',
    'trailer.cargo': [],
    'trailer.measuredTongueWeight': '600 lb',
    'tires.pressures': 'as-labeled',
  },
  givenSays: 'for a tongue of 600 of 5,000 pounds and tires as labeled, where not told',
  clauses: {
    'sway.felt': {
      never: 'it has never swayed',
      'with-trucks': 'passing trucks nudge it',
      'by-itself': 'it has swayed by itself',
    },
  },
  otherwise: 'If you have not weighed the tongue, empty racks and rear storage, and weigh first.',
} as const;

const share = {
  rule: 'Keep {tongue.leastShare} to {tongue.mostShare} of the loaded trailer on the ball, and the heavy things near the axles.',
  because:
    'Less than {tongue.leastShare} of the trailer on the ball lets it sway, before all else. Then come speed, wind, soft tires and weight at its ends.',
} as const;

/** What is said to all who ask about sway and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  when: {
    ...looked,
    rule: 'Trailer brakes alone pull a rig straight, like a string.',
    because: 'Going slower lets a swing die out; steering, the vehicle’s brakes and speed feed it.',
  },
  length: {
    rule: 'By a rule of thumb a wheelbase of {length.wheelbase} carries {length.first} of trailer. A longer trailer asks for {length.each} more. What rests on the ball says more.',
    because: 'A short vehicle is turned more easily by the side of a long trailer.',
    look: ['vehicle.wheelbase'],
    otherwise: looked.otherwise,
  },
  speed: {
    rule: 'Go no faster than {speed.careAbove}, nor than the slowest tire of the rig allows; slower in wind and downhill.',
    because: 'The faster it goes, the longer a swing takes to die out; fast enough, it grows.',
    look: ['trip.speed'],
    otherwise: looked.otherwise,
  },
  any: { ...looked, ...share },
  // Whoever told of tongue or load is judged by that, and by no tongue presumed beside it.
  will: {
    ...looked,
    ...share,
    given: { 'tires.pressures': 'as-labeled' },
    givenSays: 'for tires at the pressures of their labels, where not told',
  },
};
