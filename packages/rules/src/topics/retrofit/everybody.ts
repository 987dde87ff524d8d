import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask of an add-on and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  hands: {
    rule: 'Who may fit it goes by what it touches: 12 volts and water lines a careful owner, shut off first; what goes through the roof the dealer; structure a qualified shop; gas and 120 volts the licensed trade.',
    because:
      'A leak, a live skin or a bracket that lets go is found too late; and the booklet says what the maker still pays for.',
    look: [],
    otherwise: 'Whoever is not sure asks the trailer’s maker in writing before it is fitted.',
  },
  any: {
    rule: 'Before anything is added: what it weighs and where, what holds it and for how much that is rated, what it takes from battery or outlet, and what its fitting touches.',
    because:
      'Weight behind the axles comes off the ball, and what was made for less gives way on the road.',
    look: [],
    otherwise:
      'Whoever is not sure asks the trailer’s maker in writing before it is fitted; on its own legs or in a cupboard it harms least.',
  },
};
