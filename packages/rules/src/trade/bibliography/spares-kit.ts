import type { Source } from '../../engine/define/shapes';

/** Where the kit, its weights and the rules of lifting come from. */
export const baseList: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'What a specialist tells people to carry with any trailer.',
};

export const kitWeights: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Usual weights of such things, rounded; a bathroom scale is better.',
};

export const lifting: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Lift only where the trailer’s maker allows, with a device rated above what stands on it; never at an axle or a torsion tube.',
};

export const retorque: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Wheel nuts are tightened again after 10, 25 and 50 miles, and as the maker says.',
};
