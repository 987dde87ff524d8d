import type { Source } from '../../engine/define/shapes';

/** Where the numbers and reckonings of a weigh-in come from. */
export const statics: Source = {
  class: 'published',
  cite: 'Statics of rigid bodies',
  note: 'Sums of forces and of moments are zero; any textbook of mechanics.',
};

export const printedSteps: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Public scales commonly print in steps of 20 lb: a figure stands for ten pounds either way.',
};

export const intervals: Source = {
  class: 'published',
  cite: 'Interval arithmetic',
  note: 'A difference of two rounded figures is off by as much as both together; any textbook.',
};

export const restoredBound: Source = {
  class: 'common-practice',
  cite: 'Towing guidance on weight distribution',
  note: 'The front axle is never given back more than it lost.',
};

export const tongueBand: Source = {
  class: 'common-practice',
  cite: 'Towing guidance',
  note: '10 to 15 % of the loaded trailer; some makers print other bands.',
};

export const grossRatings: Source = {
  class: 'published',
  cite: '49 CFR 567.4',
  note: 'Gross vehicle and gross axle weight ratings on the certification label; section cited from memory.',
};

export const payloadLabel: Source = {
  class: 'published',
  cite: '49 CFR 571.110',
  section: 'S4.3',
  note: 'The tire-and-loading label states what occupants and cargo together may never exceed.',
};

export const makersRating: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'On the part itself or in its manual; the lowest-rated part counts.',
};

export const custom: Source = { class: 'common-practice', cite: 'Custom of the trade' };

export const house: Source = { class: 'house', cite: 'Choice of the dealer' };
