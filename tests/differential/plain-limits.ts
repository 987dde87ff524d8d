import { at, type Ends, larger, minus, over, plus, rounded, smaller, times } from './ends';
import { type PlainAxles, type PlainVehicle, plainAxles, plainVehicle } from './plain-axles';
import type { PlainCase, Reader, State } from './plain-case';
import { reader } from './plain-case';
import { type PlainTongue, plainTongue } from './plain-tongue';
import type { World } from './plain-worlds';

export type PlainLimit = {
  used: Ends;
  limit: Ends;
  asked: boolean;
  /** A mentioned rating of it is unknown. */
  unread: boolean;
  /** What stands on it unloaded and cannot be taken off. */
  empty: Ends;
  /** Kept free below it: a share of the room above empty, and no less than so many pounds. */
  margin?: { share: number; least: number };
  /** The limit it would have with bars, where they may be put on and that rating is known. */
  relief?: Ends;
};

const none = at(0);
const upFrom = (a: Ends): Ends => ({ lo: a.lo, hi: Infinity });

// House choices: a tenth to spare on the tow rating and on the trailer's tires, a twentieth on
// other weights, and 50 lb at the least where people load by hand.
const ofTowRating = { share: 0.1, least: 0 };
const ofWeights = { share: 0.05, least: 0 };
const byHand = { share: 0.05, least: 50 };
const ofTrailerTires = { share: 0.1, least: 0 };

/**
 * Over it for certain, over it perhaps, nearer to it than the margin, or within. Where nothing is
 * left between empty and limit, what is kept is kept narrowly.
 */
export function stateOf({ used, limit, asked, margin, empty, relief }: PlainLimit): State {
  if (!asked) return 'not-asked';
  const [u, l] = [rounded(used), rounded(limit)];
  if (u.lo > l.hi) return relief && u.lo <= rounded(relief).hi ? 'unknown' : 'stop';
  if (u.hi > l.lo) return 'unknown';
  // What carries nothing is within whatever it may hold.
  if (!margin || (u.lo === 0 && u.hi === 0 && l.hi > 0)) return 'ok';
  if (rounded(minus(limit, empty)).lo <= 0) return 'care';
  const { share, least } = margin;
  const byShare = plus(times(limit, at(1 - share)), times(empty, at(share)));
  const careFrom = rounded(smaller(byShare, minus(limit, at(least))));
  return u.hi > careFrom.lo ? 'care' : 'ok';
}

/** A rating for use with bars, and the smaller of it and another one without them. */
function withAndWithout(f: Reader, world: World, full: string, bare: string) {
  const bareTold = f.given(bare);
  if (world.inUse) {
    const onlyBare = !f.given(full) && f.known(bare);
    return {
      limit: onlyBare ? upFrom(f.number(bare)) : f.number(full),
      unread: f.given(full) && !f.known(full),
    };
  }
  const ratings = [full, bare].filter(f.given);
  const limit = ratings.map((id) => f.number(id)).reduce(smaller, at(Infinity));
  return {
    limit,
    unread: ratings.some((id) => !f.known(id)),
    ...(bareTold && world.barsMayBe && f.known(full) && { relief: f.number(full) }),
  };
}

/** What it may pull. A rating that nobody told may be anything, up to what it carries bare. */
function towRating(f: Reader, world: World) {
  const most = 'vehicle.maxTrailerWeight';
  const carried = 'vehicle.maxTrailerCarried';
  if (world.pin) {
    const id = f.given('vehicle.maxFifthWheel') ? 'vehicle.maxFifthWheel' : most;
    return { limit: f.number(id), unread: f.given(id) && !f.known(id), known: f.known(id) };
  }
  const carriedCounts = f.given(carried) && !world.inUse;
  const counting = carriedCounts ? [most, carried] : [most];
  return {
    limit: counting.map((id) => f.number(id)).reduce(smaller),
    unread: counting.some((id) => f.given(id) && !f.known(id)),
    known: counting.every(f.known),
    ...(carriedCounts && world.barsMayBe && f.known(most) && { relief: f.number(most) }),
  };
}

function tongueRating(f: Reader, world: World) {
  const carried = 'vehicle.maxTongueCarried';
  const distributed = 'vehicle.maxTongueDistributed';
  const isUnread = (id: string) => f.given(id) && !f.known(id);
  if (world.inUse && f.known(distributed)) {
    return { limit: f.number(distributed), unread: false, known: true };
  }
  if (world.inUse && f.given(distributed)) {
    return { limit: upFrom(f.number(carried)), unread: true, known: false };
  }
  return {
    limit: f.number(carried),
    unread: isUnread(carried),
    known: f.known(carried),
    ...(world.barsMayBe && f.known(distributed) && { relief: f.number(distributed) }),
  };
}

export type PlainRig = {
  f: Reader;
  world: World;
  tow: PlainTongue;
  vehicle: PlainVehicle;
  axles: PlainAxles;
  payloadUsed: Ends;
  vehicleGross: Ends;
  combined: Ends;
  /** What it may pull, and whether all of that is known. */
  mayPull: { limit: Ends; known: boolean };
  /** What may rest on ball or pin, and whether all of that is known. */
  mayRest: { limit: Ends; known: boolean };
  /** How many tires carry the axle. */
  tiresOn: { front: Ends; rear: Ends; trailer: Ends };
  limits: Record<string, PlainLimit>;
};

/** All limits in one world, in the order in which the first of two equals binds. */
export function plainLimits(c: PlainCase, world: World): PlainRig {
  const f = reader(c);
  const tow = plainTongue(f);
  const vehicle = plainVehicle(f);
  const axles = plainAxles(f, tow, vehicle, world);
  const { loaded, tongue, unloaded } = tow;
  const isUnread = (id: string) => f.given(id) && !f.known(id);
  const simple = (id: string, used: Ends, asked = f.given(id)): PlainLimit => ({
    used,
    limit: f.number(id),
    asked,
    unread: isUnread(id),
    empty: none,
    margin: ofWeights,
  });
  const onBall = (id: string, used: Ends): PlainLimit =>
    simple(id, used, f.given(id) && !world.pin);

  // The tongue presses on the vehicle whole, with or without bars; in the combination it is part
  // of the trailer, and counted once.
  const payloadUsed = plus(vehicle.aboard, tongue);
  const vehicleGross = plus(vehicle.curb, payloadUsed);
  const combined = plus(vehicle.curb, vehicle.aboard, loaded);

  // Thin air takes 2 % for each 1,000 ft from an engine that is not known to be forced.
  const forced = ['turbocharged', 'electric'].includes(f.word('vehicle.engine') ?? '');
  const thousands = times(larger(f.number('trip.altitude', none), none), at(1 / 1000));
  const left = minus(at(1), times(thousands, at(0.02)));
  const derates = f.known('trip.altitude') && !forced;
  const gcwr = f.number('vehicle.gcwr');

  const mayPull = towRating(f, world);
  const onTongue = tongueRating(f, world);
  const receiver = withAndWithout(f, world, 'hitch.receiverRating', 'hitch.receiverCarried');
  const receiverTongue = withAndWithout(
    f,
    world,
    'hitch.receiverTongueRating',
    'hitch.receiverTongueCarried',
  );
  const eitherGiven = (...ids: string[]) => ids.some(f.given) && !world.pin;

  const pins = ['vehicle.maxPin', 'hitch.pinRating'].filter(f.given);
  const onPin = pins.map((id) => f.number(id)).reduce(smaller, at(Infinity));
  const pinKnown = pins.length > 0 && pins.every(f.known);
  const extended = f.known('hitch.extension') && f.number('hitch.extension').hi > 0;

  // A passenger tire carries less than is written on it under anything but a passenger car.
  const tires = (
    id: string,
    axle: Ends,
    count: Ends,
    empty: Ends,
    divided: number,
  ): PlainLimit => ({
    ...simple(id, over(axle, count)),
    limit: over(f.number(id), at(divided)),
    empty: over(empty, count),
  });
  const axleCount = f.number('trailer.axles');
  const tiresOn = { front: at(2), rear: at(world.rearTires), trailer: times(axleCount, at(2)) };

  const limits: Record<string, PlainLimit> = {
    'trailer-weight': {
      ...simple('vehicle.maxTrailerWeight', loaded, true),
      ...mayPull,
      margin: ofTowRating,
    },
    tongue: { ...simple('vehicle.maxTongueCarried', tongue, !world.pin), ...onTongue },
    payload: {
      ...simple('vehicle.placardPayload', payloadUsed, true),
      limit: vehicle.payload,
      margin: byHand,
    },
    'vehicle-gross': {
      ...simple('vehicle.gvwr', vehicleGross),
      empty: vehicle.curb,
      margin: byHand,
    },
    'front-axle': {
      ...simple('vehicle.gawrFront', axles.front),
      empty: vehicle.emptyFront,
      margin: byHand,
    },
    'rear-axle': {
      ...simple('vehicle.gawrRear', axles.rear),
      empty: vehicle.emptyRear,
      margin: byHand,
    },
    combined: {
      ...simple('vehicle.gcwr', combined),
      limit: derates ? times(gcwr, left) : gcwr,
      empty: plus(vehicle.curb, unloaded),
      margin: byHand,
    },
    receiver: {
      ...simple('', loaded, eitherGiven('hitch.receiverRating', 'hitch.receiverCarried')),
      ...receiver,
    },
    'receiver-tongue': {
      ...simple(
        '',
        tongue,
        eitherGiven('hitch.receiverTongueRating', 'hitch.receiverTongueCarried'),
      ),
      ...receiverTongue,
    },
    extension: simple(
      'hitch.extensionRating',
      tongue,
      !world.pin && (extended || f.given('hitch.extensionRating')),
    ),
    pin: {
      ...simple('', tongue, world.pin && pins.length > 0),
      limit: onPin,
      unread: pins.some((id) => !f.known(id)),
    },
    'ball-mount': onBall('hitch.mountRating', loaded),
    'ball-mount-tongue': onBall('hitch.mountTongueRating', tongue),
    ball: onBall('hitch.ballRating', loaded),
    coupler: onBall('trailer.couplerRating', loaded),
    'coupler-tongue': onBall('trailer.couplerTongueRating', tongue),
    'unbraked-rating': simple(
      'vehicle.maxUnbraked',
      loaded,
      f.given('vehicle.maxUnbraked') && f.word('trailer.brakes') === 'none',
    ),
    'trailer-gross': {
      ...simple('trailer.gvwr', loaded, true),
      empty: unloaded,
      margin: byHand,
    },
    'trailer-axles': {
      ...simple('trailer.gawr', axles.trailer),
      limit: times(axleCount, f.number('trailer.gawr')),
      margin: byHand,
    },
    'vehicle-tires-front': tires(
      'vehicle.tireCapacityFront',
      axles.front,
      tiresOn.front,
      vehicle.emptyFront,
      world.vehicleTires,
    ),
    'vehicle-tires-rear': tires(
      'vehicle.tireCapacityRear',
      axles.rear,
      tiresOn.rear,
      vehicle.emptyRear,
      world.vehicleTires,
    ),
    'trailer-tires': {
      ...tires('trailer.tireCapacity', axles.trailer, tiresOn.trailer, none, world.trailerTires),
      margin: ofTrailerTires,
    },
    'frontal-area': {
      used: f.number('trailer.frontalArea'),
      limit: f.number('vehicle.maxFrontalArea'),
      asked: f.given('vehicle.maxFrontalArea'),
      unread: isUnread('vehicle.maxFrontalArea'),
      empty: none,
    },
  };
  const mayRest = world.pin ? { limit: onPin, known: pinKnown } : onTongue;
  return {
    f,
    world,
    tow,
    vehicle,
    axles,
    payloadUsed,
    vehicleGross,
    combined,
    mayPull,
    mayRest,
    tiresOn,
    limits,
  };
}
