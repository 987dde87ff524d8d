import type { Answer } from '@tarebook/rules';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { openCase, pointOf, randomFrom } from './arbitrary-case';
import { judged } from './compare';
import { closed, type Ends, sameEnds, within } from './ends';
import type { PlainAnswer, State } from './plain-case';
import { plainTowFit } from './plain-tow-fit';

/** What a tighter range, or one point of it, may make of what a wider one said. */
const decides: Readonly<Record<State, readonly State[]>> = {
  'not-asked': ['not-asked'],
  unknown: ['unknown', 'stop', 'if', 'care', 'ok', 'not-asked'],
  if: ['if', 'stop', 'unknown', 'care', 'ok', 'not-asked'],
  stop: ['stop'],
  care: ['care', 'ok', 'not-asked'],
  ok: ['ok', 'not-asked'],
};

/** These are asked once what they compare with, or speak of, is known. */
const askedByKnowing = new Set([
  'gross-over-rating',
  'rating-assumes',
  'altitude-unasked',
  'rear-axle-slack',
  'distribution-allowed',
  'extension-rating',
  'surge-bars',
]);

/** A rating for use with bars, once it is told, leaves it open whether there are any. */
const mayBeRelieved = new Set(['trailer-weight', 'tongue', 'receiver', 'receiver-tongue']);

const ofFront = new Set(['front-axle', 'vehicle-tires-front']);

type Told = { readonly id: string; readonly what: unknown };

/** Where the product claims more than its ranges, reckoned a second time and wider, bear out. */
function againstWider(found: Answer, wide: PlainAnswer, isDualOpen: boolean): Told[] {
  const told: Told[] = [];
  const note = (id: string, holds: boolean, ...what: unknown[]) => {
    if (!holds) told.push({ id, what });
  };
  for (const { id, used, limit, state } of found.limits) {
    const other = wide.limits[id];
    if (!other) throw new Error(id);
    // Two tires behind or four: the stricter margin counts, where each by itself would leave room.
    if (isDualOpen && id === 'vehicle-tires-rear' && state === 'care' && other.state === 'ok')
      continue;
    note(id, decides[other.state].includes(state), state, other.state);
    if (state === 'not-asked') continue;
    note(`${id}, used`, within(used, other.used), used, other.used);
    note(`${id}, limit`, within(limit, other.limit), limit, other.limit);
    const same = sameEnds(used, other.used) && sameEnds(limit, other.limit);
    note(`${id}, the same ranges`, !same || state === other.state, state, other.state);
  }
  for (const { id, level } of found.findings) {
    const other = wide.findings[id];
    note(id, other !== undefined && decides[other].includes(level), level, other);
  }
  const [mine, theirs] = [found.apart.largestTrailer, wide.largestTrailer];
  for (const [id, other] of Object.entries(wide.values)) {
    // The window is capped by the largest trailer, where there is one.
    if (id.startsWith('shopping.') && !mine !== !theirs) continue;
    const value = found.values[id];
    note(id, value !== undefined && within(value, other), value, other);
  }
  if (mine && theirs) note('largest trailer', within(mine, theirs), mine, theirs);
  // What wheelbase and places have in common makes the front axle's range narrower than simple ranges
  // are: it may be sure that some trailer will do where these cannot say. Points hold it to the truth.
  const isSurer = found.limits.some(
    ({ id, state }) =>
      ofFront.has(id) && state !== 'unknown' && wide.limits[id]?.state === 'unknown',
  );
  // From nothing up is said where the ranges leave it open whether any trailer will do.
  if (mine && !theirs && !isSurer) note('largest trailer', mine.lo === 0, mine, theirs);
  return told;
}

/** Where a point that the case allows contradicts what was decided without knowing it. */
function againstPoint(found: Answer, wide: PlainAnswer, point: PlainAnswer): Told[] {
  const told: Told[] = [];
  const note = (id: string, holds: boolean, ...what: unknown[]) => {
    if (!holds) told.push({ id, what });
  };
  const isPoint = (value: Ends) => value.lo === value.hi && closed(value);
  // A rating nobody knows counts as not broken by a heavier tongue; a point may break it.
  const tongueRated = found.limits.some(({ id, limit }) => id === 'tongue' && closed(limit));
  for (const { id, used, limit, state } of found.limits) {
    const there = point.limits[id];
    if (!there || state === 'not-asked') continue;
    const isRelieved = mayBeRelieved.has(id) && state === 'stop' && there.state === 'unknown';
    if (isRelieved) continue;
    note(`${id} at a point`, decides[state].includes(there.state), state, there.state);
    if (there.state === 'not-asked') continue;
    if (isPoint(there.used)) note(`${id}, used`, within(there.used, used), there.used, used);
    if (isPoint(there.limit)) note(`${id}, limit`, within(there.limit, limit), there.limit, limit);
  }
  for (const { id, level } of found.findings) {
    const there = point.findings[id] ?? 'not-asked';
    if (level === 'not-asked' && askedByKnowing.has(id)) continue;
    if (id === 'tongue-estimate' && !tongueRated) continue;
    // As with the limits that it speaks of: a rating with bars counts once it is told.
    if (id === 'only-with-bars' && level === 'ok' && there === 'unknown') continue;
    note(`${id} at a point`, decides[level].includes(there), level, there);
  }
  for (const [id, value] of Object.entries(point.values)) {
    // The window is capped by the largest trailer only where that is known.
    if (id.startsWith('shopping.')) continue;
    const range = found.values[id];
    if (range && isPoint(value)) note(`${id} at a point`, within(value, range), value, range);
  }
  const range = found.apart.largestTrailer;
  const there = point.largestTrailer;
  // The tow package takes the largest trailer away only where that is certain.
  const mayLack = found.findings.some(({ id, level }) => id === 'tow-package' && level !== 'ok');
  if (range && (there || !mayLack)) {
    const holds = there ? within(there, range) : range.lo === 0;
    note('largest trailer at a point', holds, there, range);
  } else if (wide.largestTrailer) {
    note('no trailer will do at a point', there === null, there);
  }
  if (found.outcome === 'fits') note('fits', point.outcome !== 'does-not-fit', point.outcome);
  if (found.outcome === 'does-not-fit') {
    note('does not fit', ['does-not-fit', 'cannot-say'].includes(point.outcome), point.outcome);
  }
  return told;
}

describe('with ranges and unknowns', () => {
  test('on 3,000 rigs every answer is as tight as simple ranges, and no point contradicts it', () => {
    const outcomes = new Map<string, number>();
    fc.assert(
      fc.property(openCase(), fc.nat(), (plain, seed) => {
        const found = judged(plain);
        outcomes.set(found.outcome, (outcomes.get(found.outcome) ?? 0) + 1);
        const wide = plainTowFit(plain);
        const isDualOpen = plain['vehicle.dualRearWheels'] === 'unknown';
        expect(againstWider(found, wide, isDualOpen)).toEqual([]);
        const random = randomFrom(seed);
        for (let i = 0; i < 8; i += 1) {
          const point = pointOf(plain, random);
          expect(againstPoint(found, wide, plainTowFit(point)), JSON.stringify(point)).toEqual([]);
        }
      }),
      { numRuns: 3000 },
    );
    for (const outcome of ['fits', 'fits-with-care', 'fits-if', 'does-not-fit', 'cannot-say']) {
      expect(outcomes.get(outcome) ?? 0, outcome).toBeGreaterThan(20);
    }
  });
});
