import type { HowTo } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/common';
import { display, makersManual } from '../../trade/bibliography/electric-tow-range';

/** How what is asked is found out, and how a stop and a descent are done. */
export const how = {
  'trial-drive': {
    label: 'How a trial drive is done',
    steps: [
      'Load the rig as for the trip, tires at their pressure, battery or tank as you find it.',
      'Reset the trip display, and drive some ten miles of level highway at the speed of the trip, then back the same way. Stop at the first sway or warning lamp.',
      'Read what it used a mile; there and back, wind and slope cancel.',
      'Put that in as the trial drive with its speed.',
    ],
    caution: 'The tow ratings come first: no trial with a rig that is over one of them.',
    source: display,
  },
  'unhitch-to-charge': {
    label: 'How the trailer comes off at a stall',
    steps: [
      'Find a level place out of every lane, and stop straight.',
      'Chock both sides of the trailer before anything is unlatched.',
      'Jack down, latch open, ball free; then plug, breakaway cable and chains.',
      'After charging everything the other way round, latch and pin, and somebody looks at the lamps.',
    ],
    caution:
      'A trailer without chocks rolls the moment the ball is free. Stand clear of the gap between the two.',
    source: custom,
  },
  'go-down': {
    label: 'How a long grade is driven down',
    steps: [
      'Read the sign at the top, and be slow before the road tips.',
      'Take the gear that would climb it, or set the strongest holding back; leave room in a battery.',
      'Let the rig come up to the speed you want, brake it firmly five miles an hour under it, let go, and again.',
      'At a pull-out let hot brakes stand; do not set a parking brake on glowing drums.',
    ],
    caution:
      'A pedal that sinks or a smell of burning: the escape ramp is for you. Never shift out of gear downhill.',
    source: makersManual,
  },
} satisfies Record<string, HowTo>;
