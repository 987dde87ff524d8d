import type { Source } from '../../engine/define/shapes';

/** Where the numbers and judgements on add-ons come from. */
export const statics: Source = {
  class: 'published',
  cite: 'Statics of rigid bodies',
  note: 'A weight w at a distance d ahead of the axle puts w·d/L on the ball; any textbook of mechanics.',
};

export const trades: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Who may fit a thing goes by what it touches; local codes decide what needs a licence.',
};

export const movingLoad: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'What hangs on an arm and bounces with the road loads it with more than its weight; by how much hangs on arm and road.',
};

export const circuits: Source = {
  class: 'published',
  cite: 'Laws of electric circuits',
  note: 'Current is power over voltage; energy is power times time; any textbook.',
};

export const balance: Source = {
  class: 'published',
  cite: 'Balance of quantities',
  note: 'What is there, less what is used.',
};

export const warrantyBooklet: Source = {
  class: 'common-practice',
  cite: 'Warranty booklet of that very trailer',
  note: 'It says what alterations end it.',
};
