import type { Source } from '../../engine/define/shapes';

/** Where the numbers and reckonings of hitch setup come from. */
export const geometry: Source = {
  class: 'published',
  cite: 'Plane geometry',
  note: 'Heights add up along a plumb line, and a stiff body that turns moves every point in proportion.',
};

export const springLaw: Source = {
  class: 'published',
  cite: 'Hooke’s law',
  note: 'A spring gives in proportion to its load; real ones stiffen, so heights that were measured win.',
};

export const ballClasses: Source = {
  class: 'published',
  cite: 'SAE J684 as restated in COMAR 11.13.08.10',
  note: 'Trailer classes by gross weight, with the least ball of each; above 5,000 lb the coupling’s own.',
};

export const couplerHeights: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'About 17¾ in on many trailers, different from model to model: the trailer’s own label wins.',
};

export const noseBand: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Level to half an inch low is right; nose high invites sway.',
};
