import type { HowTo } from '../../engine/define/shapes';
import { statics } from '../../trade/bibliography/common';
import { barLevel, barParts, carsManual } from '../../trade/bibliography/towed-car';

/** How the things are done that a car behind a motorhome asks for. */
export const how = {
  'read-the-manual': {
    label: 'How it is found out whether all four may roll',
    steps: [
      'Open the manual of that very car and year at towing behind a motorhome; recreational and flat towing are the same.',
      'Read for that very gearbox and drive: the answer differs within one model.',
      'Write down what it wants before, every so many miles, and the fastest speed.',
      'Where the manual is silent or forbids it, it rides on a trailer.',
    ],
    caution:
      'Never go by the kind of gearbox, by a neighbor’s car or by another year of the same one.',
    source: carsManual,
  },
  'weigh-it': {
    label: 'How it is found out what may be towed',
    steps: [
      'Weigh the motorhome loaded, tanks and people too, axle by axle, and hold it against its own gross rating.',
      'Take that off the combined rating on its label: what is left may be towed.',
      'Weigh the car with its fuel and things, and add the dolly or trailer.',
      'Then hold it against receiver, bar, base plate and dolly: the lowest counts.',
    ],
    caution: 'The receiver’s label is often lower than what the combined rating leaves.',
    source: statics,
  },
  'level-the-bar': {
    label: 'How the tow bar is leveled',
    steps: [
      'Hitch it on level ground, the motorhome loaded as for the road.',
      'Measure from the ground to the bar at the receiver, and again at the car.',
      'It may fall toward the motorhome by {towBar.mostDrop} at the most, and never rises.',
      'Mend it with a drop or rise receiver of the bar’s maker, and measure again.',
    ],
    caution: 'Stand beside, not between, while anyone moves either of them.',
    source: barLevel,
  },
  'hitch-and-unhitch': {
    label: 'How it is hitched and let go',
    steps: [
      'Hitch straight and level, latch both arms, pull forward slowly until both click.',
      'Hook cables, plug in lights, clip the breakaway to the motorhome.',
      'Do to the car what its manual says; turn its wheels a little by hand.',
      'Try the car’s brake at walking pace, and the lights. What does not answer is not towed.',
    ],
    caution:
      'Never reverse with a tow bar or a dolly: unhitch first. Chock the car before the pins come out.',
    source: barParts,
  },
} satisfies Record<string, HowTo>;
