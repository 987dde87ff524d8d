import type { HowTo } from '../../engine/define/shapes';
import { custom, statics } from '../../trade/bibliography/common';
import { swayControl, whenItBegins } from '../../trade/bibliography/sway';

/** How the things are done that sway asks for. */
export const how = {
  'when-it-begins': {
    label: 'How a sway is ended',
    steps: [
      'Take the foot off the pedal and touch no brake of the vehicle.',
      'Slide the lever of the brake controller, gently and then more, so that the trailer alone brakes.',
      'Hold the wheel straight with both hands; do not steer against the swing.',
      'Do not speed up.',
      'When it runs straight, stop where it is safe, and find the cause before you go on.',
    ],
    caution:
      'Find the lever with your hand before each trip, standing still. Without trailer brakes only the first and the third are left: off the pedal, and the wheel straight.',
    source: whenItBegins,
  },
  'weigh-the-share': {
    label: 'How the share is weighed',
    steps: [
      'Load it as for the road, tanks and racks too, on level ground with the wheels chocked.',
      'Weigh the tongue on a tongue scale at the height at which it tows.',
      'Weigh the loaded trailer by its axles on a public scale, hitched, with any bars slack, and add the tongue: tight bars set part of it on those axles already.',
      'Divide the tongue by that sum: {tongue.leastShare} to {tongue.mostShare} is usual on a ball.',
    ],
    caution:
      'Keep hands and feet from under the tongue; the jack stands firm and the wheels are chocked.',
    source: statics,
  },
  'move-load': {
    label: 'How load is moved to mend it',
    steps: [
      'Empty racks and rear storage first; what hangs behind the bumper counts the most.',
      'Put the heaviest things just ahead of the axles, low, and tie them down.',
      'Do not heap them at the very front instead: the share comes right, and it swings for longer.',
      'Weigh the tongue again, and check what may rest on the ball and the payload.',
    ],
    caution: 'Never load behind the axles to make a heavy tongue lighter.',
    source: custom,
  },
  'set-sway-control': {
    label: 'How sway control is set',
    steps: [
      'Read its own instructions; each kind is set in its own way.',
      'Set it after load and pressures are right, not in their place.',
      'A friction bar is loosened for backing up and on slippery roads where its maker says so.',
      'Try it at low speed on an empty road, and look at it again after the first miles.',
    ],
    caution: 'Sway control hides a wrong load; it does not mend it.',
    source: swayControl,
  },
} satisfies Record<string, HowTo>;
