import { createHash } from 'node:crypto';
import {
  answerNow,
  InputError,
  spread,
  spreadInBlocks,
  type Topic,
  topics,
  towFit,
} from '@tarebook/rules';
import type { FactsGiven } from '@tarebook/rules/engine';
import { defineTopic } from '@tarebook/rules/engine';
import { readQuantity, wasMisread } from '@tarebook/rules/quantity';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inBase, parametersOn } from '../../packages/rules/src/engine/answer/parameters';
import { readFacts } from '../../packages/rules/src/engine/check/facts';
import { formula, shelf } from '../../packages/rules/src/engine/define/small-topic.fixture';
import { restsOnKnown } from '../../packages/rules/src/engine/formula/reckon';
import { run as reckonRun } from '../../packages/rules/src/engine/formula/run';
import { rankNames } from '../../packages/rules/src/engine/spread/decide';
import { type Prepared, prepare } from '../../packages/rules/src/engine/spread/prepare';
import type { Lanes } from '../../packages/rules/src/engine/value/lanes';
import type { Input, NumberInput, Value } from '../../packages/rules/src/engine/value/values';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';
import { openCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';
const tow: Topic = towFit;

/** Every range of a case held where lane `lane` drew it. */
function inputsAt(topic: Topic, facts: FactsGiven, { setting }: Prepared, lane: number) {
  const at = (key: string, input: NumberInput): NumberInput => {
    const drawn = setting.drawn.get(key)?.lo[lane];
    return drawn === undefined ? input : { ...input, lo: drawn, hi: drawn };
  };
  return new Map(
    [...readFacts(topic, facts).inputs].map(([fact, input]): [string, Input] => {
      if (input.kind === 'number') return [fact, at(fact, input)];
      if (input.kind === 'among') return [fact, input];
      const rows = input.rows.map((row, i) =>
        Object.fromEntries(
          Object.entries(row).map(([column, cell]) => [column, at(`${fact}.${column}#${i}`, cell)]),
        ),
      );
      return [fact, { ...input, rows }];
    }),
  );
}

type Parted = { readonly told: readonly string[]; readonly bitwise: number };

/**
 * Where lanes and reckoning part, over all formulas of a topic. What rests on nothing unknown must be
 * the same to the bit; else a lane may be the wider of the two, never the narrower.
 */
function partings(topic: Topic, facts: FactsGiven, lanes: number): Parted {
  const prepared = prepare(topic, { facts, asOf }, lanes, 7);
  const { compiled, run } = prepared.setting;
  // Whether something may fit, and whether it is told only from one side, is settled by the whole
  // case, and not by one draw of it.
  const byWhole = [
    ...['shopping.', 'load.isLeft', 'combined.isLeft'],
    ...['quote.mayBeUnder', 'gas.isOpen', 'pressure.labelMayBeOver', 'stops.mayBe'],
  ];
  const asked = [...compiled.formulas.keys()].filter(
    (name) => !byWhole.some((start) => name.startsWith(start)),
  );
  const made = asked.map((name) => [name, prepared.named(name)] as const);
  prepared.next(lanes);
  const parameters = inBase(parametersOn(topic, asOf), asOf);
  const told: string[] = [];
  let bitwise = 0;
  for (let lane = 0; lane < lanes; lane += 1) {
    const point = reckonRun(compiled, inputsAt(topic, facts, prepared, lane), parameters);
    for (const [name, found] of made) {
      const known = restsOnKnown(run.value(name), run.isOpen);
      const mine = inLane(found, lane);
      const its = point.value(name);
      const holds = known ? sameValue(mine, its) : liesAround(mine, its);
      if (!holds) told.push(`${name}: ${JSON.stringify(mine)}, not ${JSON.stringify(its)}`);
      if (known && prepared.draws.length > 0) bitwise += 1;
    }
  }
  return { told, bitwise };
}

type InLane = { lo: number; hi: number } | readonly string[];

function inLane(lanes: Lanes, lane: number): InLane {
  if (lanes.kind === 'numbers') {
    return { lo: lanes.lo[lane] ?? Number.NaN, hi: lanes.hi[lane] ?? Number.NaN };
  }
  if (lanes.kind === 'words') return lanes.options[lane] ?? [];
  return [...(lanes.yes[lane] === 1 ? ['yes'] : []), ...(lanes.no[lane] === 1 ? ['no'] : [])];
}

const optionsOf = (value: Exclude<Value, { kind: 'number' }>): readonly string[] =>
  value.kind === 'among'
    ? value.options
    : [...(value.yes ? ['yes'] : []), ...(value.no ? ['no'] : [])];

/** A rounding apart, a thousandth of what the boundary policy takes for equal. */
const near = (a: number, b: number): boolean =>
  a === b || Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(b));

function sameValue(mine: InLane, its: Value): boolean {
  if (its.kind === 'number') return 'lo' in mine && near(mine.lo, its.lo) && near(mine.hi, its.hi);
  return !('lo' in mine) && mine.join() === optionsOf(its).join();
}

function liesAround(mine: InLane, its: Value): boolean {
  if (its.kind !== 'number') {
    return !('lo' in mine) && optionsOf(its).every((option) => mine.includes(option));
  }
  if (!('lo' in mine)) return false;
  const slack = (end: number) => (Number.isFinite(end) ? 1e-9 * Math.max(1, Math.abs(end)) : 0);
  return mine.lo <= its.lo + slack(its.lo) && mine.hi >= its.hi - slack(its.hi);
}

describe('lanes and reckoning', () => {
  test('agree to a rounding wherever nothing is unknown, else lanes lie around, on random rigs', () => {
    let bitwise = 0;
    fc.assert(
      fc.property(openCase(), (plain) => {
        const parted = partings(tow, givenOf(plain), 6);
        bitwise += parted.bitwise;
        expect(parted.told).toEqual([]);
      }),
      { numRuns: 150, seed },
    );
    expect(bitwise).toBeGreaterThan(10_000);
  });

  const rig: FactsGiven = {
    'vehicle.maxTrailerWeight': '6,500–7,500 lb',
    'vehicle.maxTongueCarried': '600 lb',
    'vehicle.placardPayload': '1,400 ± 50 lb',
    'vehicle.gvwr': '6,900 lb',
    'vehicle.gcwr': '11,000–11,400 lb',
    'vehicle.curbFront': '2,900–3,000 lb',
    'vehicle.curbRear': '2,300–2,400 lb',
    'vehicle.gawrFront': '3,300 lb',
    'vehicle.gawrRear': '3,900 lb',
    'vehicle.wheelbase': '118–119 in',
    'vehicle.overhang': '44 ± 1 in',
    'vehicle.curbWeight': '5,250–5,350 lb',
    'hitch.distribution': 'yes',
    'hitch.restored': '40–60 %',
    'hitch.hardwareWeight': '90 ± 10 lb',
    'trailer.dryWeight': '3,950–4,050 lb',
    'trailer.gvwr': '4,800 lb',
    'trailer.dryTongueWeight': '430 ± 20 lb',
    'trailer.ballToAxle': '14–14.5 ft',
    'trailer.freshWater': '0–20 gal',
    'trailer.freshWaterAhead': '1 ± 0.5 ft',
    'trailer.propane': '30–40 lb',
    'trailer.propaneAhead': '12 ft',
    'trailer.grayWater': '0 gal',
    'trailer.blackWater': '0 gal',
    'trailer.axles': '2',
    'trip.altitude': '2,000–6,000 ft',
    'load.occupants': [{ weight: '300 ± 30 lb', ahead: '40–50 in' }],
    'load.cargo': [
      { weight: '50–150 lb', ahead: '-10 in' },
      { weight: '20 ± 5 lb', ahead: '-30 ± 5 in' },
    ],
    'trailer.cargo': [{ weight: '200–500 lb', ahead: '2 ± 1 ft' }],
    'trailer.options': [{ weight: '80 lb', ahead: '6 ft' }],
  };

  test('agree to the bit on a rig whose every weight and distance is a range', () => {
    expect(partings(tow, rig, 300).told).toEqual([]);
    expect(prepare(tow, { facts: rig, asOf }, 1, 1).draws).toHaveLength(24);
  });

  test('come to the same outcome, draw by draw, as the answer to the case drawn', () => {
    const lanes = 200;
    const prepared = prepare(tow, { facts: rig, asOf }, lanes, 11);
    prepared.next(lanes);
    const seen = new Set<string>();
    for (let lane = 0; lane < lanes; lane += 1) {
      const facts = factsAt(rig, prepared, lane);
      const rank = rankNames[prepared.ranks[lane] ?? 0] ?? 'ok';
      const outcome = tow.outcomes[rank].id;
      seen.add(outcome);
      expect(outcome).toBe(answerNow(towFit, { facts, asOf }).outcome);
    }
    expect(seen.size).toBeGreaterThan(1);
  });

  test('agree on tables and choices, which are reckoned draw by draw', () => {
    const facts: FactsGiven = {
      'shelf.span': '8–45 in',
      'shelf.rating': '90 ± 20 lb',
      'shelf.share': '10–20 %',
      'shelf.kind': 'pine',
      'box.weight': '10–30 lb',
      boxes: [{ weight: '5–20 lb', place: '-4 ± 2 in' }],
    };
    const topic: Topic = defineTopic<Topic>({
      ...shelf,
      formulas: {
        ...shelf.formulas,
        'span.margin': formula('min(span.carries - load.total, 2 * span.carries)'),
        'span.holds': formula('span.carries > load.total', 'yes-no'),
      },
    });
    expect(partings(topic, facts, 400).told).toEqual([]);
  });
});

/** Every plain number of a case made a range about it, where the topic takes that. */
function widened(topic: Topic, facts: FactsGiven): FactsGiven {
  const made: Record<string, FactsGiven[string]> = { ...facts };
  for (const [id, given] of Object.entries(facts)) {
    const read = typeof given === 'string' ? readQuantity(given) : undefined;
    if (!read || wasMisread(read) || !read.unit || read.from !== read.to) continue;
    const [lo, hi] = [read.from * 0.98, read.from * 1.02].toSorted((a, b) => a - b);
    if (lo === undefined || hi === undefined || lo === hi) continue;
    const wide = { ...made, [id]: { lo, hi, unit: read.unit.symbol } };
    if (readFacts(topic, wide).problems.length === 0) Object.assign(made, wide);
  }
  return made;
}

const cases = markdownBelow(casesFolder, refusedFolder)
  .map(({ name, text }) => ({ name, doc: readFiled(text) }))
  .filter(({ doc }) => doc.troubles.length === 0);

test('lanes and reckoning agree on every worked case of every topic, its numbers widened', () => {
  const seen = new Set<string>();
  const parted = cases.flatMap(({ name, doc: { topic, facts } }) => {
    if (!topic) return [];
    seen.add(topic.id);
    const { told } = partings(topic, widened(topic, facts), 3);
    return told.map((each) => `${name}: ${each}`);
  });
  expect(parted).toEqual([]);
  expect(seen.size).toBe(Object.keys(topics).length);
});

/** The case as given, each range replaced by what was drawn, in the unit it is told in. */
function factsAt(facts: FactsGiven, { draws, setting }: Prepared, lane: number): FactsGiven {
  const made: Record<string, FactsGiven[string]> = { ...facts };
  for (const { key, told } of draws) {
    const value = setting.drawn.get(key)?.lo[lane] ?? Number.NaN;
    const base = { in: 1, lb: 1, ft: 12, gal: 231, '1': 1, '': 1 }[told.unit] ?? Number.NaN;
    const cell = { lo: value / base, hi: value / base, unit: told.unit === '' ? '1' : told.unit };
    const rows = made[told.fact];
    if (told.row === undefined || typeof rows !== 'object' || !('map' in rows)) {
      made[told.fact] = cell;
      continue;
    }
    made[told.fact] = rows.map((row, i) =>
      i + 1 === told.row && told.column !== undefined ? { ...row, [told.column]: cell } : row,
    );
  }
  return made;
}

const simple = (trailer: FactsGiven): FactsGiven => ({
  'vehicle.maxTrailerWeight': '9,000 lb',
  'vehicle.maxTongueCarried': '990 lb',
  'vehicle.placardPayload': '3,000 lb',
  'trailer.dryWeight': '6,000 lb',
  'trailer.gvwr': '8,000 lb',
  'trailer.dryTongueWeight': '700 lb',
  ...trailer,
});

describe('the boundary', () => {
  test('is rounded to a millionth in every draw: a billionth over the rating is within it', () => {
    const facts = simple({
      'trailer.dryTongueWeight': { lo: 899.999_999_9, hi: 900.000_000_1, unit: 'lb' },
    });
    expect(spread(towFit, { facts, asOf }, { draws: 4000, seed: 3 }).limits.tongue?.chance).toBe(0);
  });

  test('parts the draws of a range a few millionths wide as answers part them', () => {
    const facts = simple({
      'trailer.dryTongueWeight': { lo: 899.999_996, hi: 900.000_004, unit: 'lb' },
    });
    const prepared = prepare(tow, { facts, asOf }, 200, 5);
    prepared.next(200);
    let over = 0;
    for (let lane = 0; lane < 200; lane += 1) {
      const state = answerNow(towFit, { facts: factsAt(facts, prepared, lane), asOf }).limits.find(
        ({ id }) => id === 'tongue',
      )?.state;
      const stops = prepared.verdicts.get('limit.tongue.stop')?.certain[lane] === 1;
      expect(stops).toBe(state === 'stop');
      over += Number(stops);
    }
    expect(over).toBeGreaterThan(50);
    expect(over).toBeLessThan(150);
  });
});

describe('what is unknown', () => {
  test('a limit that rests on it has no chance, and the draws cannot say', () => {
    const facts = simple({
      'vehicle.placardPayload': 'unknown',
      'trailer.dryWeight': '7,000–8,500 lb',
    });
    const found = spread(towFit, { facts, asOf }, { draws: 5000, seed: 1 });
    expect(found.limits.payload).toBeNull();
    expect(found.values['payload.available']).toBeNull();
    expect(found.limits['trailer-gross']?.chance).toBeCloseTo(1 / 3, 1);
    const { 'cannot-say': unsure, 'does-not-fit': not } = found.outcomes;
    expect((unsure?.chance ?? 0) + (not?.chance ?? 0)).toBeCloseTo(1, 12);
    expect(not?.chance).toBe(found.limits['trailer-gross']?.chance);
  });

  test('a limit nobody asked is not there at all', () => {
    const found = spread(towFit, { facts: simple({}), asOf }, { draws: 10, seed: 1 });
    expect(Object.keys(found.limits)).not.toContain('receiver');
  });

  test('never turns into a number, on random rigs', () => {
    fc.assert(
      fc.property(openCase(), (plain) => {
        const facts = givenOf(plain);
        const answer = answerNow(towFit, { facts, asOf });
        const found = spread(towFit, { facts, asOf }, { draws: 40, seed: 2 });
        for (const { id, state, used, limit } of answer.limits) {
          const open = ![used.lo, used.hi, limit.lo, limit.hi].every(Number.isFinite);
          if (state === 'not-asked') expect(found.limits[id]).toBeUndefined();
          else if (open) expect(found.limits[id]).toBeNull();
          // A chance agrees with what is certain over the whole ranges.
          const chance = found.limits[id]?.chance;
          if (chance === undefined) continue;
          if (state === 'ok' || state === 'care') expect(chance).toBe(0);
          if (state === 'stop') expect(chance).toBe(1);
        }
      }),
      { numRuns: 200, seed },
    );
  });
});

describe('draws', () => {
  const facts = simple({
    'trailer.dryWeight': '7,000–8,500 lb',
    'trailer.dryTongueWeight': '900 ± 30 lb',
    'trailer.freshWater': '0–20 gal',
  });

  test('are the same to the bit for one seed, on every machine', () => {
    const found = spread(towFit, { facts, asOf }, { draws: 3000, seed: 20_261_101 });
    const digest = createHash('sha256')
      .update(
        JSON.stringify([found.limits, found.outcomes, found.drawn, found.values['trailer.loaded']]),
      )
      .digest('hex');
    expect(digest).toBe('0ade4f5219c2f084eac5a78f0611d5bfad468c4756b4207bb00643a40b7b965b');
  });

  test('hang on the seed, and not on how many are reckoned at once', () => {
    const counts = (width: number, from: number): number[] => {
      const prepared = prepare(tow, { facts, asOf }, width, from);
      const seen: number[] = [];
      for (let done = 0; done < 210; done += width) {
        prepared.next(width);
        seen.push(...(prepared.setting.drawn.get('trailer.dryWeight')?.lo.slice(0, width) ?? []));
      }
      return seen;
    };
    expect(counts(7, 4)).toEqual(counts(210, 4));
    expect(counts(7, 4)).not.toEqual(counts(7, 5));
  });

  test('of a count are whole numbers', () => {
    const prepared = prepare(
      tow,
      { facts: { ...facts, 'trailer.axles': '1–3', 'trailer.gawr': '3,500 lb' }, asOf },
      300,
      1,
    );
    prepared.next(300);
    const seen = new Set(prepared.setting.drawn.get('trailer.axles')?.lo);
    expect([...seen].toSorted()).toEqual([1, 2, 3]);
  });

  test('tell their progress block by block, and can be left off', () => {
    const blocks = spreadInBlocks(towFit, { facts, asOf }, { draws: 5000, seed: 1 });
    const seen = [blocks.next().value, blocks.next().value];
    expect(seen).toEqual([1024, 2048]);
    blocks.return(spread(towFit, { facts, asOf }, { draws: 1, seed: 1 }));
    expect(blocks.next().done).toBe(true);
  });

  test.each([
    [{ draws: 0, seed: 1 }, 'The number of draws is 0; give a whole number from 1 to 10,000,000.'],
    [
      { draws: 2.5, seed: 1 },
      'The number of draws is 2.5; give a whole number from 1 to 10,000,000.',
    ],
    [{ draws: 10, seed: -1 }, 'The seed is -1; give a whole number from 0 to 4,294,967,295.'],
  ])('%o is refused in one sentence', (options, says) => {
    const act = () => spread(towFit, { facts, asOf }, options);
    expect(act).toThrow(InputError);
    expect(act).toThrow(says);
  });

  test('100,000 of tow fit cost little time of the processor', () => {
    const before = process.cpuUsage();
    spread(towFit, { facts, asOf }, { draws: 100_000, seed: 1 });
    const { user, system } = process.cpuUsage(before);
    // A third of a second where nothing else runs; a test runs slower than the built package.
    expect((user + system) / 1e6).toBeLessThan(3);
  });
});
