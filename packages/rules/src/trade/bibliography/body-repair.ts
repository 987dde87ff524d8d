import type { Source } from '../../engine/define/shapes';

/** Where body repair's numbers and reckonings come from. */
export const shopBook: Source = {
  class: 'house',
  cite: 'Book of the dealer’s own shop',
  note: 'Invented for Sallowbridge Trailers; another shop puts its own figures in their place. A range, since nobody has opened the wall.',
};

export const construction: Source = {
  class: 'invented',
  cite: 'How much longer a segment takes, by how the wall is built',
  note: 'Invented for the demonstration: a bonded wall comes off in one piece, a riveted one by segments.',
};

export const hiddenShare: Source = {
  class: 'invented',
  cite: 'What is found behind the skin, as a share of what is seen',
  note: 'Invented for the demonstration; only opening the wall tells.',
};

export const money: Source = {
  class: 'common-practice',
  cite: 'Bookkeeping: sums of money',
  note: 'Added up without interest; over a few years of premium that is close enough.',
};

export const premiumEffect: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How much a claim raises a premium and for how long; every insurer has its own rule, so ask.',
};

export const writeOffShare: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'The share of a trailer’s value above which an insurer seldom repairs: 60 to 80 percent by state, from memory; laws and policies differ from place to place.',
};

export const writeOffSum: Source = {
  class: 'from-memory',
  cite: 'Total-loss formula, as many states and insurers use it',
  note: 'From memory: a loss is total when the repair and the salvage together reach the value before.',
};

export const dampWood: Source = {
  class: 'from-memory',
  cite: 'Wood Handbook of the Forest Products Laboratory, on decay',
  note: 'From memory: wood kept below 20 % of moisture does not decay.',
};

export const dampMargin: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Care from 16 %: a meter reads behind a skin only roughly.',
};

export const comprehensiveEffect: Source = {
  class: 'from-memory',
  cite: 'Custom of insurers: collision and comprehensive',
  note: 'From memory: weather, animals, fire and theft fall under comprehensive, and such a claim raises a premium less or not at all.',
};

export const usualPremium: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'What a year of insurance for a trailer may cost where nobody told; wide on purpose, the declarations page wins.',
};
