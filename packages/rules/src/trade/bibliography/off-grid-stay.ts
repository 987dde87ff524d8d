import type { Source } from '../../engine/define/shapes';

/** Where the off-grid stay's numbers and reckonings come from. */
export const balance: Source = {
  class: 'published',
  cite: 'Balance of quantities',
  note: 'What is there, less what is used; a tank that fills is room, used up the same way.',
};

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

export const statics: Source = {
  class: 'published',
  cite: 'Statics of rigid bodies',
  note: 'Weights add up; water at the weight that tow fit reckons with.',
};

export const grossRatings: Source = {
  class: 'published',
  cite: '49 CFR 567.4',
  note: 'Gross vehicle weight rating on the certification label; section cited from memory.',
};

export const manual: Source = {
  class: 'common-practice',
  cite: 'Makers’ manuals and local rules',
};
