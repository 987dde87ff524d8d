import type { HowTo } from '../../engine/define/shapes';
import { custom, statics } from '../../trade/bibliography/common';
import { printedSteps } from '../../trade/bibliography/weigh-in';

/** How a rig is weighed. */
export const how: Readonly<Record<string, HowTo>> = {
  'three-passes': {
    label: 'How a rig is weighed in three passes',
    steps: [
      'Load as for the road, water, gas and people too. Each axle on its own plate; the trailer’s axles may share one.',
      'First pass hitched, bars tight. Second pass hitched, bars slack, at walking pace on the scale only.',
      'Drop the trailer on level ground. Third pass the vehicle alone: hitch head on, same people, same fuel.',
      'Tongue: the vehicle’s axles with slack bars less alone. Trailer: everything hitched less the vehicle alone. Front axle: what the bars bring back.',
    ],
    caution:
      'Bars on again before the road. Wheels chocked before the coupler opens; no one between the two.',
    source: printedSteps,
  },
  'two-passes': {
    label: 'How it is done in two passes',
    steps: [
      'Pass one hitched with the bars tight, pass two the vehicle alone.',
      'Measure the wheelbase, from rear axle to ball, and from ball to the trailer’s axles.',
      'What tight bars leave on the vehicle is not the tongue: they have moved a part of it to the trailer.',
    ],
    caution: 'With the bars never slack, the rear axle is seen only as they help it.',
    source: statics,
  },
  'tongue-at-home': {
    label: 'How a tongue is weighed at home',
    steps: [
      'A beam over two supports: one on the ground, one on a bathroom scale; the coupler rests on the beam near the ground.',
      'Measure from the coupler to each support, along the beam.',
      'The scale’s reading times the whole length, divided by the length from coupler to block, is the tongue, less what the beam itself shows.',
      'Level ground, loaded for the road, the jack just off the ground. Stop where the scale nears its end, and set the block closer.',
    ],
    caution: 'Wheels chocked, a stand under the A-frame, and feet away: it is some hundred pounds.',
    source: custom,
  },
};
