import {
  at,
  closed,
  type Ends,
  larger,
  minus,
  over,
  plus,
  rounded,
  smaller,
  span,
  times,
} from './ends';
import type { PlainRig } from './plain-limits';

const none = at(0);

/** What is asked of the vehicle and the hitch; the present trailer's own limits are left out. */
const ofVehicleAndHitch = [
  'trailer-weight',
  'tongue',
  'payload',
  'vehicle-gross',
  'front-axle',
  'rear-axle',
  'combined',
  'receiver',
  'receiver-tongue',
  'extension',
  'pin',
  'ball-mount',
  'ball-mount-tongue',
  'ball',
  'unbraked-rating',
  'vehicle-tires-front',
  'vehicle-tires-rear',
];
const ofAxles = ['front-axle', 'rear-axle', 'vehicle-tires-front', 'vehicle-tires-rear'];
const onTheTongue = ['tongue', 'receiver-tongue', 'extension', 'pin', 'ball-mount-tongue'];
const ofCurb = ['vehicle-gross', 'combined'];

export type Largest = Ends | 'unknown' | 'none';

/**
 * The heaviest loaded trailer that no limit of vehicle and hitch forbids, its tongue at the present
 * share but not under the least usual one. Each limit is solved for the weight at which it is just
 * reached: what it allows, less what stands on it without a trailer, over what each pound adds.
 */
export function plainLargest(rig: PlainRig): Largest {
  const { lo, hi } = rig.tow.share;
  const [lighter, heavier] = [largestAt(rig, at(lo)), largestAt(rig, at(hi))];
  if (lighter === 'unknown' || heavier === 'unknown') return 'unknown';
  if (heavier === 'none') return lighter === 'none' ? 'none' : { lo: 0, hi: lighter.hi };
  if (lighter !== 'none') return span(lighter, heavier);
  // Somewhere between the two shares the front axle is light enough, and the rest allows the most.
  const ofRest = largestAt(rig, at(lo), false);
  return { lo: 0, hi: typeof ofRest === 'string' ? heavier.hi : ofRest.hi };
}

/** At one share: all that the trailer may weigh moves one way with it. */
function largestAt(rig: PlainRig, ofTrailer: Ends, withFront = true): Largest {
  const { f, world, tow, vehicle, axles, limits, tiresOn } = rig;
  const asked = ofVehicleAndHitch.filter((id) => limits[id]?.asked);
  // How far an extension reaches that nobody measured: the rear axle may carry anything.
  const reach = f.given('hitch.extension') && !f.known('hitch.extension');
  const onRearAxle = (id: string) => id === 'rear-axle' || id === 'vehicle-tires-rear';
  const isOpen = (id: string): boolean => {
    const row = limits[id];
    if (!row || row.unread || !closed(row.limit)) return true;
    const base = ofCurb.includes(id) && !vehicle.curbKnown;
    const bars = world.inUse && !axles.barsKnown;
    return base || (ofAxles.includes(id) && (!axles.reckoned || bars)) || (reach && onRearAxle(id));
  };
  if (asked.some(isOpen) || !rig.mayPull.known) return 'unknown';
  if (!tow.shareKnown || !closed(vehicle.aboard)) return 'unknown';
  const wanted = 'vehicle.distributionRequiredAbove';
  const capped = f.given(wanted) && !world.inUse && !world.pin;
  if (capped && !f.known(wanted)) return 'unknown';
  const lacking =
    f.word('vehicle.towPackageNeeded') === 'yes' && f.word('vehicle.towPackage') === 'no';
  if (lacking) return 'none';

  const share = larger(ofTrailer, at(world.pin ? 0.15 : 0.1));
  // Of each pound on the ball, bars put r·b/w back on the front axle and r·b/(L + b) on the
  // trailer's, and take both off the rear.
  const unlifted = minus(at(1), world.inUse ? axles.restored : none);
  const lost = times(axles.lever, unlifted);
  const onRear = times(share, minus(plus(at(1), lost), axles.liftShare));
  const onFront = times(share, minus(none, lost));

  const reached = (id: string, limit: Ends): Ends => {
    if (onTheTongue.includes(id)) return over(limit, share);
    switch (id) {
      case 'payload':
        return over(minus(limit, vehicle.aboard), share);
      case 'vehicle-gross':
        return over(minus(minus(limit, vehicle.curb), vehicle.aboard), share);
      case 'combined':
        return minus(minus(limit, vehicle.curb), vehicle.aboard);
      case 'rear-axle':
        return over(minus(limit, axles.rearAlone), onRear);
      case 'vehicle-tires-rear':
        return over(minus(times(limit, tiresOn.rear), axles.rearAlone), onRear);
      case 'front-axle':
      case 'vehicle-tires-front':
        return at(Infinity);
      default:
        return limit;
    }
  };
  let best = asked
    .map((id) => reached(id, limits[id]?.limit ?? none))
    .reduce(smaller, at(Infinity));
  // Above the weight from which the maker wants bars, none without them.
  if (capped) best = smaller(best, f.number(wanted));

  // A tongue behind the rear axle only ever lightens the front one: too heavy in front at the
  // heaviest trailer that the rest allows is too heavy with any lighter one. A pin ahead of the
  // rear axle loads the front as it loads the rear.
  for (const [id, tires] of [
    ['front-axle', at(1)],
    ['vehicle-tires-front', tiresOn.front],
  ] as const) {
    const row = limits[id];
    if (!row?.asked || !withFront) continue;
    const allowed = times(row.limit, tires);
    if (onFront.lo > 0) {
      best = smaller(best, over(minus(allowed, axles.frontAlone), onFront));
      continue;
    }
    const front = rounded(plus(axles.frontAlone, times(best, onFront)));
    if (front.lo > rounded(allowed).hi) return 'none';
    if (front.hi > rounded(allowed).lo && reach) return 'unknown';
    if (front.hi > rounded(allowed).lo) best = { lo: 0, hi: best.hi };
  }
  if (rounded(best).hi <= 0) return 'none';
  return rounded({ lo: Math.max(0, best.lo), hi: best.hi });
}
