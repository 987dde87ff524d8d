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
  tongue: {
    rule: 'Ahead of the axles a part of its weight rests on the ball; behind them a part comes off it. That part is its weight times its distance from the axles, divided by the distance from ball to axles.',
    because:
      'A tongue that gets too light sways, and one that gets too heavy is too much for the hitch.',
    look: [],
    otherwise: 'If you are not sure, weigh the tongue before and after, loaded as for the road.',
  },
  water: {
    rule: 'Divide what a tank holds by all that goes in or out of it in a day, the new part’s share with it.',
    because: 'A waste tank may be full long before the fresh one is empty.',
    look: [],
    otherwise: 'If you do not know, read all gauges on two evenings with the new part in use.',
  },
  circuit: {
    rule: 'Add up the amperes of all that runs on that breaker at the same time, the new part with it. What runs for hours needs more room below the breaker’s own figure.',
    because: 'A breaker that trips again and again is warm before it does.',
    look: [],
    otherwise:
      'If you are not sure, let nothing large run beside it, and have an electrician look.',
  },
  battery: {
    rule: 'Watts times hours, divided by the battery’s volts, are the ampere-hours that it takes a day. Sun, charger or generator must bring them back.',
    because: 'What is not brought back is missing the next evening.',
    look: [],
    otherwise: 'If you do not know, read the monitor over a day without it and over a day with it.',
  },
  wire: {
    rule: 'The fuse protects the wire: no larger than the wire may carry, and close to the battery. More current or more length, counted both ways, wants a thicker wire.',
    because: 'A thin wire behind a large fuse burns before the fuse melts.',
    look: [],
    otherwise:
      'If you are not sure, take wire and fuse from the part’s own instructions, or have it wired.',
  },
  holds: {
    rule: 'The new part may hang only on what is rated to carry it. A bumper without a rating carries nothing.',
    because: 'What moves on the road pulls with more than its weight.',
    look: [],
    otherwise:
      'If you find no rating, ask the trailer’s maker in writing, and hang nothing there until then.',
  },
  warranty: {
    rule: 'Read in the booklet what ends the warranty and how long it runs, before anything is opened.',
    because: 'A maker may refuse to pay for whatever a change has touched.',
    look: [],
    otherwise: 'If you are not sure, ask the maker in writing, and keep the answer.',
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
