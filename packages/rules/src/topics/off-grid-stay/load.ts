import { part } from '../../engine/define/topic';
import { grossRatings, statics } from './sources';

/**
 * Tanks are loads: full on the way there, and full again, of something else, on the way home.
 *
 *     there  ├── trailer ──┼── fresh ──┤
 *     home   ├── trailer ──┼─ gray ─┼ black ┤
 */
export const load = part({
  formulas: {
    'fresh.left': {
      label: 'Fresh water left after the stay',
      noun: 'the fresh water left',
      unit: 'gal',
      is: 'max(0, fresh.start - fresh.needed)',
      source: statics,
    },
    'gray.aboard': {
      label: 'Gray water after the stay',
      noun: 'the gray water',
      unit: 'gal',
      is: 'trailer.grayWater + min(gray.room, gray.filled)',
      source: statics,
    },
    'black.aboard': {
      label: 'Black water after the stay',
      noun: 'the black water',
      unit: 'gal',
      is: 'trailer.blackWater + choose(black.told, min(black.room, black.filled), 0)',
      source: statics,
    },
    'trailer.arriving': {
      label: 'Trailer on the way there',
      noun: 'the trailer on the way there',
      unit: 'lb',
      is: 'trailer.loaded + (fresh.start - trailer.freshWater) * water.density',
      source: statics,
    },
    'trailer.leaving': {
      label: 'Trailer on the way home, tanks not emptied',
      noun: 'the trailer on the way home',
      unit: 'lb',
      is: 'trailer.loaded + (fresh.left - trailer.freshWater + gray.aboard - trailer.grayWater + black.aboard - trailer.blackWater) * water.density',
      source: statics,
    },
  },
  limits: {
    arriving: {
      label: 'Trailer on the way there',
      short: 'the trailer’s own rating on the way there',
      used: 'trailer.arriving',
      limit: 'trailer.gvwr',
      empty: 'trailer.dryWeight',
      margin: 'margin.other',
      askedBy: ['trailer.gvwr', 'trailer.dryWeight'],
      source: grossRatings,
    },
    leaving: {
      label: 'Trailer on the way home',
      short: 'the trailer’s own rating on the way home',
      used: 'trailer.leaving',
      limit: 'trailer.gvwr',
      empty: 'trailer.dryWeight',
      margin: 'margin.other',
      askedBy: ['trailer.gvwr', 'trailer.dryWeight'],
      source: grossRatings,
    },
  },
});
