import type { PlainCase } from './plain-case';
import { plainLimits } from './plain-limits';

/** Which rating each limit rests on, those first that other numbers hang on. */
const ratings: readonly (readonly [limit: string, rating: string])[] = [
  ['payload', 'vehicle.placardPayload'],
  ['vehicle-gross', 'vehicle.gvwr'],
  ['trailer-weight', 'vehicle.maxTrailerWeight'],
  ['trailer-weight', 'vehicle.maxTrailerCarried'],
  ['tongue', 'vehicle.maxTongueCarried'],
  ['tongue', 'vehicle.maxTongueDistributed'],
  ['front-axle', 'vehicle.gawrFront'],
  ['rear-axle', 'vehicle.gawrRear'],
  ['combined', 'vehicle.gcwr'],
  ['receiver', 'hitch.receiverRating'],
  ['receiver', 'hitch.receiverCarried'],
  ['receiver-tongue', 'hitch.receiverTongueRating'],
  ['receiver-tongue', 'hitch.receiverTongueCarried'],
  ['ball-mount', 'hitch.mountRating'],
  ['ball', 'hitch.ballRating'],
  ['coupler', 'trailer.couplerRating'],
  ['trailer-gross', 'trailer.gvwr'],
  ['trailer-axles', 'trailer.gawr'],
  ['vehicle-tires-front', 'vehicle.tireCapacityFront'],
  ['vehicle-tires-rear', 'vehicle.tireCapacityRear'],
  ['trailer-tires', 'trailer.tireCapacity'],
  ['frontal-area', 'vehicle.maxFrontalArea'],
];

/** Under a millionth (equal once rounded), and plainly over and under. */
const steps = [0, 4e-7, -4e-7, 1e-5, -1e-5];

/** The same rig with many of its ratings moved to the edge of what is used. */
export function onEdges(exact: PlainCase, random: () => number): PlainCase {
  const made = { ...exact };
  const step = (): number => steps[Math.floor(random() * steps.length)] ?? 0;
  const dry = made['trailer.dryWeight'];

  // Weights, shares and grades at which something is said beside the limits.
  if (typeof dry === 'number' && random() < 0.3) {
    const loaded = plainLimits(made).load.trailer.lo;
    const edge = [1000, 3000][Math.floor(random() * 2)] ?? 1000;
    made['trailer.dryWeight'] = Math.max(0, dry - loaded + edge + step());
    if (random() < 0.5) made['trailer.electricBrakes'] = 'no';
  }
  if (typeof dry === 'number' && random() < 0.3) {
    const share = [0.1, 0.15, 0.25][Math.floor(random() * 3)] ?? 0.1;
    made['trailer.measuredTongueWeight'] = plainLimits(made).load.trailer.lo * share + step();
  }
  if (random() < 0.2) made['trip.steepestGrade'] = 0.12 + step();
  if (typeof dry === 'number' && random() < 0.3) {
    made['vehicle.distributionRequiredAbove'] = plainLimits(made).load.trailer.lo + step();
  }

  for (const [limit, rating] of ratings) {
    if (made[rating] === undefined || random() < 0.4) continue;
    const row = plainLimits(made).limits[limit];
    const now = made[rating];
    if (!row || typeof now !== 'number' || !Number.isFinite(row.used.hi) || row.used.hi <= 0)
      continue;
    // What the limit makes of each pound of the rating (axles, thin air) is kept.
    const perPound = limit === 'combined' || limit === 'trailer-axles' ? row.limit.hi / now : 1;
    const spared = random() < 0.5 ? 1 : 1 - row.margin;
    const edge = row.used.hi / spared / perPound + step();
    if (Number.isFinite(edge) && edge > 0) made[rating] = edge;
  }
  return made;
}
