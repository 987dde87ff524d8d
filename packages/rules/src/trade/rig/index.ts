import { family } from '../../engine/define/topic';
import { bars, trailerAxles, vehicleAxles } from './axles';
import { couplings, receiver } from './couplings';
import { equipment, frontalArea } from './equipment';
import { loadFacts } from './facts-load';
import { trailerFacts } from './facts-trailer';
import { vehicleFacts } from './facts-vehicle';
import { combined, payload, vehicleGross } from './payload';
import { tires } from './tires';
import { tongue } from './tongue';
import { loadedWeights, trailerGross } from './weights';

/** What rolls: vehicle, load, hitch and trailer, their weights, ratings and limits. */
export const rigTrade = family(
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
);
