import { at, closed, minus, round, rounded, times } from './ends';
import type { PlainAnswer, PlainCase, State } from './plain-case';
import { plainFindings } from './plain-findings';
import { plainLargest } from './plain-largest';
import { type PlainLimit, plainLimits, stateOf } from './plain-limits';

/** How much of the room above what stands there empty is used, at the most. */
function roomUsed({ used, limit, empty }: PlainLimit): number {
  const room = minus(limit, empty);
  return round(room.lo) <= 0 ? Infinity : round(minus(used, empty).hi / room.lo);
}

/** Which limit runs out first: of those that can be reckoned, the fullest; the first of equals. */
function bindingOf(limits: Record<string, PlainLimit>): string | null {
  let binding: string | null = null;
  let fullest = -Infinity;
  for (const [id, each] of Object.entries(limits)) {
    if (!each.asked || !each.rated) continue;
    if (!closed(each.used) || !closed(each.limit) || !closed(each.empty)) continue;
    const full = roomUsed(each);
    if (binding !== null && full <= fullest) continue;
    binding = id;
    fullest = full;
  }
  return binding;
}

/** One certain stop decides; then one open question; then one care. */
function outcomeOf(states: State[]): PlainAnswer['outcome'] {
  if (states.includes('stop')) return 'does-not-fit';
  if (states.includes('unknown')) return 'cannot-say';
  return states.includes('care') ? 'fits-with-care' : 'fits';
}

/** May this vehicle tow this trailer, and which limit runs out first: reckoned a second time. */
export function plainTowFit(c: PlainCase): PlainAnswer {
  const all = plainLimits(c);
  const { load } = all;
  const limits: PlainAnswer['limits'] = {};
  for (const [id, each] of Object.entries(all.limits)) {
    limits[id] = { state: stateOf(each), used: rounded(each.used), limit: rounded(each.limit) };
  }
  const findings = plainFindings(all);
  // A specialist with a 6,000 lb rating looks at 5,000 to 5,500 lb (common practice).
  const rating = load.f.number('vehicle.maxTrailerWeight');
  const values = {
    'vehicle.curb': load.curb,
    'trailer.loaded': load.trailer,
    'tongue.loaded': load.tongue,
    'tongue.share': load.share,
    'payload.available': load.payload,
    'payload.used': load.payloadUsed,
    'vehicle.gross': load.vehicleGross,
    'combined.gross': load.combined,
    'axle.front': load.front,
    'axle.rear': load.rear,
    'axle.trailer': load.axleTrailer,
    'bars.moment': load.moment,
    'shopping.from': times(rating, at(5 / 6)),
    'shopping.to': times(rating, at(11 / 12)),
  };
  return {
    outcome: outcomeOf([
      ...Object.values(limits).map(({ state }) => state),
      ...Object.values(findings),
    ]),
    binding: bindingOf(all.limits),
    limits,
    findings,
    values: Object.fromEntries(
      Object.entries(values).map(([id, value]) => [id, rounded(value)] as const),
    ),
    largestTrailer: plainLargest(all),
  };
}
