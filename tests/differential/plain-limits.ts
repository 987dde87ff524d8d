import { at, type Ends, larger, minus, over, plus, rounded, smaller, span, times } from './ends';
import type { Maybe, PlainCase, State } from './plain-case';
import { loads } from './plain-loads';

export type PlainLimit = {
  used: Ends;
  limit: Ends;
  asked: boolean;
  /** Whether it rests on ratings that are all known. */
  rated: boolean;
  /** What stands on it unloaded and cannot be taken off. */
  empty: Ends;
  margin: number;
};

const none = at(0);
// House choices: a tenth to spare on the tow rating, a twentieth on other weights.
const margins = { tow: 0.1, other: 0.05, area: 0 };

const either = (when: Maybe, yes: Ends, no: Ends): Ends =>
  !when.no ? yes : !when.yes ? no : span(yes, no);

/** Over it for certain, over it perhaps, nearer to it than the margin allows, or within. */
export function stateOf({ used, limit, asked, margin }: PlainLimit): State {
  if (!asked) return 'not-asked';
  const [u, l] = [rounded(used), rounded(limit)];
  const careFrom = rounded(times(limit, at(1 - margin)));
  if (u.lo > l.hi) return 'stop';
  if (u.hi > l.lo) return 'unknown';
  return u.hi > careFrom.lo ? 'care' : 'ok';
}

/** All limits, in the order in which the first of two equals binds. */
export function plainLimits(c: PlainCase) {
  const load = loads(c);
  const { f, trailer, tongue, inUse } = load;
  const rating = (id: string): Ends => f.number(id);
  const simple = (id: string, used: Ends, empty = none): PlainLimit => ({
    used,
    limit: rating(id),
    asked: f.given(id),
    rated: f.known(id),
    empty,
    margin: margins.other,
  });

  /** A rating with bars, and the smaller of it and another one without them. */
  const withAndWithout = (used: Ends, full: string, bare: string): PlainLimit => {
    const fullCounts = inUse.yes || f.given(full) || !f.given(bare);
    const bareCounts = inUse.no && f.given(bare);
    const without = !f.given(bare)
      ? rating(full)
      : f.given(full)
        ? smaller(rating(full), rating(bare))
        : rating(bare);
    return {
      ...simple(full, used),
      limit: either(inUse, rating(full), without),
      asked: f.given(full) || f.given(bare),
      rated: (!fullCounts || f.known(full)) && (!bareCounts || f.known(bare)),
    };
  };

  // The tow rating: what it may pull at all, and without bars what it may carry on the ball. It is
  // always asked, so that a silent one is an unknown one.
  const bareTow = f.given('vehicle.maxTrailerCarried')
    ? smaller(rating('vehicle.maxTrailerWeight'), rating('vehicle.maxTrailerCarried'))
    : rating('vehicle.maxTrailerWeight');
  const bareTowKnown = !inUse.no || f.orSilent('vehicle.maxTrailerCarried');

  // On the ball: the maker's number with bars where one is known and they are hooked up.
  const distributed = f.known('vehicle.maxTongueDistributed');
  const tongueLimit = either(
    inUse,
    rating(distributed ? 'vehicle.maxTongueDistributed' : 'vehicle.maxTongueCarried'),
    rating('vehicle.maxTongueCarried'),
  );
  const tongueKnown = (distributed && !inUse.no) || f.known('vehicle.maxTongueCarried');

  // 2 % less for each 1,000 ft (common practice), unless the engine is known to breathe otherwise.
  const forced = ['turbocharged', 'electric'].includes(f.word('vehicle.engine') ?? '');
  const height = f.known('trip.altitude') && !forced ? f.number('trip.altitude') : none;
  const thinAir = minus(at(1), times(larger(none, height), at(0.02 / 1000)));
  const combinedLimit = times(rating('vehicle.gcwr'), thinAir);

  const dual = f.word('vehicle.dualRearWheels');
  const rearTires = dual === 'yes' ? at(4) : dual === 'unknown' ? { lo: 2, hi: 4 } : at(2);
  const axles = f.number('trailer.axles');
  const dry = rating('trailer.dryWeight');

  const limits: Record<string, PlainLimit> = {
    'trailer-weight': {
      ...simple('vehicle.maxTrailerWeight', trailer),
      limit: either(inUse, rating('vehicle.maxTrailerWeight'), bareTow),
      asked: true,
      rated: f.known('vehicle.maxTrailerWeight') && bareTowKnown,
      margin: margins.tow,
    },
    tongue: {
      ...simple('vehicle.maxTongueCarried', tongue),
      limit: tongueLimit,
      asked: true,
      rated: tongueKnown,
    },
    payload: {
      ...simple('vehicle.placardPayload', load.payloadUsed),
      limit: load.payload,
      asked: true,
      rated: load.payloadKnown,
    },
    'vehicle-gross': simple('vehicle.gvwr', load.vehicleGross, load.curb),
    'front-axle': simple('vehicle.gawrFront', load.front, load.emptyFront),
    'rear-axle': simple('vehicle.gawrRear', load.rear, load.emptyRear),
    combined: {
      ...simple('vehicle.gcwr', load.combined, plus(load.curb, dry)),
      limit: combinedLimit,
    },
    receiver: withAndWithout(trailer, 'hitch.receiverRating', 'hitch.receiverCarried'),
    'receiver-tongue': withAndWithout(
      tongue,
      'hitch.receiverTongueRating',
      'hitch.receiverTongueCarried',
    ),
    'ball-mount': simple('hitch.mountRating', trailer),
    ball: simple('hitch.ballRating', trailer),
    coupler: simple('trailer.couplerRating', trailer),
    'trailer-gross': { ...simple('trailer.gvwr', trailer, dry), asked: true },
    'trailer-axles': {
      ...simple('trailer.gawr', load.axleTrailer),
      limit: times(axles, rating('trailer.gawr')),
      rated: f.known('trailer.gawr') && f.known('trailer.axles'),
    },
    'vehicle-tires-front': simple(
      'vehicle.tireCapacityFront',
      over(load.front, at(2)),
      over(load.emptyFront, at(2)),
    ),
    'vehicle-tires-rear': simple(
      'vehicle.tireCapacityRear',
      over(load.rear, rearTires),
      over(load.emptyRear, rearTires),
    ),
    // The heavier side of a trailer carries a twentieth more (a house choice).
    'trailer-tires': simple(
      'trailer.tireCapacity',
      times(over(load.axleTrailer, times(at(2), axles)), at(1.05)),
    ),
    'frontal-area': {
      ...simple('vehicle.maxFrontalArea', rating('trailer.frontalArea')),
      margin: margins.area,
    },
  };
  return { limits, load, tongueLimit, tongueKnown, rearTires };
}

export type PlainLimits = ReturnType<typeof plainLimits>;
