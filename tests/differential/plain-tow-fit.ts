import { at, closed, type Ends, minus, round, rounded, smaller, span, times } from './ends';
import { type PlainAnswer, type PlainCase, reader, type State } from './plain-case';
import { plainFindings } from './plain-findings';
import { type Largest, plainLargest } from './plain-largest';
import { type PlainLimit, type PlainRig, plainLimits, stateOf } from './plain-limits';
import { worldsOf } from './plain-worlds';

/** How much of the room above what stands there empty is used, at the most. */
function roomUsed({ used, limit, empty }: PlainLimit): number {
  const room = minus(limit, empty);
  return round(room.lo) <= 0 ? Infinity : round(minus(used, empty).hi / room.lo);
}

/** Which limit runs out first: of those that can be reckoned, the fullest; the first of equals. */
function bindingOf(rigs: readonly PlainRig[]): string | null {
  let binding: string | null = null;
  let fullest = -Infinity;
  for (const id of Object.keys(rigs[0]?.limits ?? {})) {
    const all = rigs.flatMap(({ limits }) => limits[id] ?? []).filter(({ asked }) => asked);
    if (all.length === 0) continue;
    if (all.some(({ used, limit, unread }) => unread || !closed(used) || !closed(limit))) continue;
    const full = Math.max(...all.map(roomUsed));
    if (binding !== null && full <= fullest) continue;
    binding = id;
    fullest = full;
  }
  return binding;
}

/** What is so in every world stands; a stop in some of them is an open question. */
function together(states: readonly State[]): State {
  if (states.every((state) => state === 'stop')) return 'stop';
  if (states.includes('stop') || states.includes('unknown')) return 'unknown';
  if (states.includes('if')) return 'if';
  if (states.includes('care')) return 'care';
  return states.every((state) => state === 'not-asked') ? 'not-asked' : 'ok';
}

/** One certain stop decides; then one open question; then what must be true; then one care. */
function outcomeOf(states: readonly State[]): PlainAnswer['outcome'] {
  if (states.includes('stop')) return 'does-not-fit';
  if (states.includes('unknown')) return 'cannot-say';
  if (states.includes('if')) return 'fits-if';
  return states.includes('care') ? 'fits-with-care' : 'fits';
}

function largestOf(all: readonly Largest[]): Ends | null {
  if (all.includes('unknown')) return null;
  const found = all.flatMap((each) => (typeof each === 'string' ? [] : [each]));
  const [first, ...more] = found;
  if (!first) return null;
  const hull = more.reduce(span, first);
  return all.includes('none') ? { lo: 0, hi: hull.hi } : hull;
}

const anything: Ends = { lo: -Infinity, hi: Infinity };

function valuesOf(rig: PlainRig): Record<string, Ends> {
  const { tow, vehicle, axles } = rig;
  return {
    'vehicle.curb': vehicle.curb,
    'trailer.unloaded': tow.unloaded,
    'trailer.loaded': tow.loaded,
    'tongue.loaded': tow.tongue,
    'tongue.share': tow.share,
    'payload.available': vehicle.payload,
    'payload.used': rig.payloadUsed,
    'vehicle.gross': rig.vehicleGross,
    'combined.gross': rig.combined,
    'axle.front': axles.front,
    'axle.rear': axles.rear,
    'axle.trailer': axles.trailer,
    'bars.moment': axles.moment,
  };
}

/** May this vehicle tow this trailer, and which limit runs out first: reckoned a second time. */
export function plainTowFit(c: PlainCase): PlainAnswer {
  const f = reader(c);
  const rigs = worldsOf(f).map((world) => plainLimits(c, world));
  const [one] = rigs;
  if (!one) throw new Error('There is no world in which this case could be.');

  const limits: PlainAnswer['limits'] = {};
  for (const id of Object.keys(one.limits)) {
    const all = rigs.flatMap((rig) => rig.limits[id] ?? []);
    const counting = all.some(({ asked }) => asked) ? all.filter(({ asked }) => asked) : all;
    limits[id] = {
      state: together(all.map(stateOf)),
      used: rounded(counting.map(({ used }) => used).reduce(span)),
      limit: rounded(counting.map(({ limit }) => limit).reduce(span)),
    };
  }
  const found = rigs.map(plainFindings);
  const findings: PlainAnswer['findings'] = {};
  for (const id of Object.keys(found[0] ?? {})) {
    findings[id] = together(found.flatMap((each) => each[id] ?? []));
  }
  const largestTrailer = largestOf(rigs.map(plainLargest));

  const values: PlainAnswer['values'] = {};
  const ofWorlds = rigs.map(valuesOf);
  for (const [id, value] of Object.entries(valuesOf(one))) {
    values[id] = rounded(ofWorlds.map((each) => each[id] ?? value).reduce(span));
  }
  // A specialist with a 6,000 lb rating looks at 5,000 to 5,500 lb (common practice), and at
  // nothing heavier than what fits; where the vehicle itself is not made for it, at nothing.
  const rating = f.number('vehicle.maxTrailerWeight');
  for (const [id, share] of [
    ['shopping.from', 5 / 6],
    ['shopping.to', 11 / 12],
  ] as const) {
    const window = times(rating, at(share));
    const capped = largestTrailer ? smaller(window, largestTrailer) : window;
    values[id] = rounded(findings['tow-package'] === 'stop' ? anything : capped);
  }

  return {
    outcome: outcomeOf([
      ...Object.values(limits).map(({ state }) => state),
      ...Object.values(findings),
    ]),
    binding: bindingOf(rigs),
    limits,
    findings,
    values,
    largestTrailer,
  };
}
