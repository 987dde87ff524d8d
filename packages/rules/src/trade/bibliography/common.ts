import type { Source } from '../../engine/define/shapes';

/** What more than one field of the trade leans on. */
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

export const weights: Source = {
  class: 'published',
  cite: 'NIST SP 811',
  section: 'appendix B.8',
  note: 'Sums of weights, in exact units.',
};

export const custom: Source = { class: 'common-practice', cite: 'Custom of the trade' };

export const tongueBand: Source = {
  class: 'common-practice',
  cite: 'Towing guidance',
  note: '10 to 15 % of the loaded trailer; some makers print other bands.',
};

export const house: Source = { class: 'house', cite: 'Choice of the dealer' };

export const dataPlate: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'On the data plate of the part itself or in its manual.',
};

export const manual: Source = {
  class: 'common-practice',
  cite: 'Makers’ manuals and local codes',
};

export const wireTable: Source = {
  class: 'published',
  cite: 'NEC chapter 9, table 8',
  section: 'copper at 75 °C',
  note: '16 AWG stranded as in a published worked example, 4.99 Ω per 1,000 ft.',
};

export const restoredBound: Source = {
  class: 'common-practice',
  cite: 'Towing guidance on weight distribution',
  note: 'The front axle is never given back more than it lost.',
};

export const partsRating: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'On the part itself or in its manual; the lowest-rated part counts.',
};

export const insurers: Source = {
  class: 'common-practice',
  cite: 'Custom of insurers',
  note: 'The policy itself decides; ask the insurer in writing.',
};

export const tongueBandSeen: Source = {
  class: 'common-practice',
  cite: 'Usual tongue share, 10 to 15 %',
  note: 'Government towing guidance and custom of the trade; makers print 9 to 11 as well.',
};
