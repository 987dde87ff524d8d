import type { HowTo } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/common';
import { protectedOutlets, trades } from '../../trade/bibliography/retrofit';

/** How the things are done that an owner may do, and how what others do is looked at. */
export const how = {
  'tee-in-a-water-line': {
    label: 'How a T-piece goes into a supply line, and how it is tested',
    steps: [
      'Pump off, city water off and unhooked, a faucet opened until nothing comes; a bowl and towels under the line.',
      'Unscrew the line at the valve, screw the T-piece on by hand and a quarter turn more, with the washer that came with it; no sealing tape on threads that seal by a washer.',
      'Screw the old line and the new one to it, and leave the new thing’s own valve shut.',
      'Pump on, and listen: a pump that runs again while nothing is open means a drip: pump off, and that joint once more.',
      'Dry every joint with paper, look after an hour and after a night, then once more under city water.',
    ],
    caution:
      'What has a cord is another matter: no outlet near water that does not trip at its test button.',
    source: custom,
    when: 'work.plumbing',
  },
  'test-an-outlet': {
    label: 'How a protected outlet is tried',
    steps: [
      'Plug a lamp in and press the test button, on that outlet or on the one ahead of it: the lamp goes out.',
      'Press reset: it burns again.',
      'See that the cord of the new thing reaches without an extension and without being pinched.',
    ],
    caution:
      'An outlet that does not trip, or is warm, is not used; a licensed electrician looks at it.',
    source: protectedOutlets,
  },
  'measure-its-place': {
    label: 'How its place is measured',
    steps: [
      'Stand the trailer level and chocked.',
      'Mark the middle of the axle on the ground; of two axles, the middle between them.',
      'Measure along the side from there to the ball, and to the middle of what is to be added.',
      'Ahead of the axles counts as plus, behind them as minus.',
    ],
    caution: 'Do not lie under the trailer for it.',
    source: custom,
  },
  'wire-it': {
    label: 'How a 12-volt thing is wired',
    steps: [
      'Battery switch off, shore power unplugged, minus taken off first.',
      'Read its current from its plate, and pick a wire that carries it and loses little on the way.',
      'Put a fuse no larger than the wire carries within a hand’s breadth of the battery.',
      'Fix the wire so that nothing chafes, plus last. Feel for warmth after an hour; what is warm is switched off and looked at.',
    ],
    caution:
      'A ring or a wrench across a battery burns through a finger. 120 volts are for an electrician.',
    source: custom,
    when: 'chain.onBattery',
  },
  'seal-a-hole': {
    label: 'How a hole in the roof is sealed',
    steps: [
      'Ask the maker what the roof is made of and which sealant it takes.',
      'Clean and dry it, bed the fitting in butyl, screw only into what the drawing shows.',
      'Cover every screw head and the edge with self-leveling sealant.',
      'Look again after the first rain, then twice a year.',
    ],
    caution:
      'A ladder on firm ground, held by somebody; a roof that is not made to be walked on is not.',
    source: trades,
    when: 'work.roof',
  },
} satisfies Record<string, HowTo>;
