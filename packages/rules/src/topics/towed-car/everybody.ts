import type { ForEverybody } from '../../engine/define/shapes';

const looked = {
  look: ['towed.fourDown'],
  given: {
    'towed.manner': 'four-down',
    'vehicle.gcwr': '26,000 lb',
    'motorhome.weighed': '20,000 lb',
    'towed.weight': '3,500 lb',
    'towed.brake': 'yes',
    'towed.cables': 'yes',
    'towed.breakaway': 'yes',
    'towed.lights': 'yes',
    'towed.steeringFree': 'yes',
    'towBar.rise': '-1 in',
  },
  givenSays: 'for a car of 3,500 pounds that is braked and hitched as it should be, where not told',
  clauses: {
    'towed.fourDown': { yes: 'its manual allows all four wheels', no: 'its manual forbids it' },
  },
  otherwise:
    'If you have not read the car’s manual and the labels of motorhome and receiver, tow nothing yet.',
} as const;

/** What is said to all who ask about a car behind a motorhome and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  brake: {
    rule: 'Look up two weights from which a brake is asked for: your state’s, and the one in the motorhome’s manual. The lower one counts.',
    because: 'The motorhome’s brakes are made for the motorhome.',
    look: [],
    otherwise: 'If you do not know, tow nothing that has no brake of its own.',
  },
  bar: {
    rule: 'The tow bar must be rated for all that hangs on it, and stand level or nearly so. Its arms never rise toward the motorhome.',
    because: 'The lowest-rated part counts: receiver, bar and base plate.',
    look: [],
    otherwise: 'If you find no rating on it, do not tow with it.',
  },
  any: {
    ...looked,
    rule: 'The car’s own manual says whether all four wheels may roll, never its kind of gearbox.',
    because:
      'The same kind of gearbox is oiled while it is towed in one car and burns out in another.',
  },
  most: {
    ...looked,
    look: ['motorhome.weighed'],
    given: { ...looked.given, 'towed.fourDown': 'yes' },
    givenSays:
      'for a combined rating of 26,000 pounds and a braked car of 3,500, allowed on its wheels and hitched right, where not told',
    clauses: { 'motorhome.weighed': 'the motorhome weighs {value}' },
    rule: 'Take the motorhome, as it rolls, from its combined rating: the rest may be towed. Receiver, bar and base plate may allow less.',
    because: 'People, water and things in the motorhome come off the same rating.',
  },
};
