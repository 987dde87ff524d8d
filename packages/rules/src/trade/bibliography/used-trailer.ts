import type { Source } from '../../engine/define/shapes';

/** Where what is said of a used trailer comes from. */
export const walkRule: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade in used trailers',
  note: 'Frame cracked, structure soft in more than one zone, title branded, missing or another’s, gas leaking and the seller shrugs: walk away.',
};

export const walkHouse: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Rust through the frame or a wall that moves is taken as grave as a crack, a spring hanger alone as a repair: frame shops weld them; a dealer buys none that a shop has not looked at.',
};

export const wetMeter: Source = {
  class: 'from-memory',
  cite: 'Wood Handbook of the Forest Products Laboratory, on decay',
  note: 'From memory: wood over 20 % of moisture decays; a meter reads behind a skin only roughly.',
};

export const priceBook: Source = {
  class: 'invented',
  cite: 'Prices of what is done before a first trip',
  note: 'Invented for Sallowbridge Trailers, wide on purpose; a shop’s own quote wins.',
};

export const titles: Source = {
  class: 'common-practice',
  cite: 'Titles and liens, as the states record them',
  note: 'Each state has its own papers; its motor vehicle office tells, and questions of law are for a lawyer.',
};

export const looked: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade, the walk around a used trailer',
};
