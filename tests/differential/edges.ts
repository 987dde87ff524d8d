import { type PlainCase, reader } from './plain-case';
import { type PlainLimit, type PlainRig, plainLimits } from './plain-limits';
import { worldsOf } from './plain-worlds';

/** Which rating each limit rests on, those first that other numbers hang on. */
const ratings: readonly (readonly [limit: string, rating: string])[] = [
  ['payload', 'vehicle.placardPayload'],
  ['vehicle-gross', 'vehicle.gvwr'],
  ['trailer-weight', 'vehicle.maxTrailerWeight'],
  ['trailer-weight', 'vehicle.maxTrailerCarried'],
  ['trailer-weight', 'vehicle.maxFifthWheel'],
  ['tongue', 'vehicle.maxTongueCarried'],
  ['tongue', 'vehicle.maxTongueDistributed'],
  ['front-axle', 'vehicle.gawrFront'],
  ['rear-axle', 'vehicle.gawrRear'],
  ['combined', 'vehicle.gcwr'],
  ['receiver', 'hitch.receiverRating'],
  ['receiver', 'hitch.receiverCarried'],
  ['receiver-tongue', 'hitch.receiverTongueRating'],
  ['receiver-tongue', 'hitch.receiverTongueCarried'],
  ['extension', 'hitch.extensionRating'],
  ['pin', 'vehicle.maxPin'],
  ['pin', 'hitch.pinRating'],
  ['ball-mount', 'hitch.mountRating'],
  ['ball-mount-tongue', 'hitch.mountTongueRating'],
  ['ball', 'hitch.ballRating'],
  ['coupler', 'trailer.couplerRating'],
  ['coupler-tongue', 'trailer.couplerTongueRating'],
  ['unbraked-rating', 'vehicle.maxUnbraked'],
  ['trailer-gross', 'trailer.gvwr'],
  ['trailer-axles', 'trailer.gawr'],
  ['vehicle-tires-front', 'vehicle.tireCapacityFront'],
  ['vehicle-tires-rear', 'vehicle.tireCapacityRear'],
  ['trailer-tires', 'trailer.tireCapacity'],
  ['frontal-area', 'vehicle.maxFrontalArea'],
];

/** Limits that are their rating times or divided by something: what each pound of it makes is kept. */
const derived = /^(combined|trailer-axles|vehicle-tires-front|vehicle-tires-rear|trailer-tires)$/;

/** Under a millionth (equal once rounded), and plainly over and under. */
const steps = [0, 4e-7, -4e-7, 1e-5, -1e-5];

const settled = (made: PlainCase): PlainRig => {
  const [world] = worldsOf(reader(made));
  if (!world) throw new Error('There is no world in which this case could be.');
  return plainLimits(made, world);
};

/** The limit at which what is used is just within it, or just within what is kept free below it. */
function edgeOf({ used, empty, margin }: PlainLimit, atMargin: boolean): number {
  if (!atMargin || !margin) return used.hi;
  const byShare = (used.hi - margin.share * empty.hi) / (1 - margin.share);
  return Math.max(byShare, used.hi + margin.least);
}

/** The same rig with many of its ratings moved to the edge of what is used. */
export function onEdges(exact: PlainCase, random: () => number): PlainCase {
  const made = { ...exact };
  const step = (): number => steps[Math.floor(random() * steps.length)] ?? 0;
  const oneOf = (all: readonly number[]): number => all[Math.floor(random() * all.length)] ?? 0;
  const dry = made['trailer.dryWeight'];

  // Weights, shares and grades at which something is said beside the limits.
  if (typeof dry === 'number' && random() < 0.3) {
    const loaded = settled(made).tow.loaded.lo;
    made['trailer.dryWeight'] = Math.max(0, dry - loaded + oneOf([1000, 1500, 3000]) + step());
    if (random() < 0.7) made['trailer.brakes'] = 'none';
    if (random() < 0.3) made['trailer.brakes'] = 'unknown';
  }
  if (typeof dry === 'number' && random() < 0.3) {
    const share = oneOf([0.07, 0.1, 0.15, 0.25]);
    made['trailer.measuredTongueWeight'] = settled(made).tow.loaded.lo * share + step();
  }
  if (random() < 0.2) made['trip.steepestGrade'] = 0.12 + step();
  if (typeof dry === 'number' && random() < 0.3) {
    made['vehicle.distributionRequiredAbove'] = settled(made).tow.loaded.lo + step();
  }

  for (const [limit, rating] of ratings) {
    if (made[rating] === undefined || random() < 0.4) continue;
    const row = settled(made).limits[limit];
    const now = made[rating];
    if (!row || typeof now !== 'number' || !Number.isFinite(row.used.hi) || row.used.hi <= 0)
      continue;
    const perPound = derived.test(limit) ? row.limit.hi / now : 1;
    const edge = edgeOf(row, random() < 0.5) / perPound + step();
    if (Number.isFinite(edge) && edge > 0) made[rating] = edge;
  }
  return made;
}
