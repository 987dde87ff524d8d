import type { Source } from '../../engine/define/shapes';

/** Where the truck camper's numbers and reckonings come from. */
export const camperLoading: Source = {
  class: 'published',
  cite: '49 CFR 575.103',
  section: '(d), (e)',
  note: 'The truck’s maker states a cargo weight rating, 150 lb for each seat already taken off, and the zone in which the centre of gravity of the cargo must lie.',
};
