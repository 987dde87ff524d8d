import type { Source } from '../../engine/define/shapes';

/** Where the off-grid stay's numbers and reckonings come from. */
export const balance: Source = {
  class: 'published',
  cite: 'Balance of quantities',
  note: 'What is there, less what is used; a tank that fills is room, used up the same way.',
};

export const custom: Source = { class: 'common-practice', cite: 'Custom of the trade' };

export const house: Source = { class: 'house', cite: 'Choice of the dealer' };

export const drains: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Of the water used, what is neither drunk, boiled off nor carried out with the dishes; measure it by the gray tank’s gauge.',
};

export const tankLabel: Source = {
  class: 'common-practice',
  cite: 'Sizes stated by the maker',
  note: 'On the trailer’s label or in its brochure; a pump leaves a little, a drain too.',
};
