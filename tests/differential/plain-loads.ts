import { at, type Ends, larger, minus, over, plus, span, times, zeroUp } from './ends';
import { type PlainCase, reader } from './plain-case';
import { plainTongue } from './plain-tongue';

const none = at(0);
const sum = (all: Ends[]): Ends => all.reduce((a, b) => plus(a, b), none);

/** Weights and axle loads of a rig, by straight arithmetic. */
export function loads(c: PlainCase) {
  const f = reader(c);
  const tow = plainTongue(f);
  const { trailer, tongue, inUse, far } = tow;

  // The vehicle's own weight: a brochure's misses options, so the largest of those known counts.
  const curbs: Ends[] = [];
  if (f.known('vehicle.curbWeight')) curbs.push(f.number('vehicle.curbWeight'));
  const axlesKnown = f.known('vehicle.curbFront') && f.known('vehicle.curbRear');
  const curbFront = f.number('vehicle.curbFront');
  const curbRear = f.number('vehicle.curbRear');
  if (axlesKnown) curbs.push(plus(curbFront, curbRear));
  if (f.known('vehicle.gvwr') && f.known('vehicle.placardPayload')) {
    curbs.push(minus(f.number('vehicle.gvwr'), f.number('vehicle.placardPayload')));
  }
  const curbKnown = curbs.length > 0;
  const curb = curbKnown ? curbs.reduce(larger) : zeroUp;

  // What people load into the vehicle, and what hangs on its hitch.
  const people = sum(f.rows('load.occupants').map((row) => f.cell(row.weight)));
  const things = sum(f.rows('load.cargo').map((row) => f.cell(row.weight)));
  const hardware = f.number('hitch.hardwareWeight', none);
  const aboard = plus(people, things, hardware);

  // Payload: the door label when it was mentioned, or what the rating leaves above the curb weight.
  // The tongue presses on the vehicle, whole, with or without bars.
  const payloadUsed = plus(aboard, tongue);
  const labelled = f.given('vehicle.placardPayload');
  const payload = labelled
    ? f.number('vehicle.placardPayload')
    : minus(f.number('vehicle.gvwr'), curb);
  const payloadKnown = labelled
    ? f.known('vehicle.placardPayload')
    : f.known('vehicle.gvwr') && curbKnown;

  // Bars lift with M = r·V·b / (1 + b/L), in lb·ft (b is in inches, L in feet). They do nothing
  // until the tongue presses. The front axle gains M·(1 + b/L)/w = r·V·b/w; the trailer's axles
  // gain M/L = r·V·b/(L + b); the rear axle loses both.
  const wheelbase = f.number('vehicle.wheelbase');
  const overhang = f.number('vehicle.overhang');
  const restored = f.number('hitch.restored');
  const settingKnown = ['hitch.restored', 'vehicle.overhang', 'trailer.ballToAxle'].every(f.known);
  const mayLift = inUse.yes && tongue.hi > 0;
  const mayNotLift = inUse.no || tongue.lo <= 0;
  const byBars = (ifLifting: Ends): Ends => {
    if (!mayLift) return none;
    const lifted = settingKnown ? ifLifting : zeroUp;
    return mayNotLift ? span(none, lifted) : lifted;
  };
  const b = times(overhang, at(1 / 12));
  const lift = times(restored, larger(tongue, none));
  const moment = byBars(times(lift, over(b, plus(at(1), over(b, far)))));
  const ontoFront = byBars(times(lift, over(overhang, wheelbase)));
  const ontoTrailer = byBars(times(lift, over(b, plus(far, b))));

  // The vehicle empty, axle by axle, scaled up to the curb weight that counts.
  const scale = axlesKnown ? larger(at(1), over(curb, plus(curbFront, curbRear))) : at(1);
  const emptyFront = axlesKnown ? times(curbFront, scale) : zeroUp;
  const emptyRear = axlesKnown ? times(curbRear, scale) : zeroUp;

  // Levers about the rear axle: a row sits a ahead of it, hardware and tongue b behind it.
  const rows = [...f.rows('load.occupants'), ...f.rows('load.cargo')];
  const axlesReckoned =
    axlesKnown &&
    f.known('vehicle.wheelbase') &&
    f.known('vehicle.overhang') &&
    rows.every(f.isPlaced);
  const onFront = rows.map((row) => times(f.cell(row.weight), over(f.cell(row.ahead), wheelbase)));
  const onRear = rows.map((row) =>
    times(f.cell(row.weight), minus(at(1), over(f.cell(row.ahead), wheelbase))),
  );
  const lever = over(overhang, wheelbase);
  const frontAlone = minus(plus(emptyFront, sum(onFront)), times(hardware, lever));
  const rearAlone = plus(emptyRear, sum(onRear), times(hardware, plus(at(1), lever)));
  const front = plus(minus(frontAlone, times(tongue, lever)), ontoFront);
  const rear = minus(
    plus(rearAlone, times(tongue, plus(at(1), lever))),
    plus(ontoFront, ontoTrailer),
  );

  return {
    f,
    ...tow,
    curb,
    curbKnown,
    aboard,
    payloadUsed,
    payload,
    payloadKnown,
    vehicleGross: plus(curb, payloadUsed),
    // The tongue is part of the trailer, so here it is counted once.
    combined: plus(curb, aboard, trailer),
    moment,
    wheelbase,
    overhang,
    restored,
    settingKnown,
    axlesReckoned,
    emptyFront,
    emptyRear,
    frontAlone,
    rearAlone,
    front: axlesReckoned ? front : zeroUp,
    rear: axlesReckoned ? rear : zeroUp,
    axleTrailer: plus(minus(trailer, tongue), ontoTrailer),
  };
}
