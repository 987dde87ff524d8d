import { towFit } from '@tarebook/rules';
import { type FactsGiven, InputError, levels, type Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askEngine, roomFor } from '../../packages/sweep/src/kernel/found';
import { inputsOf } from '../../packages/sweep/src/kernel/inputs';
import { pairing } from '../../packages/sweep/src/kernel/pairs';
import { type Program, programOf } from '../../packages/sweep/src/kernel/program';
import { towSides as sides } from '../../packages/sweep/src/kernel/sides';
import { exactCase, latticeCase, openCase } from '../differential/arbitrary-case';
import { givenOf } from '../differential/given';
import type { PlainCase } from '../differential/plain-case';
import { filedByTopic, randomFrom, seed, someOf, toldVaguely } from '../untold/rigs';

/*
 * The law of the untold in kernels, without asking the explained answer: a certain stop is at the best
 * unknown once something is no longer known, or is told more widely, or one thing more is told
 * vaguely; what is told more widely is decided no better nor worse; a missing rating never fits.
 * `TAREBOOK_KERNEL_UNTOLD=3000 npx vitest run … tests/properties/kernel-untold.test.ts` tries as many rigs.
 */
const rigs = Number(process.env.TAREBOOK_KERNEL_UNTOLD ?? 24);
const asOf = '2026-11-01';
const topic: Topic = towFit;
const program = programOf(topic, sides);
const [ok, unknown, stop] = (['ok', 'unknown', 'stop'] as const).map((each) =>
  levels.indexOf(each),
);

type Told = {
  readonly how: 'as it is' | 'unknown' | 'silent' | 'wider' | 'more' | 'no rating';
  readonly says: string;
  readonly facts: FactsGiven;
};

const isReadable = ({ facts }: Told): boolean => {
  try {
    inputsOf(topic, facts);
    return true;
  } catch (problem) {
    if (problem instanceof InputError) return false;
    throw problem;
  }
};

/** Ratings that every rig of its kind has; whichever of them is told, none is known. */
const ratings: Readonly<Record<string, readonly string[]>> = {
  'tow rating': ['vehicle.maxTrailerWeight', 'vehicle.maxTrailerCarried', 'vehicle.maxFifthWheel'],
  payload: ['vehicle.placardPayload', 'vehicle.gvwr', 'vehicle.curbWeight'],
  'trailer’s own': ['trailer.gvwr'],
};

/**
 * What the handbook’s exact reading has another way for once it is not known: the other curb weights, dry
 * weight and options for the label, the dry tongue and a tenth for moments, the usual place for a told
 * one, and for permissions, parts and brakes a proviso. A stop that stands without the fact must stand
 * with it unknown; one that rests on it goes with it.
 */
const anotherWay = [
  ...['vehicle.curbWeight', 'vehicle.curbFront', 'vehicle.curbRear', 'vehicle.engine'],
  ...['trailer.cargoCapacity', 'trailer.dryWeight', 'trailer.measuredTongueWeight'],
  ...['trailer.ballToAxle', 'trailer.propaneAhead', 'trailer.freshWaterAhead'],
  ...['trailer.grayWaterAhead', 'trailer.blackWaterAhead', 'trip.altitude'],
  ...['vehicle.towPackage', 'vehicle.brakeController', 'vehicle.sevenWay', 'trailer.brakes'],
  ...['vehicle.distributionAllowed', 'vehicle.distributionRequiredAbove'],
  ...['hitch.ballSize', 'trailer.couplerSize'],
];

/** Facts with ends that can be moved apart, in whatever way they are told. */
function wider(facts: FactsGiven, id: string, random: () => number): FactsGiven | undefined {
  const declared = topic.facts[id];
  const told = inputsOf(topic, facts).get(id);
  if (declared?.kind !== 'quantity' || told?.kind !== 'number' || told.status !== 'known') return;
  const given = facts[id];
  if (typeof given !== 'object' || Array.isArray(given) || !('lo' in given)) return undefined;
  const { lo, hi, unit } = given;
  // At nothing at all it may be another way of reckoning, and not the same one told more widely.
  if (lo === null || hi === null || lo <= 0) return undefined;
  return { ...facts, [id]: { lo: lo * (1 - random() * 0.3), hi: hi * (1 + random() * 0.3), unit } };
}

/** The rig as it is told, and told otherwise in ways that may only make it less certain. */
function toldOtherwise(facts: FactsGiven, random: () => number): readonly Told[] {
  const single = Object.keys(facts).filter((id) => !Array.isArray(facts[id]));
  const less = single.map((id): Told => {
    return { how: 'unknown', says: `${id} unknown`, facts: { ...facts, [id]: 'unknown' } };
  });
  const silent = anotherWay.flatMap((id): Told[] => {
    const { [id]: told, ...rest } = facts;
    return told === undefined ? [] : [{ how: 'silent', says: id, facts: rest }];
  });
  const wide = single.flatMap((id): Told[] => {
    const found = wider(facts, id, random);
    return found ? [{ how: 'wider', says: `${id} wider`, facts: found }] : [];
  });
  const more = Array.from({ length: 6 }, () => toldVaguely(topic, facts, random)).flatMap(
    (each): Told[] => {
      // Whoever tells fuel tells that the vehicle burns it: another vehicle than was judged.
      if (!each || each.fact === 'trip.fuel') return [];
      return [{ how: 'more', says: `${each.fact} told`, facts: each.facts }];
    },
  );
  const none = Object.entries(ratings).map(([name, ids]): Told => {
    const unrated = Object.fromEntries(ids.map((id) => [id, 'unknown']));
    return { how: 'no rating', says: `no ${name}`, facts: { ...facts, ...unrated } };
  });
  const as: Told = { how: 'as it is', says: '', facts };
  return [as, ...silent, ...less, ...wide, ...more, ...none].filter(isReadable);
}

/** What neither vehicle nor trailer tells, as a text: what tells the same is one case. */
const caseIn = (facts: FactsGiven): string =>
  JSON.stringify(
    Object.entries(facts).filter(
      ([id, given]) => Array.isArray(given) || !/^(vehicle|trailer)\./.test(id),
    ),
  );

/** What a kernel says of each, as a place among the levels; 255 where it leaves it to the engine. */
function judged(by: Program, all: readonly Told[]): readonly number[] {
  const { places, over } = pairing({ topic, sides, asOf, program: by, withRoom: false });
  const inputs = all.map(({ facts }) => inputsOf(topic, facts));
  const set = over(places('rows', inputs), places('columns', inputs));
  const levelOf = new Map<number, number>();
  const cases = new Map<string, number[]>();
  all.forEach(({ facts }, at) => {
    const key = caseIn(facts);
    cases.set(key, [...(cases.get(key) ?? []), at]);
  });
  for (const members of cases.values()) {
    const judge = set(inputs[members[0] ?? 0] ?? new Map());
    for (const at of members) {
      const found = roomFor(all.length);
      judge(at, found);
      levelOf.set(at, found.levels[at] ?? askEngine);
    }
  }
  return all.map((_, at) => levelOf.get(at) ?? askEngine);
}

type Tally = { stops: number; held: number; unrated: number };

/** Where a kernel makes more of less. */
function breaches(by: Program, facts: FactsGiven, from: number, seen: Tally): string[] {
  const all = toldOtherwise(facts, randomFrom(from));
  const [as, ...others] = all;
  if (as?.how !== 'as it is') return [];
  const [was = askEngine, ...found] = judged(by, all);
  const restsOn = new Set(
    others.flatMap(({ how, says }, at) => {
      return how === 'silent' && found[at] !== stop ? [`${says} unknown`] : [];
    }),
  );
  return others.flatMap(({ how, says, facts: told }, at) => {
    const is = found[at] ?? askEngine;
    if (is === askEngine || how === 'silent' || restsOn.has(says)) return [];
    const breach = [`${says}: ${levels[was]} → ${levels[is]}: ${JSON.stringify(told)}`];
    if (how === 'no rating') {
      seen.unrated += 1;
      return is === stop || is === unknown ? [] : breach;
    }
    if (was === askEngine) return [];
    if (was === stop) seen.stops += 1;
    if (was === stop && is !== stop && is !== unknown) return breach;
    if (how !== 'wider') return [];
    seen.held += 1;
    return (is === stop || is === ok) && was !== is ? breach : [];
  });
}

/** One rig that is too heavy however its other facts are told, and one that keeps every rating. */
const made: readonly PlainCase[] = [9000, 3000].map((dryWeight) => ({
  'vehicle.maxTrailerWeight': 5000,
  'vehicle.maxTongueCarried': 900,
  'vehicle.placardPayload': 2000,
  'vehicle.gvwr': 7000,
  'vehicle.sevenWay': 'yes',
  'vehicle.brakeController': 'yes',
  'hitch.distribution': 'no',
  'trailer.dryWeight': dryWeight,
  'trailer.gvwr': 4800,
  'trailer.dryTongueWeight': 400,
  'trailer.brakes': 'electric',
  'trailer.cargo': [],
  'trailer.options': [],
  'load.occupants': [{ weight: 180 }],
}));

const kinds: readonly (readonly [string, () => fc.Arbitrary<PlainCase>])[] = [
  ['exact rigs', exactCase],
  ['rigs at the limits', latticeCase],
  ['rigs with ranges and unknowns', openCase],
];
const runs = Math.max(4, Math.ceil(rigs / kinds.length));

describe('a kernel makes nothing better of what is not known', () => {
  test.each(kinds)('%s', { timeout: 60_000 + rigs * 2_000 }, (_, cases) => {
    const seen: Tally = { stops: 0, held: 0, unrated: 0 };
    for (const plain of made) expect(breaches(program, givenOf(plain), seed, seen)).toEqual([]);
    fc.assert(
      fc.property(cases(), fc.nat(), (plain, from) => {
        expect(breaches(program, givenOf(plain), from, seen)).toEqual([]);
      }),
      { numRuns: runs, seed },
    );
    expect(seen.stops).toBeGreaterThan(10);
    expect(seen.held).toBeGreaterThan(5);
    expect(seen.unrated).toBeGreaterThan(5);
  });

  test('filed rigs of which little is told', { timeout: 60_000 + rigs * 2_000 }, () => {
    const random = randomFrom(seed + 31);
    const seen: Tally = { stops: 0, held: 0, unrated: 0 };
    const filed = filedByTopic().get(topic.id) ?? [];
    const found = Array.from({ length: runs }).flatMap((_, at) => {
      const { facts = {} } = filed[Math.floor(random() * filed.length)] ?? {};
      return breaches(program, someOf(facts, [5, 10, 20][at % 3] ?? 5, random), at, seen);
    });
    expect(found).toEqual([]);
    expect(seen.stops).toBeGreaterThan(10);
    expect(seen.unrated).toBeGreaterThan(5);
  });
});

describe('a kernel that takes the unknown for better than it is, is caught', () => {
  const read = (as: (name: string) => string): Program => ({
    ...program,
    steps: program.steps.map((step) =>
      step.op === 'input'
        ? { ...step, name: as(step.name), least: -Infinity, most: Infinity, mayBeNone: true }
        : step,
    ),
  });
  test('for the most that it may be', () => {
    const wrong = read((name) => name.replace(/ lo$/, ' hi'));
    const seen: Tally = { stops: 0, held: 0, unrated: 0 };
    const found = fc
      .sample(fc.tuple(exactCase(), fc.nat()), { numRuns: 6, seed })
      .flatMap(([plain, from]) => breaches(wrong, givenOf(plain), from, seen));
    expect(found.length).toBeGreaterThan(0);
  });
});
