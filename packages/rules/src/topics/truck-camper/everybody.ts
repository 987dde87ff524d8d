import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask about a camper in a bed and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  heaviest: {
    rule: 'Read the payload on the door label. Take off people, things and the tie-downs’ hardware: the loaded camper, not the empty one, may weigh the rest.',
    because: 'A label on a camper leaves out options, what is packed, and often water and gas.',
    look: [],
    otherwise: 'If you are not sure, weigh the truck, axle by axle, before you buy the camper.',
  },
  balance: {
    rule: 'The camper’s center of gravity, loaded, must lie within the zone that the truck’s maker draws, and never behind the rear axle.',
    because: 'Behind the axle it lifts the front wheels, and they steer and brake less.',
    look: [],
    otherwise:
      'If you find no mark on the camper’s side, weigh the loaded truck, axle by axle, before the road.',
  },
  people: {
    rule: 'The camper’s cargo rating counts every seat at a set weight: what people weigh beyond that comes off it. The door label counts everybody as they are.',
    because: 'A pound is a pound to the axle, in the cab or in the bed.',
    look: [],
    otherwise: 'If you do not know, count everybody and all they bring against the door label.',
  },
  behind: {
    rule: 'What is towed behind a camper puts its tongue weight behind the rear axle, on top of the camper. An extension lowers what the receiver may carry.',
    because: 'Weight behind the axle takes load off the front wheels.',
    look: [],
    otherwise: 'If you do not know the extension’s own rating, tow nothing with it.',
  },
  tieDowns: {
    rule: 'A camper is tied down at all corners, best at the truck’s frame, with what the makers of truck and camper name for it.',
    because: 'Thin metal of the bed tears out, and then nothing holds the camper.',
    look: [],
    otherwise: 'If you do not see what holds it, do not drive it.',
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
