import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask of an add-on and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  hands: {
    rule: 'What the new part touches says who fits it. Gas and 120 volts: a licensed person; structure: a qualified shop; the roof: the dealer. 12 volts and water lines: a careful owner, shut off first.',
    because:
      'A leak, a live skin or a bracket that lets go is found too late. The booklet says what the maker still pays for.',
    look: [],
    otherwise: 'If you are not sure, ask the trailer’s maker in writing before anything is fitted.',
  },
  any: {
    rule: 'Find out four things about the new part: weight and place, what holds it, what power it takes, what its fitting touches.',
    because:
      'Weight behind the axles comes off the ball, and what was made for less gives way on the road.',
    look: [],
    otherwise:
      'If you are not sure, ask the trailer’s maker in writing first. On its own legs or in a cupboard the addition harms least.',
  },
};
