import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask what to carry and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  any: {
    rule: 'First pack what gets a wheel changed: a spare that holds air, a jack, a stand, chocks and a torque wrench. Read in the trailer’s manual where the jack may stand.',
    because: 'What is missing at the roadside is sold nowhere near it.',
    look: [],
    otherwise:
      'If you are short of room, take those first, a lamp, a vest and triangles, and leave the rest.',
  },
};
