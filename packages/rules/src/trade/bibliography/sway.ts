import type { Source } from '../../engine/define/shapes';

/** Where what is said of sway comes from; no number here is printed in a standard. */
export const wheelbaseRule: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade, trailer length against wheelbase',
  note: '110 in of wheelbase carry 20 ft of trailer, 4 in more for each further foot; a rule of thumb, no limit of any maker.',
};

export const overhangHouse: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'That a ball far behind the rear axle is a longer lever is statics; where care begins is printed nowhere that is known here, and a dealer may only make it stricter.',
};

export const speedSigns: Source = {
  class: 'from-memory',
  cite: 'Dynamics of a trailer behind a vehicle',
  note: 'From memory: the damping of a swing falls as speed grows, and first signs come above 55 to 65 mph, and the two ends are made the two steps here; each rig has a speed of its own.',
};

export const yawInertia: Source = {
  class: 'published',
  cite: 'Mechanics of rigid bodies, moment of inertia',
  note: 'A weight counts with the square of its distance from the axis; any textbook.',
};

export const evenBody: Source = {
  class: 'from-memory',
  cite: 'Moment of inertia of an even bar, its weight times the square of its length by twelve',
  note: 'The formula is in any textbook; that an empty trailer is like an even bar is an estimate of ours.',
};

export const yawHouse: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How much weight at the ends may add before it is a care; no standard prints one.',
};

export const gustHouse: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'A dealer may only make it stricter; wind advisories begin near gusts of 45 mph, from memory.',
};

export const whenItBegins: Source = {
  class: 'common-practice',
  cite: 'Towing guidance in vehicle makers’ manuals',
  note: 'Common to them, none quoted; the manual of that very vehicle wins.',
};

export const swayControl: Source = {
  class: 'common-practice',
  cite: 'Makers’ instructions for sway control',
  note: 'It damps a swing that begins; it is not made to carry a wrong load.',
};
