import { answerNow, towFit } from '@tarebook/rules';
import { type FactsGiven, levels, type Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import wabt from 'wabt';
import { askEngine, type Found, roomFor } from '../../packages/sweep/src/kernel/found';
import type { Step } from '../../packages/sweep/src/kernel/graph';
import { machine } from '../../packages/sweep/src/kernel/in-memory';
import { inputsOf } from '../../packages/sweep/src/kernel/inputs';
import { pairing } from '../../packages/sweep/src/kernel/pairs';
import { type Program, programOf } from '../../packages/sweep/src/kernel/program';
import { towSides as sides } from '../../packages/sweep/src/kernel/sides';
import { tiling } from '../../packages/sweep/src/kernel/tiles';
import { exactCase, latticeCase, openCase, randomFrom } from '../differential/arbitrary-case';
import { onEdges } from '../differential/edges';
import { givenOf } from '../differential/given';
import type { PlainCase } from '../differential/plain-case';

/*
 * Kernels against the explained answer: the verdict’s word, the binding limit and what is left on it.
 * `TAREBOOK_KERNEL_RIGS=100000 npx vitest run … tests/properties/kernel.test.ts` tries as many rigs; in
 * parts with `TAREBOOK_SEED=1`, `2` …, each a number of its own.
 */
const rigs = Number(process.env.TAREBOOK_KERNEL_RIGS ?? 600);
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';
const topic: Topic = towFit;
const program = programOf(topic, sides);
const limits = Object.keys(topic.limits);
/** Rigs told alike, so that one kernel serves them all: so many vehicles by so many trailers. */
const across = rigs < 10_000 ? 5 : 20;

/** The same rig with other numbers, told in the same way; ratings as often at the very edge. */
function varied(plain: PlainCase, random: () => number, isExact: boolean): PlainCase {
  const share = () => 0.5 + random();
  const moved = Object.entries(plain).map(([id, value]) => {
    const isSide = id.startsWith('vehicle.') || id.startsWith('trailer.');
    if (!isSide || Array.isArray(value) || id === 'trailer.axles') return [id, value];
    if (typeof value === 'number') return [id, value <= 0 ? value : value * share()];
    if (typeof value === 'string' || value.lo <= 0) return [id, value];
    const by = share();
    return [id, { lo: value.lo * by, hi: value.hi * by }];
  });
  const made: PlainCase = Object.fromEntries(moved);
  return isExact && random() < 0.5 ? onEdges(made, random) : made;
}

const sideOf = (facts: FactsGiven, prefix: string): FactsGiven =>
  Object.fromEntries(
    Object.entries(facts).filter(([id, given]) => id.startsWith(prefix) && !Array.isArray(given)),
  );

type Tally = {
  compared: number;
  asked: number;
  readonly levels: Map<string, number>;
};
const tally = (): Tally => ({ compared: 0, asked: 0, levels: new Map() });

/** Where kernel and answer differ on one pair, in words. */
function difference(
  wanted: ReturnType<typeof answerNow>,
  found: Found,
  at: number,
  withRoom: boolean,
): string[] {
  const level = levels[found.levels[at] ?? -1];
  const outcome = level && topic.outcomes[level].id;
  const told: string[] = [];
  if (outcome !== wanted.outcome) told.push(`${outcome}, and not ${wanted.outcome}`);
  if (!withRoom) return told;
  const binding = limits[found.bindings[at] ?? -1] ?? null;
  if (binding !== wanted.binding) told.push(`${binding} binds, and not ${wanted.binding}`);
  const left = wanted.limits.find(({ id }) => id === wanted.binding)?.headroom;
  if (left && (left.lo !== found.leftLo[at] || left.hi !== found.leftHi[at])) {
    told.push(`${found.leftLo[at]}–${found.leftHi[at]} is left, and not ${left.lo}–${left.hi}`);
  }
  return told;
}

const { parseWat } = await wabt();
const inMemory = machine((text) => {
  const module = parseWat('pairs.wat', text, { simd: true });
  const { buffer } = module.toBinary({});
  module.destroy();
  return buffer;
});
/** So few pairs are plain: every program is put into WebAssembly at once. */
const noPairs = 0;

/**
 * Row by row as the page asks, and some rows with all columns as a sweep does, by plain loops and in
 * WebAssembly: each pair in its place.
 */
function byBoth(facts: FactsGiven, all: readonly FactsGiven[], by: Program, withRoom: boolean) {
  const asked = { topic, sides, asOf, program: by, withRoom };
  const { places, over } = pairing(asked);
  const inputs = all.map((each) => inputsOf(topic, each));
  const judge = over(places('rows', inputs), places('columns', inputs))(inputsOf(topic, facts));
  const rows = all.map((_, row) => {
    const found = roomFor(across);
    judge(row, found);
    return found;
  });
  const whole = roomFor(across * across);
  tiling(asked, inputsOf(topic, facts), inputs)(inputs)(whole);
  const assembled = roomFor(across * across);
  tiling(asked, inputsOf(topic, facts), inputs, inMemory, noPairs)(inputs)(assembled);
  return (row: number, column: number) =>
    [
      { found: rows[row] ?? whole, at: column },
      { found: whole, at: row * across + column },
      { found: assembled, at: row * across + column },
    ] as const;
}

/** All pairs of some vehicles and trailers told alike, against the answer. */
function differences(
  plain: PlainCase,
  random: () => number,
  isExact: boolean,
  by: Program,
  seen: Tally,
) {
  const all = Array.from({ length: across }, () => givenOf(varied(plain, random, isExact)));
  const facts = givenOf(plain);
  const told: string[] = [];
  const answers = new Map<number, ReturnType<typeof answerNow>>();
  for (const withRoom of [false, true]) {
    const foundOf = byBoth(facts, all, by, withRoom);
    all.forEach((vehicle, row) => {
      all.forEach((trailer, column) => {
        const pair = { ...facts, ...sideOf(vehicle, 'vehicle.'), ...sideOf(trailer, 'trailer.') };
        for (const { found, at } of foundOf(row, column)) {
          seen.compared += 1;
          const level = found.levels[at] ?? askEngine;
          if (level === askEngine) {
            seen.asked += 1;
            continue;
          }
          const name = levels[level] ?? '';
          seen.levels.set(name, (seen.levels.get(name) ?? 0) + 1);
          const wanted =
            answers.get(row * across + column) ?? answerNow(topic, { facts: pair, asOf });
          answers.set(row * across + column, wanted);
          told.push(
            ...difference(wanted, found, at, withRoom).map(
              (says) => `${says}: ${JSON.stringify(pair)}`,
            ),
          );
        }
      });
    });
  }
  return told;
}

const kinds = [
  ['exact rigs', exactCase, true],
  ['rigs at the limits', latticeCase, true],
  ['rigs with ranges and unknowns', openCase, false],
] as const;

/** Everything told, and by its tow rating alone as it is made: a tenth of that is kept free. */
const towing = (dryWeight: number, more: PlainCase = {}): PlainCase => ({
  'vehicle.maxTrailerWeight': 5000,
  'vehicle.maxTongueCarried': 900,
  'vehicle.placardPayload': 2000,
  'vehicle.sevenWay': 'yes',
  'vehicle.brakeController': 'yes',
  'hitch.distribution': 'no',
  'trailer.dryWeight': dryWeight,
  'trailer.gvwr': 5000,
  'trailer.dryTongueWeight': 520,
  'trailer.brakes': 'electric',
  'trailer.cargo': [],
  'trailer.options': [],
  'load.occupants': [{ weight: 180 }],
  ...more,
});

/** One rig that comes to each level, on the edges of it, so that no seed leaves one out. */
const made: readonly PlainCase[] = [
  towing(4000),
  towing(4500),
  towing(4500.5),
  towing(5000),
  towing(5000 + 1e-7),
  towing(5000.5),
  towing(4000, { 'vehicle.placardPayload': 'unknown' }),
];

/** Every rig as it is: nothing is varied by a half. */
const asItIs = (): number => 0.5;

const families = Math.max(2, Math.ceil(rigs / (kinds.length * across ** 2)));

describe('a kernel says what the explained answer says', () => {
  test.each(kinds)('%s', { timeout: 60_000 + rigs * 60 }, (_, cases, isExact) => {
    const seen = tally();
    fc.assert(
      fc.property(cases(), fc.nat(), (plain, from) => {
        expect(differences(plain, randomFrom(from), isExact, program, seen)).toEqual([]);
      }),
      { numRuns: families, seed },
    );
    // What is mostly left to the engine would be agreed with by anything.
    expect(seen.asked / seen.compared).toBeLessThan(isExact ? 0.1 : 0.6);
    for (const level of ['unknown', 'stop']) {
      expect(seen.levels.get(level) ?? 0, level).toBeGreaterThan(0);
    }
  });

  test('rigs made for each level, on its edges', () => {
    const seen = tally();
    for (const plain of made) {
      expect(differences(plain, asItIs, true, program, seen)).toEqual([]);
    }
    expect(seen.asked).toBe(0);
    expect([...seen.levels.keys()].toSorted()).toEqual(['care', 'ok', 'stop', 'unknown']);
  });
});

describe('a kernel that is wrong is caught', () => {
  const without = (op: Step['op'], instead: (step: Step) => Partial<Step>): Program => ({
    ...program,
    steps: program.steps.map((step) => (step.op === op ? { ...step, ...instead(step) } : step)),
  });
  test.each<readonly [string, Program]>([
    ['over where it is at the limit', without('less', () => ({ op: 'not-above' }))],
    [
      'nothing is rounded',
      without('round', ({ args }) => ({ op: 'max', args: [args[0] ?? 0, args[0] ?? 0] })),
    ],
    ['what is added is taken for the greater', without('add', () => ({ op: 'max' }))],
    ['one of two is asked where any is', without('or', () => ({ op: 'and' }))],
  ])('%s', (_, wrong) => {
    const random = fc.sample(fc.tuple(latticeCase(), fc.nat()), { numRuns: 6, seed });
    const found = [
      ...made.flatMap((plain) => differences(plain, asItIs, true, wrong, tally())),
      ...random.flatMap(([plain, from]) =>
        differences(plain, randomFrom(from), true, wrong, tally()),
      ),
    ];
    expect(found.length).toBeGreaterThan(0);
  });
});
