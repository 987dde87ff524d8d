import type { Source } from '../../engine/define/shapes';

/** Where the numbers and judgments on add-ons come from. */
export const statics: Source = {
  class: 'published',
  cite: 'Statics of rigid bodies',
  note: 'A weight w at a distance d ahead of the axle puts w·d/L on the ball; any textbook of mechanics.',
};

export const trades: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Who may fit a thing goes by what it touches; local codes decide what needs a license.',
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

export const lightened: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Under which share nobody tows, and from how many pounds off the ball on an addition is blamed for it; a few are a bag of groceries.',
};

export const unplaced: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Where a thing rides that nobody has placed: hung behind between the axles and as far behind them as the ball is ahead; else somewhere in the body.',
};

export const largeLoad: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'So many watts would ask a 12-volt wire for more than forty amperes; what takes them runs on 120 volts.',
};

export const protectedOutlets: Source = {
  class: 'from-memory',
  cite: 'NEC 551.41',
  section: 'ground-fault protection of outlets near water',
  note: 'From memory. The local code and a licensed electrician win.',
};
