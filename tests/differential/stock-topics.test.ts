import { answerNow, namedValues, publish, topics } from '@tarebook/rules';
import type { FactsGiven, State, Topic } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { Engine, type RuleProperties } from 'json-rules-engine';
import { expect, test } from 'vitest';
import { anyFacts } from '../properties/any-facts';

// json-rules-engine as it comes, https://github.com/cachecontrol/json-rules-engine, is the outside
// check: the published JSON with the values that go with it must say there what our answer says.
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const all = Number(process.env.TAREBOOK_RANDOM_CASES ?? 1_000);
const each = Math.ceil(all / Object.keys(topics).length);
/** A rig with a catalogue takes seconds: every build that may be ordered is looked at. */
const rigsOf = ({ catalogues = {} }: Topic): number =>
  Object.keys(catalogues).length > 0 ? Math.ceil(each / 15) : each;
const asOf = '2026-11-01';

type Published = { conditions: RuleProperties[]; missing: RuleProperties[] };

// Through text, as a program that knows nothing of this library reads the published file.
const published = (topic: Topic): Published => JSON.parse(JSON.stringify(publish(topic)));

/** Told in exact numbers in most cases, so that something is decided. */
const exactly = (facts: FactsGiven): FactsGiven =>
  Object.fromEntries(
    Object.entries(facts).map(([id, given]) => {
      if (typeof given !== 'object' || !('lo' in given)) return [id, given];
      return [id, { ...given, hi: given.lo }];
    }),
  );

/** Which model is meant is told: else a hundred are each reckoned, which is looked at elsewhere. */
function oneModel({ facts, catalogues = {} }: Topic, given: FactsGiven): FactsGiven {
  const ids = Object.values(catalogues).flatMap(({ model, year }) => [model, year]);
  const told = ids.flatMap((id) => {
    const fact = facts[id];
    const [first = ''] = fact?.kind === 'choice' ? fact.options : [];
    return given[id] === undefined || given[id] === 'unknown' ? [[id, first] as const] : [];
  });
  return { ...given, ...Object.fromEntries(told) };
}

const anyRig = (topic: Topic) =>
  fc
    .tuple(anyFacts(topic), fc.boolean())
    .map(([facts, exact]) => oneModel(topic, exact ? exactly(facts) : facts));

type Events = { has: (of: string, type: string) => boolean };

/** The level of a limit or finding as the package's README says to read the events. */
function levelOf(of: string, { has }: Events, names: ReadonlySet<string>): State | 'missing' {
  if (has(of, 'missing')) return 'missing';
  const isFirm = !names.has(`${of}.firm`) || has(of, 'firm');
  if (has(of, 'stop')) return isFirm ? 'stop' : 'unknown';
  const levels: readonly State[] = ['unknown', 'if', 'care'];
  return levels.find((level) => has(of, level)) ?? 'ok';
}

function statesOf(topic: Topic, facts: FactsGiven): ReadonlyMap<string, State> {
  const { limits, findings } = answerNow(topic, { facts, asOf });
  return new Map([
    ...limits.map(({ id, state }): [string, State] => [`limit.${id}`, state]),
    ...findings.map(({ id, level }): [string, State] => [`finding.${id}`, level]),
  ]);
}

test.each(Object.values(topics).map((topic) => [topic.id, topic] as const))(
  `the published JSON of %s says in json-rules-engine what we answer, or that names are missing`,
  async (_, topic) => {
    const { conditions, missing } = published(topic);
    const engine = new Engine();
    for (const rule of [...conditions, ...missing]) engine.addRule(rule);
    const names = new Set(conditions.map(({ name }) => name ?? ''));
    const seen = { settled: 0, missing: 0 };
    await fc.assert(
      fc.asyncProperty(anyRig(topic), async (facts) => {
        const given = namedValues(topic, { facts, asOf });
        const { events, failureResults, results } = await engine.run(given.facts);
        expect(results.length + failureResults.length).toBe(conditions.length + missing.length);
        const found = new Set(events.map(({ type, params }) => `${params?.of}.${type}`));
        const has = (of: string, type: string) => found.has(`${of}.${type}`);
        for (const [of, state] of statesOf(topic, facts)) {
          if (given.notAsked.includes(of)) {
            expect(state, of).toBe('not-asked');
            continue;
          }
          const level = levelOf(of, { has }, names);
          if (level !== 'missing') {
            expect(level, of).toBe(state);
            seen.settled += 1;
          } else {
            expect(given.missing, of).not.toEqual([]);
            seen.missing += 1;
          }
        }
      }),
      { numRuns: rigsOf(topic), seed },
    );
    expect(seen.settled).toBeGreaterThan(0);
    expect(seen.missing).toBeGreaterThan(0);
  },
  3_600_000,
);

test.each(Object.values(topics).map((topic) => [topic.id, topic] as const))(
  'where nothing at all is told, %s says so of whatever it cannot decide',
  async (_, topic) => {
    const { conditions, missing } = published(topic);
    const engine = new Engine([...conditions, ...missing], { allowUndefinedFacts: true });
    // A program that hands over nothing, and lets the engine take what is not there for undefined.
    const { events } = await engine.run({});
    const told = new Set(events.map(({ type, params }) => `${params?.of}.${type}`));
    for (const { event } of missing) expect(told).toContain(`${event.params?.of}.missing`);
    expect(events.filter(({ type }) => type === 'stop')).toEqual([]);
  },
);
