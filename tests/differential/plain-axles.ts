import { at, type Ends, larger, minus, over, plus, span, times, zeroUp } from './ends';
import type { Reader } from './plain-case';
import type { PlainTongue } from './plain-tongue';
import type { World } from './plain-worlds';

const none = at(0);
const sum = (all: Ends[]): Ends => all.reduce((a, b) => plus(a, b), none);

/** Who nobody mentions: one driver (49 CFR 571.110). */
const driver = [{ weight: 150 }];
/** House choices of where somebody sits, and something lies, that nobody placed. */
const foremost = at(0.65);
const rearmost = at(0.8);

/** What stands in and on the vehicle, trailer apart. */
export function plainVehicle(f: Reader) {
  // The vehicle's own weight: a brochure's misses options, so the largest of those known counts.
  const axlesKnown = f.known('vehicle.curbFront') && f.known('vehicle.curbRear');
  const byAxles = plus(f.number('vehicle.curbFront'), f.number('vehicle.curbRear'));
  const curbs: Ends[] = [];
  if (f.known('vehicle.curbWeight')) curbs.push(f.number('vehicle.curbWeight'));
  if (axlesKnown) curbs.push(byAxles);
  if (f.known('vehicle.gvwr') && f.known('vehicle.placardPayload')) {
    curbs.push(minus(f.number('vehicle.gvwr'), f.number('vehicle.placardPayload')));
  }
  const curbKnown = curbs.length > 0;
  const curb = curbKnown ? curbs.reduce(larger) : zeroUp;
  // When that is more than the two axles weigh, both are scaled up to it.
  const scale = axlesKnown ? larger(at(1), over(curb, byAxles)) : at(1);

  const people = f.given('load.occupants') ? f.rows('load.occupants') : driver;
  const things = f.rows('load.cargo');
  const hardware = f.number('hitch.hardwareWeight', none);
  const aboard = plus(sum([...people, ...things].map((row) => f.cell(row.weight))), hardware);

  // The door label where it was mentioned; else what the rating leaves above the curb weight.
  const labeled = f.given('vehicle.placardPayload');
  const payload = labeled
    ? f.number('vehicle.placardPayload')
    : minus(f.number('vehicle.gvwr'), curb);
  const payloadKnown = labeled
    ? f.known('vehicle.placardPayload')
    : f.known('vehicle.gvwr') && curbKnown;

  return {
    curb,
    curbKnown,
    axlesKnown,
    emptyFront: axlesKnown ? times(f.number('vehicle.curbFront'), scale) : zeroUp,
    emptyRear: axlesKnown ? times(f.number('vehicle.curbRear'), scale) : zeroUp,
    people,
    things,
    hardware,
    aboard,
    payload,
    payloadKnown,
  };
}

export type PlainVehicle = ReturnType<typeof plainVehicle>;

/**
 * Levers: a row sits a ahead of the rear axle, hardware and tongue b behind it.
 *
 *     front    rear     ball              trailer's axles
 *       ├── w ──┤── b ──┤──────── L ────────┤
 */
export function plainAxles(f: Reader, tow: PlainTongue, vehicle: PlainVehicle, world: World) {
  const { tongue, loaded, far } = tow;
  const wheelbase = f.number('vehicle.wheelbase');
  const b = plus(
    f.known('vehicle.overhang') ? f.number('vehicle.overhang') : zeroUp,
    f.number('hitch.extension', none),
  );
  const isNothing = ({ lo, hi }: Ends): boolean => lo === 0 && hi === 0;
  const overhangMissed =
    !f.known('vehicle.overhang') && !(isNothing(vehicle.hardware) && isNothing(tongue));
  const reckoned = vehicle.axlesKnown && f.known('vehicle.wheelbase') && !overhangMissed;

  // Where a row rides, as a share of the wheelbase ahead of the rear axle.
  const behind = over(times(larger(b, none), rearmost), wheelbase);
  const seats = span(none, foremost);
  const bed: Ends = { lo: -behind.hi, hi: foremost.hi };
  const onFront = (rows: PlainVehicle['people'], anywhere: Ends): [Ends, Ends][] =>
    rows.map((row) => {
      const ahead = f.place(row);
      return [f.cell(row.weight), ahead ? over(ahead, wheelbase) : anywhere];
    });
  const all = [...onFront(vehicle.people, seats), ...onFront(vehicle.things, bed)];
  const lever = over(b, wheelbase);
  const byTongueOnRear = plus(at(1), lever);
  const frontAlone = minus(
    plus(vehicle.emptyFront, sum(all.map(([weight, share]) => times(weight, share)))),
    times(vehicle.hardware, lever),
  );
  const rearAlone = plus(
    vehicle.emptyRear,
    sum(all.map(([weight, share]) => times(weight, minus(at(1), share)))),
    times(vehicle.hardware, byTongueOnRear),
  );

  // Bars restore r of what the tongue takes off the front axle: M = r·V·b / (1 + b/L) in lb·ft.
  // The front axle gains M·(1 + b/L)/w = r·V·b/w, the trailer's axles M/L = r·V·b/(L + b), and the
  // rear axle loses both. They do nothing until the tongue presses.
  const restored = f.known('hitch.restored') ? f.number('hitch.restored') : span(none, at(1));
  const barsKnown = f.known('vehicle.overhang') && f.known('trailer.ballToAxle');
  const feet = times(b, at(1 / 12));
  // b/(L + b), written so that b stands in it once.
  const reach = minus(at(1), over(far, plus(far, feet)));
  const lift = world.inUse && barsKnown ? restored : none;
  const unlifted = minus(at(1), lift);
  const liftShare = times(lift, reach);
  // Whatever moves while nobody knows how far.
  const somehow = world.inUse && !barsKnown && tongue.hi > 0 ? zeroUp : none;

  /** What each pound of tongue does, pressing or lifting; straight lines that meet at none. */
  const overTongue = (reckon: (pounds: Ends, presses: boolean) => Ends): Ends => {
    const { lo, hi } = tongue;
    const pressing = hi > 0 ? [reckon({ lo: Math.max(lo, 0), hi }, true)] : [];
    const lifting = lo < 0 || hi <= 0 ? [reckon({ lo, hi: Math.min(hi, 0) }, false)] : [];
    return [...pressing, ...lifting].reduce(span);
  };
  const one = at(1);
  const front = overTongue((pounds, presses) =>
    minus(frontAlone, times(pounds, times(lever, presses ? unlifted : one))),
  );
  const rear = overTongue((pounds, presses) => {
    const each = presses ? minus(plus(one, times(lever, unlifted)), liftShare) : byTongueOnRear;
    return plus(rearAlone, times(pounds, each));
  });
  const trailer = overTongue((pounds, presses) =>
    minus(loaded, times(pounds, presses ? minus(one, liftShare) : one)),
  );
  const moment = overTongue((pounds, presses) =>
    presses ? times(times(lift, pounds), times(far, reach)) : none,
  );

  return {
    // A tongue that lifts takes nothing from the front.
    frontTaken: times(larger(tongue, none), lever),
    lever,
    restored,
    barsKnown,
    /** Of each pound of tongue, what bars put on the trailer's axles: r·b/(L + b). */
    liftShare,
    reckoned,
    frontAlone: reckoned ? frontAlone : zeroUp,
    rearAlone: reckoned ? rearAlone : zeroUp,
    rearWithoutBars: reckoned ? plus(rearAlone, times(tongue, byTongueOnRear)) : zeroUp,
    moment: plus(moment, somehow),
    front: reckoned ? plus(front, somehow) : zeroUp,
    rear: reckoned ? minus(rear, somehow) : zeroUp,
    trailer: plus(trailer, somehow),
  };
}

export type PlainAxles = ReturnType<typeof plainAxles>;
