import type { Source } from '../../engine/define/shapes';

/** Where theft deterrence’s judgments and numbers come from. */
export const exposed: Source = {
  class: 'house',
  cite: 'Judgment of the dealer',
  note: 'Where it stands, for how long, and what it is worth; a table to think with, not a statistic.',
};

export const layers: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade: four layers, for a lock only delays',
};

export const prices: Source = {
  class: 'invented',
  cite: 'Prices in the shop of Sallowbridge Trailers',
  note: 'Invented for the demonstration.',
};

export const money: Source = {
  class: 'common-practice',
  cite: 'Bookkeeping: sums of money',
};

export const charge: Source = {
  class: 'published',
  cite: 'Balance of charge',
  note: 'What is taken on average, times the time it lasts, is what is there.',
};

export const coldCells: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Cold and age leave a small battery less than is printed on it.',
};

export const chains: Source = {
  class: 'common-practice',
  cite: 'Makers’ manuals and local codes',
  note: 'Safety chains, coupler latch with its pin, and breakaway cable are each called for; a lock is none of them.',
};
