import { at, type Ends, larger, minus, over, plus, rounded, smaller, times } from './ends';
import { andBoth, type Maybe, never, orEither, perhaps, type State, surely } from './plain-case';
import type { PlainRig } from './plain-limits';
import { tankShare } from './plain-tongue';

const none = at(0);

/** At the edge is within it; numbers equal to a millionth are equal. */
function above(a: Ends, b: Ends): Maybe {
  const [x, y] = [rounded(a), rounded(b)];
  return { yes: x.hi > y.lo, no: x.lo <= y.hi };
}

const bareRating = {
  tongue: 'vehicle.maxTongueCarried',
  'trailer-weight': 'vehicle.maxTrailerCarried',
  receiver: 'hitch.receiverCarried',
  'receiver-tongue': 'hitch.receiverTongueCarried',
} as const;
const fullRating = {
  tongue: 'vehicle.maxTongueDistributed',
  'trailer-weight': 'vehicle.maxTrailerWeight',
  receiver: 'hitch.receiverRating',
  'receiver-tongue': 'hitch.receiverTongueRating',
} as const;

/** More than the rating without bars and no more than the one with them, and nobody told of any. */
export function barsWantedFor(
  { f, world, limits }: Pick<PlainRig, 'f' | 'world' | 'limits'>,
  id: keyof typeof bareRating,
): Maybe {
  const limit = limits[id];
  const [bare, full] = [bareRating[id], fullRating[id]];
  if (!limit || !world.barsMayBe || !f.known(bare) || !f.known(full)) return never;
  const within = above(limit.used, f.number(full));
  return andBoth(above(limit.used, f.number(bare)), { yes: within.no, no: within.yes });
}
const relieved = ['tongue', 'trailer-weight', 'receiver', 'receiver-tongue'] as const;

type Found = { stop?: Maybe; unknown?: Maybe; if?: Maybe; care?: Maybe };

/** A stop that is only possible leaves the question open; all else is said as soon as it may be. */
function level({ stop = never, unknown = never, if: when = never, care = never }: Found): State {
  if (stop.yes && !stop.no) return 'stop';
  if (stop.yes || unknown.yes) return 'unknown';
  if (when.yes) return 'if';
  return care.yes ? 'care' : 'ok';
}

/** What is said beside the limits, in one world. */
export function plainFindings(rig: PlainRig): Record<string, State> {
  const { f, world, tow, vehicle, axles, mayPull, mayRest } = rig;
  const { loaded, tongue, share } = tow;
  const { pin, inUse } = world;
  const asked = (when: boolean, found: Found): State => (when ? level(found) : 'not-asked');
  const isYes = (id: string): Maybe => {
    const told = f.word(id);
    return told === 'unknown' ? perhaps : surely(told === 'yes');
  };
  const untold = (id: string): boolean => !f.known(id);

  // Under the usual band the trailer sways, over it the hitch carries too much; far under it must
  // not be towed: 10–15 % and 7 % on a ball, 15–25 % and 10 % on a pin.
  const band = pin
    ? { stop: 0.1, least: 0.15, most: 0.25 }
    : { stop: 0.07, least: 0.1, most: 0.15 };
  const ofTongue = tow.tongueKnown;

  // An estimated tongue may be heavier: 13 % on a ball, 20 % on a pin. Would that break what may
  // rest there, or the label? A limit nobody knows cannot be said to break. Or water aboard that
  // sits behind the axle might lift it.
  const heavy = times(loaded, at(pin ? 0.2 : 0.13));
  const breaksRest = mayRest.known ? above(heavy, mayRest.limit) : never;
  const breaksLabel = vehicle.payloadKnown
    ? above(plus(vehicle.aboard, heavy), vehicle.payload)
    : never;
  const lifted = over(minus(tongue, times(tow.allWater, at(tankShare))), loaded);
  const tooLight = above(at(band.stop), lifted);
  const estimate = surely(tow.estimate);
  const tail = above(none, tow.behind);

  // Electric brakes need a controller and a seven-way; surge brakes need neither.
  const brakes = f.word('trailer.brakes');
  const electric = brakes === 'unknown' ? perhaps : surely(brakes === 'electric');
  const works = (id: string): Found => {
    if (untold(id)) return { if: electric };
    return f.word(id) === 'no' ? { stop: electric } : {};
  };

  const packageNeeded = isYes('vehicle.towPackageNeeded');
  const packageFound: Found = untold('vehicle.towPackage')
    ? { if: packageNeeded }
    : f.word('vehicle.towPackage') === 'no'
      ? { stop: packageNeeded }
      : {};

  // The ball must be the coupler's size; a pin has no ball.
  const sizes = ['hitch.ballSize', 'trailer.couplerSize'] as const;
  const [ball, socket] = sizes.map((id) => rounded(f.number(id)));
  const apart = !ball || !socket || ball.hi < socket.lo || socket.hi < ball.lo;
  const same = ball && socket && ball.lo === ball.hi && socket.lo === socket.hi && !apart;
  const sizeFound: Found = sizes.every(f.known)
    ? { stop: { yes: !same, no: !apart } }
    : { if: surely(true) };

  const allowed = f.word('vehicle.distributionAllowed');
  const permission: Found = untold('vehicle.distributionAllowed')
    ? { if: surely(true) }
    : { stop: surely(allowed === 'no') };

  const wanted = 'vehicle.distributionRequiredAbove';
  const needsBars = above(loaded, f.number(wanted));
  const barsWanted: Found = inUse
    ? {}
    : untold(wanted)
      ? { care: surely(true) }
      : world.barsMayBe
        ? { unknown: needsBars }
        : { stop: needsBars };

  // Without brakes: 3,000 lb after 49 CFR 393.42, 1,500 lb while the manual's own limit is not
  // known, 1,000 lb by custom.
  const bare: Found =
    brakes === 'none'
      ? {
          stop: above(loaded, at(3000)),
          unknown: untold('vehicle.maxUnbraked') ? above(loaded, at(1500)) : never,
          care: above(loaded, at(1000)),
        }
      : {};
  const extended = f.known('hitch.extension') && f.number('hitch.extension').hi > 0;
  const mentioned = extended || (f.given('hitch.extension') && untold('hitch.extension'));
  const brakeless = smaller(at(1000), f.number('vehicle.maxUnbraked', at(1000)));

  const gcwrSilent = !f.given('vehicle.gcwr');
  const twoPeople = minus(vehicle.aboard, at(300));
  const altitude = f.number('trip.altitude', none);
  const forced = ['turbocharged', 'electric'].includes(f.word('vehicle.engine') ?? '');
  const thin = times(larger(altitude, none), at(0.02 / 1000));
  const derated = times(mayPull.limit, minus(at(1), thin));

  const both = rig.limits.combined;
  const breathes = f.known('trip.altitude') && untold('vehicle.engine') && altitude.hi > 0;
  const overThin = both ? above(both.used, both.limit) : never;
  const overRated = both ? above(both.used, f.number('vehicle.gcwr')) : never;

  return {
    // No rig of these has a camper in the bed.
    'camper-weight': 'not-asked',
    'only-with-bars': asked(world.barsMayBe, {
      unknown: relieved.map((id) => barsWantedFor(rig, id)).reduce(orEither, never),
    }),
    'engine-untold': asked(f.given('vehicle.gcwr') && breathes, {
      care: andBoth(
        above(altitude, none),
        andBoth(overThin, { yes: overRated.no, no: overRated.yes }),
      ),
    }),
    'tongue-share': asked(ofTongue, {
      stop: above(at(band.stop), share),
      care: orEither(above(at(band.least), share), above(share, at(band.most))),
    }),
    'tail-unreckoned': asked(tail.yes, { unknown: tail }),
    'tongue-estimate': asked(ofTongue, {
      care: andBoth(estimate, orEither(orEither(breaksRest, breaksLabel), tooLight)),
    }),
    'tongue-negative': asked(ofTongue, { stop: above(none, tongue) }),
    'tow-package': asked(packageNeeded.yes, packageFound),
    'brake-controller': asked(brakes !== undefined, works('vehicle.brakeController')),
    'seven-way': asked(brakes !== undefined, works('vehicle.sevenWay')),
    'ball-size': asked(!pin && sizes.every(f.given), sizeFound),
    'distribution-allowed': asked(!pin && f.word('hitch.distribution') === 'yes', permission),
    'distribution-required': asked(!pin && f.given(wanted), barsWanted),
    // What rests on an extension is held by its own label, which somebody has to read.
    'extension-rating': asked(!pin && (mentioned || f.given('hitch.extensionRating')), {
      if: surely(untold('hitch.extensionRating')),
    }),
    // A coupler that slides may be kept from it by bars: its maker tells.
    'surge-bars': asked(!pin && brakes !== undefined && f.word('hitch.distribution') === 'yes', {
      if: brakes === 'unknown' ? perhaps : surely(brakes === 'surge'),
    }),
    unbraked: asked(f.known('trailer.brakes'), bare),
    'brakes-untold': asked(untold('trailer.brakes'), { if: above(loaded, brakeless) }),
    'load-untold': level({
      if: surely(
        !f.given('load.occupants') || (!f.given('trailer.cargo') && !f.given('trailer.options')),
      ),
    }),
    'gross-over-rating': asked(mayPull.known && f.known('trailer.gvwr'), {
      care: above(f.number('trailer.gvwr'), mayPull.limit),
    }),
    'rating-assumes': asked(gcwrSilent && mayPull.known, {
      care: andBoth(above(twoPeople, none), above(loaded, minus(mayPull.limit, twoPeople))),
    }),
    'altitude-unasked': asked(gcwrSilent && mayPull.known, {
      care: andBoth(
        surely(f.known('trip.altitude') && !forced),
        andBoth(above(altitude, none), above(loaded, derated)),
      ),
    }),
    // A tenth of the front axle, without bars (custom of the trade).
    'front-axle-light': asked(
      ofTongue &&
        ['vehicle.curbFront', 'vehicle.wheelbase', 'vehicle.overhang'].every((id) => f.known(id)),
      { care: andBoth(surely(!inUse), above(over(axles.frontTaken, axles.frontAlone), at(0.1))) },
    ),
    'rear-axle-slack': asked(f.known('vehicle.gawrRear'), {
      care: andBoth(surely(inUse), above(axles.rearWithoutBars, f.number('vehicle.gawrRear'))),
    }),
    // Steeper than the launch grade of the rated tow test (from memory).
    grade: asked(f.given('trip.steepestGrade'), {
      care: above(f.number('trip.steepestGrade'), at(0.12)),
    }),
  };
}
