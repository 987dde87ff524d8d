import type { Source } from '../../engine/define/shapes';

/** Where what is said of a car behind a motorhome comes from. */
export const carsManual: Source = {
  class: 'common-practice',
  cite: 'Owner’s manual of the towed car, its chapter on towing behind a motorhome',
  note: 'It alone decides; two cars with the same kind of gearbox may stand on either side.',
};

export const chassisRating: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker of the motorhome or its chassis',
  note: 'On the label of that very motorhome or in its manual; the lowest-rated part counts.',
};

export const carBrake: Source = {
  class: 'from-memory',
  cite: 'State laws and makers’ manuals on brakes of a towed car',
  note: 'From memory: most ask for one from 1,000 to 3,000 lb; check your state and both manuals.',
};

export const barLevel: Source = {
  class: 'common-practice',
  cite: 'Makers’ instructions for tow bars',
  note: 'Level within 3 in, the arms never rising toward the motorhome; the bar’s own instructions win.',
};

export const barParts: Source = {
  class: 'common-practice',
  cite: 'Makers’ instructions for tow bar, base plate, cables and breakaway switch',
};

export const carrierHouse: Source = {
  class: 'house',
  cite: 'Choice of the house',
  note: 'The lightest dolly weighs several times as much; untold, it is counted with this at the least.',
};
