import { ruleSet } from '../../engine/define/looked-at';
import { quietly } from '../../engine/define/quietly';
import { gather } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { makersRating } from '../../trade/bibliography/rig';
import { vehicleLoads } from '../../trade/rig/axle-loads';
import { trailerAxles, vehicleAxles } from '../../trade/rig/axles';
import { brakes } from '../../trade/rig/brakes';
import { camper } from '../../trade/rig/camper';
import { camperAboard } from '../../trade/rig/camper-aboard';
import { couplings, extension, receiver } from '../../trade/rig/couplings';
import { distribution } from '../../trade/rig/distribution';
import { equipment, frontalArea } from '../../trade/rig/equipment';
import { aboardFacts } from '../../trade/rig/facts-aboard';
import { quietCamperFacts } from '../../trade/rig/facts-camper';
import { hitchFacts } from '../../trade/rig/facts-hitch';
import { loadFacts } from '../../trade/rig/facts-load';
import { trailerFacts } from '../../trade/rig/facts-trailer';
import { vehicleFacts } from '../../trade/rig/facts-vehicle';
import { meantTireFacts, vehicleTireFacts } from '../../trade/rig/facts-vehicle-tires';
import { onlyWithBars } from '../../trade/rig/only-with-bars';
import { combined, payload, vehicleGross } from '../../trade/rig/payload';
import { tires } from '../../trade/rig/tires';
import { tongueWeight } from '../../trade/rig/tongue';
import { pinWeight, tongueBands } from '../../trade/rig/tongue-limits';
import { towRating } from '../../trade/rig/tow-rating';
import { untold } from '../../trade/rig/untold';
import { loadedWeights, margins, trailerGross } from '../../trade/rig/weights';
import { askings } from './asked';
import { assumed, assumptions } from './assumed';
import { called } from './called';
import { changes } from './changes';
import { everybody } from './everybody';
import { how } from './how';
import { largest, largestShared } from './largest';
import { tongueLeads } from './leads';
import { shopping } from './shopping';
import { usual } from './usual';

/** Towing asks of all tires; which ones are meant it takes without a word. */
const quietTireFacts = { facts: quietly(meantTireFacts.facts) };

/** In the order in which limits are listed, and in which the first of two equals binds. */
const parts = [
  vehicleFacts,
  vehicleTireFacts,
  quietTireFacts,
  loadFacts,
  quietCamperFacts,
  hitchFacts,
  trailerFacts,
  aboardFacts,
  margins,
  loadedWeights,
  camper,
  distribution,
  towRating,
  tongueWeight,
  tongueBands,
  payload,
  vehicleGross,
  vehicleLoads,
  vehicleAxles,
  combined,
  receiver,
  extension,
  pinWeight,
  couplings,
  brakes,
  trailerGross,
  trailerAxles,
  tires,
  frontalArea,
  tongueLeads,
  onlyWithBars,
  camperAboard,
  equipment,
  untold,
  shopping,
  largestShared,
  largest,
  usual,
  assumed,
] as const;

/** May this vehicle tow this trailer, loaded as it will be on the road, and what runs out first? */
export const towFit = ruleSet({
  id: 'tow-fit',
  version: '8.0.2',
  title: 'Tow fit',
  question:
    'May this vehicle tow this trailer, loaded as it will be on the road, and which limit runs out first?',
  facts: gather('facts', parts),
  parameters: gather('parameters', parts),
  tables: {},
  formulas: gather('formulas', parts),
  limits: gather('limits', parts),
  findings: gather('findings', parts),
  renamed: gather('renamed', parts),
  outcomes: {
    ok: { id: 'fits', words: 'fits', sentence: 'The trailer fits.' },
    if: { id: 'fits-if', words: 'fits if', sentence: 'The trailer fits' },
    care: {
      id: 'fits-with-care',
      words: 'fits with care',
      sentence: 'The trailer fits, with care.',
      plain: 'The trailer fits',
    },
    stop: { id: 'does-not-fit', words: 'does not fit', sentence: 'The trailer does not fit.' },
    unknown: { id: 'cannot-say', words: 'cannot say', sentence: 'That cannot be said yet.' },
  },
  apart: { largestTrailer: 'largest.trailer' },
  headline: [
    'trailer.unloaded',
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
  askings,
  everybody,
  how,
  called,
  cautions: [
    {
      says: 'The labels and the manual of that very vehicle win over any brochure and any sum.',
      source: makersRating,
      fits: ['limit.payload', 'limit.trailer-weight', 'limit.tongue', 'limit.vehicle-gross'],
    },
    {
      says: 'Weigh the loaded rig on a public scale before the trip.',
      source: custom,
      fits: [
        'finding.tongue-estimate',
        'finding.tongue-share',
        'limit.combined',
        'limit.front-axle',
        'finding.front-axle-light',
        'limit.rear-axle',
        'limit.trailer-gross',
        'limit.trailer-axles',
        'limit.vehicle-tires-front',
        'limit.vehicle-tires-rear',
        'limit.trailer-tires',
      ],
    },
    {
      says: 'Never exceed the lowest-rated part; bars raise no rating.',
      source: makersRating,
      fits: [
        'limit.receiver',
        'limit.receiver-tongue',
        'limit.extension',
        'limit.pin',
        'limit.ball-mount',
        'limit.ball-mount-tongue',
        'limit.ball',
        'limit.coupler',
        'limit.coupler-tongue',
        'finding.distribution-allowed',
        'finding.distribution-required',
        'finding.only-with-bars',
        'finding.rear-axle-slack',
      ],
    },
    {
      says: 'This is advice, not approval; local rules and the makers’ instructions decide.',
      source: custom,
    },
  ],
});
