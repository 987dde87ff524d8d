import type { ForEverybody } from '../../engine/define/shapes';

/** What is said to all who ask which floor plan and told next to nothing. */
export const everybody: Readonly<Record<string, ForEverybody>> = {
  since: {
    rule: 'What is standard and what is an option changes with the model year. The order sheet of that year says which; of a trailer on the lot, its own label.',
    because: 'A part that became standard is in the dry weight, and no option any more.',
    look: [],
    otherwise: 'If you do not know the year, read it off the label at the front left.',
  },
  any: {
    rule: 'First what the vehicle may pull and carry: that says how heavy the trailer’s own maximum may be. Then beds and doors say which floor plans; options come last.',
    because: 'Each option takes from the room below the trailer’s own maximum, and none raises it.',
    look: [],
    otherwise:
      'If you cannot choose, name what must be there, and ask which plans can be ordered with that.',
  },
};
