import { publish } from '@tarebook/rules';
import type { Topic } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import fc from 'fast-check';
import { Engine } from 'json-rules-engine';
import { describe, expect, test } from 'vitest';
import { exactCase, latticeCase } from './arbitrary-case';
import type { State } from './plain-case';
import { type LimitNames, type StockFacts, stockCase } from './stock-values';

const many = Math.max(10_000, Number(process.env.TAREBOOK_RANDOM_CASES ?? 0));
/** Asked for more cases, allowed more time. */
const timeout = 120_000 + many * 60;

type Comparison = { fact: string; operator: string; value: string | { fact: string } };
type Nested = { all: Nested[] } | { any: Nested[] } | Comparison;
type Published = {
  conditions: {
    name: string;
    conditions: { all: Nested[] } | { any: Nested[] };
    event: { type: string; params: { of: string } };
  }[];
  parameters: Record<string, { values: { from: string; value: number }[] }>;
};

// Through text, as a program that knows nothing of this library reads the published file.
const { conditions: rules, parameters }: Published = JSON.parse(JSON.stringify(publish(towFit)));

const comparisons = (of: Nested): Comparison[] => {
  if ('all' in of) return of.all.flatMap(comparisons);
  return 'any' in of ? of.any.flatMap(comparisons) : [of];
};

/** Something finite for every name, so that a rule about what nobody asked can run at all. */
function placeholders(): StockFacts {
  const facts: StockFacts = {};
  for (const { fact, value } of rules.flatMap((rule) => comparisons(rule.conditions))) {
    facts[fact] ??= typeof value === 'string' ? 'no' : 0;
    if (typeof value !== 'string') facts[value.fact] ??= 0;
  }
  for (const [id, { values }] of Object.entries(parameters)) {
    const latest = values.at(-1);
    if (id in facts && latest) facts[id] = latest.value;
  }
  return facts;
}

const topic: Topic = towFit;

/** The names each limit's conditions compare, read from the published rules themselves. */
function limitNames(): Map<string, LimitNames> {
  const names = new Map<string, LimitNames>();
  for (const id of Object.keys(topic.limits)) {
    const [stop, care] = ['stop', 'care'].map((level) => {
      const rule = rules.find(({ name }) => name === `limit.${id}.${level}`);
      return rule && comparisons(rule.conditions)[0];
    });
    if (!stop || typeof stop.value === 'string') throw new Error(`No rule stops ${id}.`);
    const careAt = care && typeof care.value !== 'string' ? { careAt: care.value.fact } : {};
    names.set(id, { used: stop.fact, limit: stop.value.fact, ...careAt });
  }
  return names;
}

/** Exactly told, but for what some know only that there is: a weight, a size, who rides along. */
const plainNumbers = fc
  .tuple(fc.oneof(exactCase(), latticeCase()), fc.integer({ min: 0, max: 9 }))
  .map(([plain, some]) => {
    const { 'load.occupants': _, ...alone } = plain;
    if (some === 0) return { ...plain, 'vehicle.distributionRequiredAbove': 'unknown' };
    if (some === 1) return { ...plain, 'hitch.ballSize': 'unknown', 'trailer.couplerSize': 2 };
    return some === 2 ? alone : plain;
  });

/** These rigs have no camper in the bed: that is tried in tests/properties/one-rig.test.ts and by a case. */
const untried = new Set(['finding.camper-weight']);

/** Asked only where they hold, so that they never come out as held and clean. */
const onlyAsked = new Set(
  Object.entries(topic.findings)
    .filter(([, { askedWhen, unknown }]) =>
      [unknown ?? []].flat().some(({ when }) => when === askedWhen),
    )
    .map(([id]) => `finding.${id}`),
);

const firm = new Set(rules.map(({ name }) => name).filter((name) => name.endsWith('.firm')));

/** A stop that would be none by another use that nobody ruled out is unknown. */
function levelOf(id: string, holding: ReadonlySet<string>): State {
  const isFirm = !firm.has(`${id}.firm`) || holding.has(`${id}.firm`);
  if (holding.has(`${id}.stop`)) return isFirm ? 'stop' : 'unknown';
  const levels: readonly State[] = ['unknown', 'if', 'care'];
  return levels.find((level) => holding.has(`${id}.${level}`)) ?? 'ok';
}

describe('the published rules run in json-rules-engine as it comes', () => {
  test(`and on ${many} rigs of plain numbers say what the second derivation says`, {
    timeout,
  }, async () => {
    const engine = new Engine();
    for (const rule of rules) engine.addRule(rule);
    const [others, names] = [placeholders(), limitNames()];
    const seen = new Map<string, number>();
    await fc.assert(
      fc.asyncProperty(plainNumbers, async (plain) => {
        const { facts, states } = stockCase(plain, names);
        const { results } = await engine.run({ ...others, ...facts });
        const holding = new Set(results.map(({ name }) => name));
        const found: Record<string, State> = {};
        for (const id of Object.keys(states)) {
          found[id] = levelOf(id, holding);
          seen.set(`${id} ${found[id]}`, (seen.get(`${id} ${found[id]}`) ?? 0) + 1);
        }
        expect(found).toEqual(states);
      }),
      { numRuns: many },
    );
    // Every rule held in some rigs and did not hold in others.
    for (const { event } of rules.filter(({ event }) => !untried.has(event.params.of))) {
      const clean = onlyAsked.has(event.params.of) ? [] : ['ok'];
      for (const state of [event.type === 'firm' ? 'unknown' : event.type, ...clean]) {
        const times = seen.get(`${event.params.of} ${state}`) ?? 0;
        expect(times, `${event.params.of} ${state}`).toBeGreaterThan(0);
      }
    }
  });
});
