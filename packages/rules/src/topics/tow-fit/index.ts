import { defineTopic, gather } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { makersRating } from '../../trade/bibliography/rig';
import { bars, trailerAxles, vehicleAxles } from '../../trade/rig/axles';
import { couplings, receiver } from '../../trade/rig/couplings';
import { equipment, frontalArea } from '../../trade/rig/equipment';
import { loadFacts } from '../../trade/rig/facts-load';
import { trailerFacts } from '../../trade/rig/facts-trailer';
import { vehicleFacts } from '../../trade/rig/facts-vehicle';
import { combined, payload, vehicleGross } from '../../trade/rig/payload';
import { tires } from '../../trade/rig/tires';
import { tongue } from '../../trade/rig/tongue';
import { loadedWeights, trailerGross } from '../../trade/rig/weights';
import { assumed, assumptions } from './assumed';
import { changes } from './changes';
import { largest } from './largest';

/** In the order in which limits are listed, and in which the first of two equals binds. */
const parts = [
  vehicleFacts,
  loadFacts,
  trailerFacts,
  loadedWeights,
  tongue,
  payload,
  vehicleGross,
  bars,
  vehicleAxles,
  combined,
  receiver,
  couplings,
  trailerGross,
  trailerAxles,
  tires,
  frontalArea,
  equipment,
  largest,
  assumed,
] as const;

/** May this vehicle tow this trailer, loaded as it will be on the road, and what runs out first? */
export const towFit = defineTopic({
  id: 'tow-fit',
  version: '1.1.0',
  title: 'Tow fit',
  question:
    'May this vehicle tow this trailer, loaded as it will be on the road, and which limit runs out first?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  outcomes: {
    ok: { id: 'fits', words: 'fits', sentence: 'It fits.' },
    if: { id: 'fits-if', words: 'fits if', sentence: 'It fits' },
    care: { id: 'fits-with-care', words: 'fits with care', sentence: 'It fits, with care.' },
    stop: { id: 'does-not-fit', words: 'does not fit', sentence: 'It does not fit.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: { largestTrailer: 'largest.trailer' },
  headline: [
    'trailer.loaded',
    'tongue.loaded',
    'tongue.share',
    'payload.used',
    'payload.available',
    'vehicle.curb',
    'vehicle.gross',
    'combined.gross',
    'axle.front',
    'axle.rear',
    'axle.trailer',
    'bars.moment',
    'shopping.from',
    'shopping.to',
    'largest.trailer',
  ],
  assumptions,
  changes,
  cautions: [
    {
      says: 'The labels and the manual of that very vehicle win over any brochure and over this sheet.',
      source: makersRating,
    },
    { says: 'Weigh the loaded rig on a public scale before the trip.', source: custom },
    { says: 'Never exceed the lowest-rated part; bars raise no rating.', source: makersRating },
    {
      says: 'This is advice, not approval; local rules and the makers’ instructions decide.',
      source: custom,
    },
  ],
});
