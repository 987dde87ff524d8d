import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask what to carry and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  lift: {
    rule: 'Lift the trailer only where its manual allows it, hitched and chocked, on firm, level ground. The jack must be rated for the load, and a stand goes beside it.',
    because: 'A jack alone tips over, and many an axle bends where it is lifted.',
    look: [],
    otherwise: 'If you do not know the place, call for help instead.',
  },
  spare: {
    rule: 'A spare must hold air, be no older than a tire may be, and carry what one wheel of the trailer carries.',
    because: 'A spare ages in its cover as fast as the tires on the road.',
    look: [],
    otherwise: 'If you do not know, read its date code and its load rating on the sidewall today.',
  },
  weight: {
    rule: 'Where it rides decides. In the vehicle it comes off the door label’s payload. In the trailer it comes off the cargo capacity, and behind the axles off the ball, too.',
    because: 'A full set of tools weighs as much as a person may.',
    look: [],
    otherwise:
      'If you do not know, carry it in the trailer, low, above the axles or just ahead of them.',
  },
  ramp: {
    rule: 'A ramp is for two axles, and only where the makers of trailer and tire allow it: one tire then carries the whole side. On one axle no ramp helps.',
    because: 'A tire that is overloaded once is hurt inside, where nobody sees it.',
    look: [],
    otherwise: 'If you do not know, use a jack, at the point that the trailer’s maker names.',
  },
  leave: {
    rule: 'Leave at home what is sold at every roadside, and keep what changes a wheel, warns others and puts out a fire.',
    because: 'What is missing at the roadside is sold nowhere near it.',
    look: ['trip.remoteness'],
    otherwise: 'If you are short of room, keep spare, jack, stand, chocks, torque wrench and lamp.',
  },
  any: {
    rule: 'First pack what gets a wheel changed: a spare that holds air, a jack, a stand, chocks and a torque wrench. Read in the trailer’s manual where the jack may stand.',
    because: 'What is missing at the roadside is sold nowhere near it.',
    look: [],
    otherwise:
      'If you are short of room, take those first, a lamp, a vest and triangles, and leave the rest.',
  },
};
