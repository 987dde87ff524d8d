import type { HowTo } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/common';
import { dateCode, makersRating, softTire } from '../../trade/bibliography/tires';

/** How tires are read, filled and changed. */
export const how: Readonly<Record<string, HowTo>> = {
  'read-a-sidewall': {
    label: 'How a sidewall is read',
    steps: [
      'Letters before the size: ST is for trailers only, LT for light trucks, P or none for passenger cars.',
      'Load index or load range, with the load in pounds at the pressure beside it; single and dual are two figures.',
      'The letter after the index is the speed; a trailer’s tire without one counts at {speed.unmarked}.',
      'DOT and its last four digits: week and year, often on the inner side only.',
    ],
    caution: 'A cut, a bulge, cracks or cords end a tire, whatever it says.',
    source: dateCode,
  },
  'fill-a-tire': {
    label: 'How a tire is filled',
    steps: [
      'In the morning, before it rolls and out of the sun: only then it is cold.',
      'Read the label on the trailer’s left front, and the pressure on the sidewall and the wheel.',
      'Fill to the label, never above sidewall or wheel; the spare too.',
      'At {pressure.lookShare} of that or less do not fill: take it off and have it looked into.',
    ],
    caution: 'Stand to the side of the tread while it fills. Never let air out of a warm tire.',
    source: softTire,
  },
  'change-a-wheel-on-one-axle': {
    label: 'How a wheel is changed on one axle',
    steps: [
      'Off the road, level and firm, triangles out, hitched to the vehicle; chock the other wheel on both sides.',
      'Break the nuts loose by half a turn while it stands on the ground.',
      'Jack at the point that the trailer’s maker names, never at axle or torsion tube; a stand beside it.',
      'Change, nuts in a star by hand, down, and torque in a star; again after 10, 25 and 50 miles.',
    ],
    caution:
      'No one in the trailer, no one under it, and traffic in view. On a highway call for help.',
    source: custom,
  },
  'weigh-the-sides': {
    label: 'How the sides are weighed',
    steps: [
      'Loaded for the road, on a scale for single wheels, or with one side on the platform and one beside it on level ground.',
      'Write down each wheel; the fullest one counts.',
      'Set it against the load of one tire at its pressure.',
    ],
    caution: 'A side may carry far more than its half: kitchens and slides stand on one.',
    source: makersRating,
  },
};
