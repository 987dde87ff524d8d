import { grossRatings } from '../bibliography/common';

/** No unloading mends a vehicle that is over its rating before anybody gets in. */
export const emptyOver = {
  label: 'Vehicle, empty',
  first: true,
  askedByKnown: ['vehicle.gvwr', 'vehicle.curbWeight'],
  stop: {
    when: 'vehicle.curb > vehicle.gvwr',
    wrong: 'Even empty, the vehicle is over its gross rating.',
    do: 'Look at both figures again; as told it carries and tows nothing.',
  },
  otherwise: 'Empty, it is within its own gross rating.',
  source: grossRatings,
} as const;
