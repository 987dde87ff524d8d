import type { HowTo } from '../../engine/define/shapes';
import { looked, titles, wetMeter } from '../../trade/bibliography/used-trailer';

/** How a used trailer is looked at. */
export const how = {
  'find-water': {
    label: 'How water is found',
    steps: [
      'Look along each wall in a low light: waves and bubbles are a skin that has let go.',
      'Press every corner, below each window, around the door and under the beds.',
      'Put a moisture meter on stains and corners: over {wet.above} is wet.',
      'Open every outside hatch and smell; look at the ceiling around each vent.',
    ],
    caution: 'A second person holds the ladder; do not walk on a roof that may be soft.',
    source: wetMeter,
  },
  'look-below': {
    label: 'How the frame is looked at',
    steps: [
      'Chock the wheels and leave it on them.',
      'Lie beside it, not under it, and follow the frame with a lamp from the coupler to the bumper.',
      'Look at the spring hangers from both sides: a crack shows as a line of rust. Follow it: into the rail it is the frame’s.',
      'Try rust with a screwdriver; what gives is through.',
    ],
    caution: 'Never under a trailer on a jack.',
    source: looked,
  },
  'check-the-title': {
    label: 'How a title is checked',
    steps: [
      'Hold the number on the title against the one on the frame and on the label.',
      'Hold the name on it against the seller’s papers.',
      'Ask the state’s office whether a lien or a brand stands in it.',
      'With a lien: the payoff amount in writing from the lender, that money to the lender, the rest to the seller against the release, at the lender’s counter or through escrow.',
    ],
    caution: 'No deposit before the title has been seen. Questions of law are for a lawyer.',
    source: titles,
  },
} satisfies Record<string, HowTo>;
