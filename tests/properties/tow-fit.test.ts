import { type Answer, answerTraced, towFit } from '@tarebook/rules';
import type { CellGiven, FactGiven, FactsGiven, RowGiven } from '@tarebook/rules/engine';
import { convert, unitOf } from '@tarebook/rules/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exactCase, openCase, pointOf, randomFrom } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';
import type { PlainCase, PlainFact, PlainRow } from '../differential/plain-case';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const settings = { numRuns: 120, seed };
const judge = (facts: FactsGiven): Answer => answerTraced(towFit, { facts, asOf: '2026-11-01' });
const judged = (plain: PlainCase): Answer => judge(givenOf(plain));
const statesOf = ({ limits }: Answer) => new Map(limits.map(({ id, state }) => [id, state]));
const levelsOf = ({ findings }: Answer) => new Map(findings.map(({ id, level }) => [id, level]));

const rank = { 'not-asked': 0, ok: 1, care: 2, if: 3, unknown: 4, stop: 5 } as const;
const verdictRank = {
  fits: 0,
  'fits-with-care': 1,
  'fits-if': 2,
  'cannot-say': 3,
  'does-not-fit': 4,
};
const isVerdict = (outcome: string): outcome is keyof typeof verdictRank =>
  Object.hasOwn(verdictRank, outcome);
const verdict = ({ outcome }: Answer): number => {
  if (!isVerdict(outcome)) throw new Error(`There is no verdict ${outcome}.`);
  return verdictRank[outcome];
};

/** What got better though it may not, in words. */
function betterments(before: Answer, after: Answer, except: readonly string[] = []): string[] {
  const [was, is] = [statesOf(before), statesOf(after)];
  return [...was].flatMap(([id, state]) => {
    const now = is.get(id) ?? 'ok';
    return !except.includes(id) && rank[now] < rank[state] ? [`${id}: ${state}, then ${now}`] : [];
  });
}

const heavier = (fact: PlainFact | undefined, by: number): PlainFact => {
  if (typeof fact === 'number') return fact + by;
  if (typeof fact === 'object') return { lo: fact.lo + by, hi: fact.hi + by };
  return fact ?? by;
};

/** The rows of a list; who rides along, where nobody said, is a driver of 150 lb without a place. */
function rowsIn(plain: PlainCase, list: string): readonly PlainRow[] {
  const rows = plain[list];
  if (Array.isArray(rows)) return rows;
  return list === 'load.occupants' ? [{ weight: 150 }] : [];
}

describe('more weight never betters', () => {
  const extra = fc.integer({ min: 1, max: 1500 });
  // Care for too light a tongue can turn to none as the tongue's share changes, and an estimate's
  // care ends where the limit itself stops: findings of the tongue are no order of weights. The
  // verdict on the limits alone is.

  test('the trailer a pound or a ton heavier empty: no limit gets better', () => {
    fc.assert(
      fc.property(exactCase(), extra, (plain, by) => {
        fc.pre(typeof plain['trailer.dryWeight'] === 'number');
        const after = { ...plain, 'trailer.dryWeight': heavier(plain['trailer.dryWeight'], by) };
        expect(betterments(judged(plain), judged(after))).toEqual([]);
      }),
      settings,
    );
  });

  test.each(['load.occupants', 'load.cargo'])(
    'one row more in %s, between the axles: no limit gets better',
    (list) => {
      fc.assert(
        fc.property(exactCase(), extra, (plain, by) => {
          const after = { ...plain, [list]: [...rowsIn(plain, list), { weight: by, ahead: 30 }] };
          expect(betterments(judged(plain), judged(after))).toEqual([]);
        }),
        settings,
      );
    },
  );

  test('a row that nobody places says of the axles what holds wherever it rides, and betters nothing else', () => {
    // It may lift the front axle or spare the rear one, so a certain stop of either may open.
    const ofAxles = ['front-axle', 'rear-axle', 'vehicle-tires-front', 'vehicle-tires-rear'];
    fc.assert(
      fc.property(
        exactCase(),
        extra,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (plain, by, at) => {
          const before = rowsIn(plain, 'load.cargo');
          const answer = judged({ ...plain, 'load.cargo': [...before, { weight: by }] });
          expect(betterments(judged(plain), answer, ofAxles)).toEqual([]);
          const [wheelbase, overhang] = [plain['vehicle.wheelbase'], plain['vehicle.overhang']];
          if (typeof wheelbase !== 'number' || typeof overhang !== 'number') return;
          const extension = plain['hitch.extension'];
          const back =
            -0.8 * Math.max(0, overhang + (typeof extension === 'number' ? extension : 0));
          const ahead = back + at * (0.65 * wheelbase - back);
          const there = statesOf(
            judged({ ...plain, 'load.cargo': [...before, { weight: by, ahead }] }),
          );
          for (const id of ofAxles) {
            const state = statesOf(answer).get(id);
            if (state === 'ok' || state === 'stop') expect(there.get(id), id).toBe(state);
          }
        },
      ),
      settings,
    );
  });

  test('behind the rear axle it lifts the front one, and betters that alone', () => {
    fc.assert(
      fc.property(exactCase(), extra, (plain, by) => {
        const rows = plain['load.cargo'];
        const before = Array.isArray(rows) ? rows : [];
        const after = { ...plain, 'load.cargo': [...before, { weight: by, ahead: -30 }] };
        const lifted = ['front-axle', 'vehicle-tires-front'];
        expect(betterments(judged(plain), judged(after), lifted)).toEqual([]);
      }),
      settings,
    );
  });

  test('people or luggage on unchanged axles: the verdict itself never gets better', () => {
    fc.assert(
      fc.property(exactCase(), extra, (plain, by) => {
        const before = rowsIn(plain, 'load.occupants');
        const after = { ...plain, 'load.occupants': [...before, { weight: by, ahead: 30 }] };
        expect(verdict(judged(after))).toBeGreaterThanOrEqual(verdict(judged(plain)));
      }),
      settings,
    );
  });
});

test('what is said to be left may be loaded: no weight that the proviso speaks of is exceeded', () => {
  const spokenOf = ['trailer-weight', 'tongue', 'pin', 'payload', 'vehicle-gross', 'combined'];
  let loaded = 0;
  fc.assert(
    fc.property(exactCase(), (plain) => {
      const { 'load.occupants': _, 'trailer.cargo': __, 'trailer.options': ___, ...silent } = plain;
      const before = judged(silent);
      if (levelsOf(before).get('load-untold') !== 'if') return;
      const left = (id: string) => before.values[id]?.lo ?? Number.NaN;
      const onTongue = Math.min(left('tongue.left'), left('trailerWeight.left'));
      if (!Number.isFinite(onTongue) || left('tongue.loaded') < 0) return;
      loaded += 1;
      const people = Math.max(0, left('payload.left') - onTongue - 1e-3);
      const together = left('combined.left');
      const isCapped = silent['vehicle.gcwr'] !== undefined && Number.isFinite(together);
      const most = isCapped ? Math.max(0, together - people) : Number.POSITIVE_INFINITY;
      const packed = Math.max(0, Math.min(left('trailerWeight.left'), most) - 1e-3);
      const after = judged({
        ...silent,
        'trailer.measuredTongueWeight': left('tongue.loaded') + Math.max(0, onTongue - 1e-3),
        'load.occupants': [{ weight: 150 + people }],
        'trailer.cargo': [{ weight: packed }],
      });
      const [was, is] = [statesOf(before), statesOf(after)];
      for (const id of [...spokenOf, 'trailer-gross']) {
        if (is.get(id) === 'stop') expect(was.get(id), id).toBe('stop');
      }
    }),
    { ...settings, numRuns: 300 },
  );
  expect(loaded).toBeGreaterThan(30);
});

describe('whoever asks in metric gets the same answer', () => {
  const metric = { lb: 'kg', in: 'mm', ft: 'm', gal: 'L', 'ft²': 'm²' } as const;
  const isUs = (unit: string): unit is keyof typeof metric => Object.hasOwn(metric, unit);

  const inMetric = (cell: CellGiven): CellGiven => {
    if (typeof cell !== 'object' || !('lo' in cell) || !isUs(cell.unit)) return cell;
    const [from, to] = [unitOf(cell.unit), unitOf(metric[cell.unit])];
    const end = (value: number | null) => {
      // As text, with every digit that it has.
      const digits = convert(value ?? 0, from, to).toFixed(15);
      return digits.includes('.') ? digits.replace(/0+$/, '').replace(/\.$/, '') : digits;
    };
    const { lo, hi } = cell;
    const written = lo === hi ? end(lo) : `${end(lo)} to ${end(hi)}`;
    return `${written} ${metric[cell.unit]}`;
  };
  const row = (cells: RowGiven): RowGiven =>
    Object.fromEntries(Object.entries(cells).map(([id, cell]) => [id, inMetric(cell)]));
  const isRows = (fact: FactGiven): fact is readonly RowGiven[] => Array.isArray(fact);
  const allMetric = (facts: FactsGiven): FactsGiven =>
    Object.fromEntries(
      Object.entries(facts).map(([id, fact]) => [
        id,
        isRows(fact) ? fact.map(row) : inMetric(fact),
      ]),
    );

  test.each([
    ['exact rigs', exactCase()],
    ['rigs with ranges and unknowns', openCase()],
  ])('%s: outcome, every state, what binds, and every number to a millionth', (_, rigs) => {
    fc.assert(
      fc.property(rigs, (plain) => {
        const facts = givenOf(plain);
        const [us, other] = [judge(facts), judge(allMetric(facts))];
        expect(other.outcome).toBe(us.outcome);
        expect(other.binding).toBe(us.binding);
        expect(statesOf(other)).toEqual(statesOf(us));
        expect(levelsOf(other)).toEqual(levelsOf(us));
        for (const [id, ends] of Object.entries(us.values)) {
          const found = other.values[id];
          for (const end of ['lo', 'hi'] as const) {
            if (Number.isFinite(ends[end])) {
              const slack = 2e-6 + Math.abs(ends[end]) * 1e-9;
              expect(Math.abs((found?.[end] ?? Number.NaN) - ends[end])).toBeLessThanOrEqual(slack);
            } else expect(found?.[end]).toBe(ends[end]);
          }
        }
      }),
      settings,
    );
  });
});

test('the order of rows never matters, nor the order in which facts are told', () => {
  fc.assert(
    fc.property(openCase(), fc.integer(), (plain, shuffle) => {
      const random = randomFrom(shuffle);
      const shuffled = <T>(all: readonly T[]): T[] =>
        all
          .map((each) => ({ each, key: random() }))
          .toSorted((a, b) => a.key - b.key)
          .map(({ each }) => each);
      const other: PlainCase = {};
      for (const [id, fact] of shuffled(Object.entries(plain))) {
        other[id] = Array.isArray(fact) ? shuffled(fact) : fact;
      }
      const [a, b] = [judged(plain), judged(other)];
      expect(b.outcome).toBe(a.outcome);
      expect(b.binding).toBe(a.binding);
      expect(statesOf(b)).toEqual(statesOf(a));
      expect(levelsOf(b)).toEqual(levelsOf(a));
    }),
    settings,
  );
});

/** Limits that are asked of some rigs only, such as of those with a pin. */
const lapsing = new Set(
  Object.entries(towFit.limits).flatMap(([id, limit]) => ('askedWhen' in limit ? [id] : [])),
);

describe('a range and its points', () => {
  test('a range contains every answer of its points, and no point undoes a decided verdict', () => {
    const decided = new Map<string, number>();
    fc.assert(
      fc.property(openCase(), fc.integer(), (open, pick) => {
        const whole = judged(open);
        const part = judged(pointOf(open, randomFrom(pick)));
        decided.set(whole.outcome, (decided.get(whole.outcome) ?? 0) + 1);
        for (const [id, ends] of Object.entries(whole.values)) {
          const inner = part.values[id];
          if (!inner) throw new Error(`${id} is missing.`);
          // The window is capped by the largest trailer only where that is known.
          if (id.startsWith('shopping.')) continue;
          // From zero up without an end says that nobody knows it, not that it is above zero.
          if (ends.lo === 0 && ends.hi === Infinity) continue;
          const slack = (end: number) => (Number.isFinite(end) ? 2e-6 + 1e-9 * Math.abs(end) : 0);
          expect(inner.lo, id).toBeGreaterThanOrEqual(ends.lo - slack(ends.lo));
          expect(inner.hi, id).toBeLessThanOrEqual(ends.hi + slack(ends.hi));
        }
        if (whole.outcome === 'does-not-fit') expect(part.outcome).toBe('does-not-fit');
        if (whole.outcome === 'fits') expect(part.outcome).toBe('fits');
        if (whole.outcome === 'fits-with-care') expect(part.outcome).toMatch(/^fits/);
        for (const [id, state] of statesOf(whole)) {
          const now = statesOf(part).get(id);
          // Where it was open whether it is a pin at all, the pin's limit may not be asked in the end.
          const mayLapse = state === 'ok' && lapsing.has(id);
          if (mayLapse) expect(now).toMatch(/^(ok|not-asked)$/);
          else if (state === 'stop' || state === 'not-asked' || state === 'ok') {
            expect(now, id).toBe(state);
          }
          if (state === 'care') expect(now).toMatch(/^(ok|care)$/);
        }
      }),
      { ...settings, numRuns: 200 },
    );
    expect(decided.get('does-not-fit') ?? 0).toBeGreaterThan(20);
    expect((decided.get('fits') ?? 0) + (decided.get('fits-with-care') ?? 0)).toBeGreaterThan(5);
  });

  test('narrowing ranges step by step never undoes a decided verdict or state', () => {
    fc.assert(
      fc.property(openCase(), fc.integer(), (open, pick) => {
        const random = randomFrom(pick);
        const narrow = (fact: PlainFact): PlainFact => {
          if (typeof fact !== 'object') return fact;
          const ends = [random(), random()].toSorted((a, b) => a - b);
          const at = (share = 0) => fact.lo + share * (fact.hi - fact.lo);
          return { lo: at(ends[0]), hi: Math.max(at(ends[0]), at(ends[1])) };
        };
        let now = open;
        let before = judged(now);
        for (let step = 0; step < 3; step += 1) {
          const next: PlainCase = {};
          for (const [id, fact] of Object.entries(now)) {
            next[id] = Array.isArray(fact)
              ? fact.map(({ weight, ahead }) => ({
                  weight: narrow(weight),
                  ...(ahead !== undefined && { ahead: narrow(ahead) }),
                }))
              : narrow(fact);
          }
          const after = judged(next);
          if (before.outcome !== 'cannot-say') {
            expect(verdict(after)).toBeLessThanOrEqual(verdict(before));
            if (before.outcome === 'does-not-fit') expect(after.outcome).toBe('does-not-fit');
          }
          for (const [id, state] of statesOf(before)) {
            if (state === 'ok' || state === 'stop') expect(statesOf(after).get(id)).toBe(state);
          }
          [now, before] = [next, after];
        }
      }),
      settings,
    );
  });
});

describe('an unknown rating never turns into “fits”', () => {
  /** Each limit with the ratings that, mentioned, must be known. */
  const ratings = {
    'trailer-weight': ['vehicle.maxTrailerWeight'],
    tongue: ['vehicle.maxTongueCarried'],
    payload: ['vehicle.placardPayload'],
    'vehicle-gross': ['vehicle.gvwr'],
    'front-axle': ['vehicle.gawrFront'],
    'rear-axle': ['vehicle.gawrRear'],
    combined: ['vehicle.gcwr'],
    receiver: ['hitch.receiverRating', 'hitch.receiverCarried'],
    'receiver-tongue': ['hitch.receiverTongueRating', 'hitch.receiverTongueCarried'],
    'ball-mount': ['hitch.mountRating'],
    ball: ['hitch.ballRating'],
    coupler: ['trailer.couplerRating'],
    'trailer-gross': ['trailer.gvwr'],
    'trailer-axles': ['trailer.gawr'],
    'vehicle-tires-front': ['vehicle.tireCapacityFront'],
    'vehicle-tires-rear': ['vehicle.tireCapacityRear'],
    'trailer-tires': ['trailer.tireCapacity'],
    'frontal-area': ['vehicle.maxFrontalArea'],
  };

  /** By the handbook’s exact reading these are not asked with a pin, whatever of them is told. */
  const ofBalls: ReadonlySet<string> = new Set([
    ...['tongue', 'receiver', 'receiver-tongue', 'ball-mount', 'ball', 'coupler'],
  ]);
  const isLeftOut = (id: string, plain: PlainCase): boolean =>
    ofBalls.has(id) && plain['trailer.coupling'] === 'fifth-wheel';

  test.each(Object.entries(ratings))('%s: unknown is unknown or stop, never ok', (id, facts) => {
    fc.assert(
      fc.property(exactCase(), (plain) => {
        const open: PlainCase = { ...plain };
        for (const fact of facts) open[fact] = 'unknown';
        if (id === 'tongue') delete open['vehicle.maxTongueDistributed'];
        const answer = judged(open);
        if (isLeftOut(id, plain)) {
          expect(statesOf(answer).get(id)).toBe('not-asked');
          return;
        }
        // A tongue that lifts is within any rating, and a stop of its own.
        if (answer.limits.some((each) => each.id === id && each.used.hi <= 0)) return;
        expect(statesOf(answer).get(id)).toMatch(/^(unknown|stop)$/);
        expect(answer.outcome).toMatch(/^(cannot-say|does-not-fit)$/);
      }),
      { ...settings, numRuns: 25 },
    );
  });

  test.each(['trailer-weight', 'tongue', 'trailer-gross'] as const)(
    '%s is always asked: left out, it is unknown too',
    (id) => {
      fc.assert(
        fc.property(exactCase(), (plain) => {
          const silent = { ...plain };
          for (const fact of ratings[id]) delete silent[fact];
          if (id === 'tongue') delete silent['vehicle.maxTongueDistributed'];
          if (id === 'trailer-weight') delete silent['vehicle.maxTrailerCarried'];
          const answer = judged(silent);
          if (isLeftOut(id, plain)) return;
          if (answer.limits.some((each) => each.id === id && each.used.hi <= 0)) return;
          expect(statesOf(answer).get(id)).toMatch(/^(unknown|stop)$/);
        }),
        { ...settings, numRuns: 25 },
      );
    },
  );

  test('nothing told at all cannot be said', () => {
    expect(judge({}).outcome).toBe('cannot-say');
  });
});

describe('weight distribution moves weight and makes none', () => {
  const withBars = (plain: PlainCase, restored: number): PlainCase => ({
    ...plain,
    'hitch.distribution': 'yes',
    'vehicle.distributionAllowed': 'yes',
    'hitch.restored': restored,
    'vehicle.wheelbase': plain['vehicle.wheelbase'] ?? 130,
    'vehicle.overhang': plain['vehicle.overhang'] ?? 50,
    'vehicle.curbFront': plain['vehicle.curbFront'] ?? 2800,
    'vehicle.curbRear': plain['vehicle.curbRear'] ?? 2300,
    'trailer.ballToAxle': plain['trailer.ballToAxle'] ?? 16,
    'trailer.dryWeight': plain['trailer.dryWeight'] ?? 4000,
    'trailer.measuredTongueWeight': plain['trailer.measuredTongueWeight'] ?? 500,
    'load.occupants': [{ weight: 340, ahead: 60 }],
    'load.cargo': [{ weight: 120, ahead: -10 }],
  });
  const share = fc.double({ min: 0, max: 1, noNaN: true });

  test('for every share restored the axles together carry the combined weight', () => {
    fc.assert(
      fc.property(exactCase(), share, (plain, restored) => {
        const { values } = judged(withBars(plain, restored));
        const of = (id: string) => values[id]?.lo ?? Number.NaN;
        const axles = of('axle.front') + of('axle.rear') + of('axle.trailer');
        expect(Math.abs(axles - of('combined.gross'))).toBeLessThan(1e-5);
      }),
      settings,
    );
  });

  test('front and rear axle are the vehicle’s gross weight less M/L', () => {
    fc.assert(
      fc.property(exactCase(), share, (plain, restored) => {
        const rig = withBars(plain, restored);
        const { values } = judged(rig);
        const of = (id: string) => values[id]?.lo ?? Number.NaN;
        const far = Number(rig['trailer.ballToAxle']);
        const lifted = of('bars.moment') / far;
        const sum = of('axle.front') + of('axle.rear');
        expect(Math.abs(sum - (of('vehicle.gross') - lifted))).toBeLessThan(1e-5);
      }),
      settings,
    );
  });

  test('the front axle gets back that share of what the tongue took, and no less', () => {
    fc.assert(
      fc.property(exactCase(), share, (plain, restored) => {
        const front = (r: number) =>
          judged(withBars(plain, r)).values['axle.front']?.lo ?? Number.NaN;
        const [none, some, all] = [front(0), front(restored), front(1)];
        expect(Math.abs(some - (none + restored * (all - none)))).toBeLessThan(1e-4);
      }),
      { ...settings, numRuns: 60 },
    );
  });

  test('bars raise no rating: payload and vehicle gross stand as without them', () => {
    fc.assert(
      fc.property(exactCase(), share, (plain, restored) => {
        const on = withBars(plain, restored);
        const off: PlainCase = { ...on, 'hitch.distribution': 'no' };
        const [a, b] = [judged(on), judged(off)];
        for (const id of ['payload', 'vehicle-gross', 'combined']) {
          expect(statesOf(a).get(id)).toBe(statesOf(b).get(id));
        }
      }),
      { ...settings, numRuns: 60 },
    );
  });
});
