import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask what to carry and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  any: {
    rule: 'First what gets a wheel changed: a spare that holds air, a jack for the side of the trailer and a place where its maker lets it stand, a stand, chocks, and a torque wrench.',
    because: 'What is missing at the roadside is sold nowhere near it.',
    look: [],
    otherwise:
      'Whoever is short of room takes that, a lamp, a vest and triangles, and leaves the rest.',
  },
};
