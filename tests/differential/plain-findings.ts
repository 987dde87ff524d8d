import { at, type Ends, plus, rounded, times } from './ends';
import { andBoth, type Maybe, not, orEither, type State, surely } from './plain-case';
import type { PlainLimits } from './plain-limits';

const never = surely(false);

/** At the edge is within it; numbers equal to a millionth are equal. */
function above(a: Ends, b: Ends): Maybe {
  const [x, y] = [rounded(a), rounded(b)];
  return { yes: x.hi > y.lo, no: x.lo <= y.hi };
}

/** A stop that is only possible leaves the question open; a care that is possible is said. */
function level(stop: Maybe, care: Maybe): State {
  if (stop.yes) return stop.no ? 'unknown' : 'stop';
  return care.yes ? 'care' : 'ok';
}

/** What is said beside the limits. */
export function plainFindings(all: PlainLimits): Record<string, State> {
  const { load, tongueLimit, tongueKnown } = all;
  const { f, trailer, tongue, share, inUse } = load;
  const asked = (id: string, state: State): State => (f.given(id) ? state : 'not-asked');

  // A ball unless another coupling was named.
  const coupling = f.word('trailer.coupling') ?? 'ball';
  const pin: Maybe =
    coupling === 'unknown' ? { yes: true, no: true } : surely(coupling === 'fifth-wheel');
  const byCoupling = (onBall: number, onPin: number): Ends => ({
    lo: pin.no ? onBall : onPin,
    hi: pin.yes ? onPin : onBall,
  });

  // Under the usual band the trailer sways, over it the hitch carries too much: 10–15 % on a ball
  // (government towing guidance), 15–25 % on a fifth-wheel.
  const outside = orEither(
    above(byCoupling(0.1, 0.15), share),
    above(share, byCoupling(0.15, 0.25)),
  );

  // An estimated tongue may be heavier: 13 % on a ball, 20 % on a pin (house choices). Would that
  // break what the ball or the label allows? Ratings nobody knows cannot be said to break.
  const heavy = times(trailer, byCoupling(0.13, 0.2));
  const breaksTongue = tongueKnown ? above(heavy, tongueLimit) : never;
  const breaksPayload = load.payloadKnown ? above(plus(load.aboard, heavy), load.payload) : never;
  const tooHeavy = orEither(breaksTongue, breaksPayload);

  // Electric brakes need a controller and a seven-way: without is a stop, not told is “make sure”.
  const brakes = f.maybe('trailer.electricBrakes');
  const fitted = (id: string): State =>
    f.known(id) ? level(andBoth(brakes, not(f.maybe(id))), never) : level(never, brakes);

  // The ball must be the coupler's size; a pin has no ball.
  const sizesKnown = f.known('hitch.ballSize') && f.known('trailer.couplerSize');
  const ball = rounded(f.number('hitch.ballSize'));
  const socket = rounded(f.number('trailer.couplerSize'));
  const apart = ball.hi < socket.lo || socket.hi < ball.lo;
  const same = ball.lo === ball.hi && socket.lo === socket.hi && ball.lo === socket.lo;
  const differ: Maybe = { yes: !same, no: !apart };

  // Bars where the maker allows none; no bars where the maker wants them.
  const allowed = f.given('vehicle.distributionAllowed')
    ? f.maybe('vehicle.distributionAllowed')
    : surely(true);
  const needBars = f.known('vehicle.distributionRequiredAbove')
    ? level(
        andBoth(not(inUse), above(trailer, f.number('vehicle.distributionRequiredAbove'))),
        never,
      )
    : level(never, not(inUse));

  // The rating may hang on the tow package: not told whether it is fitted leaves that open.
  const lacking = andBoth(f.maybe('vehicle.towPackageNeeded'), not(f.maybe('vehicle.towPackage')));

  // Without brakes: over 1,000 lb by custom, over 3,000 lb after 49 CFR 393.42.
  const unbraked = level(
    andBoth(not(brakes), above(trailer, at(3000))),
    andBoth(not(brakes), above(trailer, at(1000))),
  );

  return {
    'tongue-share': level(never, outside),
    'tongue-estimate': level(never, andBoth(surely(load.estimate), tooHeavy)),
    'tongue-negative': level(above(at(0), tongue), never),
    'ball-size': sizesKnown ? level(andBoth(not(pin), differ), never) : 'not-asked',
    'tow-package': asked('vehicle.towPackageNeeded', level(lacking, never)),
    'brake-controller': asked('trailer.electricBrakes', fitted('vehicle.brakeController')),
    'seven-way': asked('trailer.electricBrakes', fitted('vehicle.sevenWay')),
    'distribution-allowed': asked(
      'hitch.distribution',
      level(andBoth(f.maybe('hitch.distribution'), not(allowed)), never),
    ),
    'distribution-required': asked('vehicle.distributionRequiredAbove', needBars),
    unbraked: asked('trailer.electricBrakes', unbraked),
    // Steeper than the launch grade of the rated tow test (from memory).
    grade: asked(
      'trip.steepestGrade',
      level(never, above(f.number('trip.steepestGrade'), at(0.12))),
    ),
  };
}
