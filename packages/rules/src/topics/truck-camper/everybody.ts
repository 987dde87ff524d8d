import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask about a camper in a bed and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  heaviest: {
    rule: 'Read the payload on the door label. Take off people, things and the tie-downs’ hardware: the loaded camper, not the empty one, may weigh the rest.',
    because: 'A label on a camper leaves out options, what is packed, and often water and gas.',
    look: [],
    otherwise: 'If you are not sure, weigh the truck, axle by axle, before you buy the camper.',
  },
  any: {
    rule: 'The door label says what people, things and the loaded camper may weigh together. The camper’s center of gravity must lie where the truck’s maker draws it.',
    because:
      'A camper’s label leaves out options and what is packed, and behind the rear axle its weight lifts the front wheels.',
    look: ['vehicle.placardPayload'],
    given: {
      'camper.weight': '2,000 lb',
      'load.occupants': [{ label: 'Two people', weight: '340 lb' }],
    },
    givenSays: 'for a camper labeled 2,000 pounds and two people of 170 each, where not told',
    clauses: { 'vehicle.placardPayload': 'the door label says {value}' },
    otherwise: 'If you do not know, weigh the loaded truck, axle by axle, before the road.',
  },
};
