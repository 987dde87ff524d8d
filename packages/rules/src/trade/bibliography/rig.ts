import type { Source } from '../../engine/define/shapes';

export const occupantMass: Source = {
  class: 'published',
  cite: '49 CFR 571.110',
  section: 'S4.3.5',
  note: '150 lb, 68 kg, for each occupant.',
};

export const cargoLabel: Source = {
  class: 'published',
  cite: '49 CFR 571.110 and 571.120',
  note: 'Cargo label of recreational trailers: what is left below the gross rating, unloaded; of propane from memory.',
};

export const ratedForTwo: Source = {
  class: 'from-memory',
  cite: 'SAE J2807',
  note: 'Tow ratings are tested with a driver and a passenger of 150 lb each; from memory.',
};

export const pinAdapters: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'A pin has ratings of its own, on the fifth-wheel hitch and in the vehicle’s manual.',
};

export const extensionLoss: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'An extension takes a third to a half of the rating; its label decides.',
};

export const combinedRating: Source = {
  class: 'published',
  cite: '49 CFR 390.5',
  note: 'What the maker states for the loaded combination.',
};

export const waterWeight: Source = {
  class: 'from-memory',
  cite: 'Density of water at 60 °F, 8.34 lb/gal',
  note: 'From memory; 49 CFR 571.120 reckons 1 kg/L, 8.3 lb/gal on the label.',
};

export const makersRating: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'On the part or in the vehicle’s manual; the lowest-rated part counts.',
};

export const loadedAddOn: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'A tenth on the dry tongue weight for options and what people carry.',
};

export const fifthWheelBand: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: '15 to 25 % of the loaded trailer on a fifth-wheel coupling.',
};

export const altitudeLoss: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: '2 % less for each 1,000 ft, for engines without forced induction.',
};

export const lightBrakes: Source = {
  class: 'published',
  cite: '49 CFR 393.42',
  note: 'Binding for commerce; for everyone else custom: check your state.',
};

export const launchGrade: Source = {
  class: 'from-memory',
  cite: 'SAE J2807',
  note: 'The launch grade of the rated tow test, 12 %; from memory.',
};

export const ballSizes: Source = {
  class: 'from-memory',
  cite: 'SAE J684',
  note: 'Balls and couplers are made in matching sizes; from memory.',
};
