import type { Source } from '../../engine/define/shapes';

/** Where the truck camper's numbers and reckonings come from. */
export const camperLoading: Source = {
  class: 'published',
  cite: '49 CFR 575.103',
  section: '(d), (e)',
  note: 'The truck’s cargo weight rating, 150 lb a seat taken off, and the zone for the cargo’s center of gravity.',
};

export const camperLabel: Source = {
  class: 'from-memory',
  cite: '49 CFR 575.103',
  note: 'Its label states its weight with the water, gas and refrigerator it names; from memory.',
};

export const zoneDrawing: Source = {
  class: 'from-memory',
  cite: 'Truck makers’ camper-loading sheets',
  note: 'The zone is drawn from the inside of the bed’s headboard backwards; from memory.',
};

export const seatsOfTrucks: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Pickup trucks have two to six belted seats.',
};
