import type { HowTo } from '../../engine/define/shapes';
import { custom, partsRating as makersRating } from '../../trade/bibliography/common';
import { geometry, noseBand } from '../../trade/bibliography/hitch-setup';

/** How a hitch is measured and set. */
export const how: Readonly<Record<string, HowTo>> = {
  'measure-the-drop': {
    label: 'How the drop is measured',
    steps: [
      'Level ground, everything loaded, people seated. Level the trailer by its frame.',
      'Coupler: from the road up to where the crown of the ball will sit.',
      'Receiver: from the road up to the upper inside face of its opening, with the tongue’s weight on it.',
      'Drop is the receiver’s height plus the ball’s own, less the coupler’s; take the mount that leaves it level to {nose.lowest} low.',
    ],
    caution: 'Wheels chocked, and no feet under the coupler.',
    source: geometry,
  },
  'set-the-bars': {
    label: 'How bars are set',
    steps: [
      'Loaded and level, measure the front fender not hitched, then hitched with the bars slack.',
      'Raise coupler and vehicle together with the jack, so that the bars go on by hand.',
      'Set links or tilt as the hitch’s maker says, take the jack up, roll a length forward, measure again.',
      'Between {setting.least} and {setting.most} of the lift is taken back, or what the vehicle’s manual says. Then see that the trailer stands level.',
    ],
    caution:
      'Bars under load snap: face and feet clear, the maker’s own lever, and never without the jack.',
    source: makersRating,
  },
  'check-before-rolling': {
    label: 'How a coupling is checked before it rolls',
    steps: [
      'Latch shut and pinned; lift with the jack until the vehicle rises with it.',
      'Receiver pin clipped; chains crossed under the coupler, off the road, free to turn.',
      'Breakaway cable on a point of its own, not on ball or chain; plug in.',
      'Jack up, lights tried, trailer brakes tried at walking pace.',
    ],
    caution: 'Pull the breakaway pin only while standing, and put it back at once.',
    source: custom,
  },
  'see-whether-it-is-level': {
    label: 'How one sees whether it stands level',
    steps: [
      'Loaded for the road, on level ground, hitched and the bars set.',
      'Measure the trailer’s frame at its front and at its rear, to the same line.',
      'Level, or the front up to {nose.lowest} lower, is right; a high nose is not.',
    ],
    caution: 'After a change of load, measure again.',
    source: noseBand,
  },
};
