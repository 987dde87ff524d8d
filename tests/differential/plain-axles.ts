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
  const labelled = f.given('vehicle.placardPayload');
  const payload = labelled
    ? f.number('vehicle.placardPayload')
    : minus(f.number('vehicle.gvwr'), curb);
  const payloadKnown = labelled
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
  const frontWithoutBars = minus(frontAlone, times(tongue, lever));
  const rearWithoutBars = plus(rearAlone, times(tongue, byTongueOnRear));

  // Bars restore r of what the tongue takes off the front axle: M = r·V·b / (1 + b/L) in lb·ft.
  // The front axle gains M·(1 + b/L)/w, the trailer's axles M/L, and the rear axle loses both.
  const restored = f.known('hitch.restored') ? f.number('hitch.restored') : span(none, at(1));
  const barsKnown = f.known('vehicle.overhang') && f.known('trailer.ballToAxle');
  const pressing = larger(tongue, none);
  const lift = times(restored, pressing);
  const feet = times(b, at(1 / 12));
  const mayLift = world.inUse && tongue.hi > 0;
  const byBars = (ifLifting: Ends): Ends => {
    if (!mayLift) return none;
    return barsKnown ? ifLifting : zeroUp;
  };
  const share = over(feet, plus(far, feet));
  const moment = byBars(times(lift, over(feet, plus(at(1), over(feet, far)))));
  const ontoTrailer = byBars(times(lift, share));
  const ontoFront = byBars(times(lift, lever));

  return {
    lever,
    restored,
    barsKnown,
    /** Of each pound of tongue, what bars put on the trailer's axles: r·b/(L + b). */
    liftShare: times(restored, share),
    reckoned,
    frontAlone: reckoned ? frontAlone : zeroUp,
    rearAlone: reckoned ? rearAlone : zeroUp,
    rearWithoutBars: reckoned ? rearWithoutBars : zeroUp,
    moment,
    front: reckoned ? plus(frontWithoutBars, ontoFront) : zeroUp,
    rear: reckoned ? minus(rearWithoutBars, plus(ontoFront, ontoTrailer)) : zeroUp,
    trailer: plus(minus(loaded, tongue), ontoTrailer),
  };
}

export type PlainAxles = ReturnType<typeof plainAxles>;
