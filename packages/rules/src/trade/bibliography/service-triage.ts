import type { Source } from '../../engine/define/shapes';

/** Where the judgment of a trouble comes from. */
export const custom: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'How a service desk sorts what it is told; the maker’s manual of that very trailer wins.',
};

export const comparison: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Comparison beats absolute numbers: hubs that carry alike get warm alike. How far one may stand off is a choice; a dealer may only make it stricter.',
};

export const hotHub: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How hot any hub may read on a touchless thermometer, all of them alike or not; a dealer may only make it stricter.',
};

export const printedLimit: Source = {
  class: 'common-practice',
  cite: 'Limit stated by the maker',
  note: 'Of the axle, hub or grease; most makers print none, and being under it clears nothing by itself.',
};

export const softTire: Source = {
  class: 'from-memory',
  cite: '29 CFR 1910.177',
  section:
    'a tire run at 80 % of its recommended pressure or less is deflated and taken off before it is filled',
  note: 'From memory; written for truck wheels, and custom of the trade for trailers.',
};

export const softHouse: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'From when on a tire that is softer than its mates is looked at.',
};

export const alarms: Source = {
  class: 'from-memory',
  cite: 'U.S. Fire Administration and Consumer Product Safety Commission, safety sheets on alarms',
  note: 'From memory: a chirp now and then is a weak battery or an alarm past its date; an alarm that sounds is left for fresh air first.',
};

export const signs: Source = {
  class: 'from-memory',
  cite: 'Custom of the trade; safety sheets on fire, electric shock and anhydrous ammonia',
  note: 'From memory. The emergency number and whoever answers it win.',
};

export const warrantyBooklet: Source = {
  class: 'common-practice',
  cite: 'Warranty booklet of that very trailer',
  note: 'It says how long, what, and who must be asked before anyone else works on it.',
};

export const recalls: Source = {
  class: 'common-practice',
  cite: 'Recall look-up by identification number',
  note: 'At the government’s recall site or the maker’s; a recall is mended free of charge whatever the warranty.',
};
