import type { Source } from '../../engine/define/shapes';

/** Where the truck camper's numbers and reckonings come from. */
export const camperLoading: Source = {
  class: 'published',
  cite: '49 CFR 575.103',
  section: '(d), (e)',
  note: 'The truck’s maker states a cargo weight rating, 150 lb for each seat already taken off, and the zone in which the centre of gravity of the cargo must lie.',
};

export const payloadLabel: Source = {
  class: 'published',
  cite: '49 CFR 571.110',
  section: 'S4.3',
  note: 'The tire-and-loading label states what occupants and cargo together may never exceed.',
};

export const grossRatings: Source = {
  class: 'published',
  cite: '49 CFR 567.4',
  note: 'Gross vehicle and gross axle weight ratings on the certification label; section cited from memory.',
};

export const statics: Source = {
  class: 'published',
  cite: 'Statics of rigid bodies',
  note: 'Sums of forces and of moments are zero; any textbook of mechanics.',
};

export const makersRating: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'On the part itself or in its manual; the lowest-rated part counts.',
};

export const custom: Source = { class: 'common-practice', cite: 'Custom of the trade' };

export const house: Source = { class: 'house', cite: 'Choice of the dealer' };
