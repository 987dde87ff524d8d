import { family } from '../../engine/define/topic';
import { vehicleLoads } from './axle-loads';
import { trailerAxles, vehicleAxles } from './axles';
import { brakes } from './brakes';
import { camper } from './camper';
import { camperAboard } from './camper-aboard';
import { couplings, extension, receiver } from './couplings';
import { distribution } from './distribution';
import { equipment, frontalArea } from './equipment';
import { aboardFacts } from './facts-aboard';
import { quietCamperFacts } from './facts-camper';
import { hitchFacts } from './facts-hitch';
import { loadFacts } from './facts-load';
import { trailerFacts } from './facts-trailer';
import { vehicleFacts } from './facts-vehicle';
import { meantTireFacts, vehicleTireFacts } from './facts-vehicle-tires';
import { onlyWithBars } from './only-with-bars';
import { combined, payload, vehicleGross } from './payload';
import { imbalance, tires } from './tires';
import { tongueWeight } from './tongue';
import { tongueFindings } from './tongue-findings';
import { pinWeight, tongueBands } from './tongue-limits';
import { towRating } from './tow-rating';
import { untold } from './untold';
import { loadedWeights, margins, trailerGross } from './weights';

/** What rolls: vehicle, load, hitch and trailer, their weights, ratings and limits. */
export const rigTrade = family(
  vehicleFacts,
  vehicleTireFacts,
  meantTireFacts,
  loadFacts,
  quietCamperFacts,
  hitchFacts,
  trailerFacts,
  aboardFacts,
  margins,
  loadedWeights,
  camper,
  camperAboard,
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
  imbalance,
  frontalArea,
  tongueFindings,
  equipment,
  onlyWithBars,
  untold,
);
