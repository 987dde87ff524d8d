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
import type { PlainLimits } from './plain-limits';

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
  'ball-mount',
  'ball',
  'vehicle-tires-front',
  'vehicle-tires-rear',
];
const ofAxles = ['front-axle', 'rear-axle', 'vehicle-tires-front', 'vehicle-tires-rear'];
const ofCurb = ['vehicle-gross', 'combined'];

/**
 * The heaviest loaded trailer that no limit of vehicle and hitch forbids, its tongue at the present
 * share but not under a tenth. Each limit is solved for the weight at which it is just reached:
 * what it allows, less what stands on it without a trailer, over what each trailer pound adds.
 */
export function plainLargest({ limits, load, rearTires }: PlainLimits): Ends | null {
  const { f, inUse } = load;
  const asked = ofVehicleAndHitch.filter((id) => limits[id]?.asked);
  if (asked.some((id) => !limits[id]?.rated)) return null;
  if (![load.trailer, load.tongue, load.share, load.aboard].every(closed)) return null;
  const onAxles = load.axlesReckoned && (!inUse.yes || load.settingKnown);
  if (asked.some((id) => ofAxles.includes(id)) && !onAxles) return null;
  if (asked.some((id) => ofCurb.includes(id)) && !load.curbKnown) return null;
  const capped = f.given('vehicle.distributionRequiredAbove') && inUse.no;
  if (capped && !f.known('vehicle.distributionRequiredAbove')) return null;

  const share = larger(load.share, at(0.1));
  const lever = over(load.overhang, load.wheelbase);
  const b = times(load.overhang, at(1 / 12));
  // Of each pound on the ball, bars take this much off the rear axle, where they are hooked up.
  const lifted = (part: Ends): Ends => {
    if (!inUse.yes) return none;
    const taken = times(load.restored, part);
    return inUse.no ? span(none, taken) : taken;
  };
  const toFront = lifted(lever);
  const toTrailer = lifted(over(b, plus(load.far, b)));
  const rearPerPound = times(share, minus(plus(at(1), lever), plus(toFront, toTrailer)));
  const frontPerPound = times(share, minus(toFront, lever));

  const reached = (id: string, limit: Ends): Ends => {
    switch (id) {
      case 'tongue':
      case 'receiver-tongue':
        return over(limit, share);
      case 'payload':
        return over(minus(limit, load.aboard), share);
      case 'vehicle-gross':
        return over(minus(minus(limit, load.curb), load.aboard), share);
      case 'combined':
        return minus(minus(limit, load.curb), load.aboard);
      case 'rear-axle':
        return over(minus(limit, load.rearAlone), rearPerPound);
      case 'vehicle-tires-rear':
        return over(minus(times(limit, rearTires), load.rearAlone), rearPerPound);
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
  if (capped) {
    const cap = f.number('vehicle.distributionRequiredAbove');
    best = smaller(best, inUse.yes ? { lo: cap.lo, hi: Infinity } : cap);
  }

  // A tongue only ever lightens the front axle: too heavy in front at the heaviest trailer that
  // the rest allows is too heavy with any lighter one.
  let lo = best.lo;
  const front = plus(load.frontAlone, times(best, frontPerPound));
  for (const [id, tires] of [
    ['front-axle', at(1)],
    ['vehicle-tires-front', at(2)],
  ] as const) {
    const limit = limits[id];
    if (!limit?.asked) continue;
    const allowed = rounded(limit.limit);
    const carried = rounded(over(front, tires));
    if (carried.lo > allowed.hi) return null;
    if (carried.hi > allowed.lo) lo = 0;
  }
  if (rounded(best).hi <= 0) return null;
  return rounded({ lo: Math.max(0, lo), hi: best.hi });
}
