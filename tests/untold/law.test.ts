import { readFileSync } from 'node:fs';
import { topics } from '@tarebook/rules';
import {
  type Answer,
  answerTraced,
  type FactsGiven,
  InputError,
  type Topic,
  topicFromPublished,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import {
  type Filed,
  filedByTopic,
  randomFrom,
  seed,
  someOf,
  toldExactly,
  toldVaguely,
} from './rigs';

const asOf = '2026-11-01';
/** How many times as many rigs as usual: `TAREBOOK_LAW_RIGS=20 npx vitest run … tests/untold/law.test.ts`. */
const fold = Number(process.env.TAREBOOK_LAW_RIGS ?? 1);
const filed = filedByTopic();
const all: readonly Topic[] = Object.values(topics);

/** The answer, or nothing where the facts contradict one another and are refused. */
function judged(topic: Topic, facts: FactsGiven): Answer | undefined {
  try {
    return answerTraced(topic, { facts, asOf });
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/**
 * Care though a weight is not known: the handbook’s exact reading has it so where the maker may
 * require weight distribution; and that a tongue weight is an estimate, which it is no more once
 * it was weighed or places can be reckoned with.
 */
const unlikeOthers: Readonly<Record<string, readonly string[]>> = {
  'distribution-required': ['vehicle.distributionRequiredAbove'],
  'tongue-estimate': ['trailer.ballToAxle', 'trailer.measuredTongueWeight'],
};

/** How many facts people tell: two as often as twenty. */
const counts = [2, 5, 10, 20] as const;

function* rigsOf(
  topic: Topic,
  times: number,
): Generator<readonly [Filed, FactsGiven, () => number]> {
  const random = randomFrom(seed + topic.id.length * 7919);
  for (const each of filed.get(topic.id) ?? []) {
    for (let i = 0; i < times; i += 1) {
      yield [each, someOf(each.facts, counts[i % counts.length] ?? 2, random), random];
    }
  }
}

const isStop = (topic: Topic, { outcome }: Answer): boolean => outcome === topic.outcomes.stop.id;
/** Every finding and limit with its level. */
const levelsOf = (answer: Answer): ReadonlyMap<string, string> =>
  new Map([
    ...answer.findings.map(({ id, level }) => [`finding.${id}`, level] as const),
    ...answer.limits.map(({ id, state }) => [`limit.${id}`, state] as const),
  ]);

/** Whoever tells of fuel tells that the vehicle burns it: another one than was judged. */
const burnsFuel = ['solo.fuelEconomy', 'trip.fuel', 'vehicle.fuelTank', 'vehicle.drive'] as const;

/**
 * What tells that another rig is meant than was judged (a vehicle that burns fuel, a smaller breaker than
 * its outlet has, a cylinder of another size than its pounds have) or where it stands; one rating in
 * whose place the handbook’s exact reading has another; and what a shop quoted, in the place of the
 * book’s estimate.
 */
const anotherRig: ReadonlySet<string> = new Set([
  ...[...burnsFuel, 'vehicle.engine'],
  ...['supply.breaker', 'place.latitude', 'cylinder.length', 'cylinder.diameter'],
  ...['vehicle.maxTongueDistributed', 'shop.quote'],
]);

/**
 * By the handbook a tongue that was weighed takes the place of what was reckoned or estimated. One that
 * lifts frees what carries it of weight, and must itself be found to lift.
 */
function isWeighedTongue(fact: string, after: Answer): boolean {
  if (fact !== 'trailer.measuredTongueWeight') return false;
  const lifts = levelsOf(after).get('finding.tongue-negative') === 'stop';
  const tongue = after.values['tongue.loaded'];
  return lifts || (tongue !== undefined && (tongue.lo ?? -1) >= 0);
}

/**
 * What stands in for something untold with the answer’s own word for it: until that fact is told, its
 * assumption is listed, and a stop rests on it. One that is not listed excuses nothing.
 */
const takenOpenly: Readonly<Record<string, string | readonly string[]>> = {
  'addon.ahead': 'assumed.place',
  'alarm.gasReplaceBy': 'assumed.gasMade',
  'alarm.monoxideReplaceBy': 'assumed.monoxideMade',
  'system.volts': 'assumed.system',
  'tight.rear': ['assumed.asDriven', 'assumed.barsLeave'],
  'towed.manner': ['assumed.bar', 'assumed.carried'],
  'tire.readCold': 'pressure.takenAsCold',
  'trailer.brakes': 'brakes.areAssumed',
  'trailer.dragArea': 'assumed.drag',
  'trailer.dryTongueWeight': 'trailer.isUntold',
  'trailer.propaneAhead': 'assumed.propanePlace',
  'water.onArrival': 'assumed.noneThere',
  'wire.rating': 'assumed.wireCarries',
  'wire.resistance': 'assumed.wireResists',
};

/** Whether one answer lists what is assumed when the named formula holds, and another no longer does. */
function isWithdrawn(topic: Topic, when: string, before: Answer, after: Answer) {
  const assumption = topic.assumptions.find((each) => each.when === when);
  if (!assumption) return false;
  const shape = assumption.says
    .split(/\{[^}]*\}/)
    .map((part) => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    .join('.*');
  const lists = ({ assumed }: Answer) =>
    assumed.some(({ says }) => new RegExp(`^${shape}$`).test(says));
  return lists(before) && !lists(after);
}

/**
 * Stops that one thing more, told to the figure, turns into something clean: what was not told had been
 * taken for something. What a fact is taken for openly is told with the answer, and may be told otherwise.
 */
function lifted(topic: Topic, times: number): readonly string[] {
  const found: string[] = [];
  for (const [{ name, facts: whole }, facts, random] of rigsOf(topic, times)) {
    const before = judged(topic, facts);
    if (!before) continue;
    const stops = [...levelsOf(before)].flatMap(([of, level]) => (level === 'stop' ? [of] : []));
    for (let i = 0; i < (stops.length === 0 ? 0 : 8); i += 1) {
      const more = toldExactly(topic, facts, whole, random);
      if (!more || topic.facts[more.fact]?.silent || anotherRig.has(more.fact)) continue;
      const after = judged(topic, more.facts);
      if (!after) continue;
      const openly = [takenOpenly[more.fact] ?? []].flat();
      if (openly.some((when) => isWithdrawn(topic, when, before, after))) continue;
      if (isWeighedTongue(more.fact, after)) continue;
      const now = levelsOf(after);
      for (const of of stops) {
        const level = now.get(of) ?? '';
        if (!clean.has(level)) continue;
        found.push(
          `${name}: ${of} ← ${more.fact} ${JSON.stringify(more.facts[more.fact])}: ${level}, of ${JSON.stringify(facts)}`,
        );
      }
    }
  }
  return found;
}

const clean: ReadonlySet<string> = new Set(['ok', 'care', 'if']);

const isOpen = (topic: Topic, { outcome }: Answer): boolean =>
  outcome === topic.outcomes.unknown.id;

describe.each(all.map((topic) => [topic.id, topic] as const))(
  '%s',
  { timeout: 900_000 },
  (_, topic) => {
    test('told nothing, it cannot say', () => {
      expect(judged(topic, {})?.outcome).toBe(topic.outcomes.unknown.id);
    });

    test('telling one thing more, however vaguely, never betters a stop', () => {
      const bettered: string[] = [];
      let tried = 0;
      for (const [{ name }, facts, random] of rigsOf(topic, 8 * fold)) {
        const before = judged(topic, facts);
        if (!before || !isStop(topic, before)) continue;
        for (let i = 0; i < 6; i += 1) {
          const more = toldVaguely(topic, facts, random);
          const after = more && judged(topic, more.facts);
          if (!after) continue;
          tried += 1;
          if (isStop(topic, after) || isOpen(topic, after)) continue;
          if (burnsFuel.some((fact) => fact === more.fact)) continue;
          const told = JSON.stringify(more.facts[more.fact]);
          bettered.push(
            `${name}: ${more.fact} ${told} turns ${before.sentence} → ${after.sentence}`,
          );
        }
      }
      expect(bettered).toEqual([]);
      expect(tried).toBeGreaterThan(10);
    });

    // What a catalogue is asked with is one order or another, not one thing more.
    if (topic.catalogues === undefined) {
      test('nor does telling it to the figure better a stop that rests on what was told', () => {
        expect(lifted(topic, 4 * fold)).toEqual([]);
      });
    }

    test('what is said for certain stays so when what was unknown is told', () => {
      const wrong: string[] = [];
      for (const [{ name, facts: whole }, facts, random] of rigsOf(topic, 4 * fold)) {
        const ids = Object.keys(facts);
        const hidden = ids[Math.floor(random() * ids.length)];
        if (hidden === undefined || Array.isArray(whole[hidden])) continue;
        const open = judged(topic, { ...facts, [hidden]: 'unknown' });
        const told = judged(topic, facts);
        if (!open || !told) continue;
        // A figure that makes the tickets contradict one another takes back what they had proved.
        if (told.findings.some(({ id, level }) => id.startsWith('ticket-') && level === 'stop'))
          continue;
        for (const finding of open.findings) {
          // That something was not said is a proviso or not known, and goes once it is said.
          const isSure =
            /^(ok|care|stop)\b/.test(finding.code) && finding.code.startsWith(`${finding.level}.`);
          const then = told.findings.find(({ id }) => id === finding.id)?.level;
          if (!isSure || then === finding.level) continue;
          if (unlikeOthers[finding.id]?.includes(hidden)) continue;
          wrong.push(`${name}: ${finding.id} ${finding.code} without ${hidden}, with it ${then}`);
        }
      }
      expect(wrong).toEqual([]);
    });
  },
);

/** What the test above looks for is found in a rule set that had it, whichever figures are drawn. */
test('a rule set that took the sidewall’s pressure for the label’s is seen', () => {
  const kept = new URL('../../packages/rules/published/tires/4.0.2.json', import.meta.url);
  const before = topicFromPublished(JSON.parse(readFileSync(kept, 'utf8')));
  const facts = { 'tire.pressure': '50 psi', 'tire.maxPressure': '80 psi' } satisfies FactsGiven;
  const softness = (topic: Topic | undefined, label: FactsGiven) => {
    const answer = topic && judged(topic, { ...facts, ...label });
    return answer && levelsOf(answer).get('finding.under-inflated');
  };
  const labels: readonly FactsGiven[] = [
    {},
    { 'tire.labelPressure': '50 psi' },
    { 'tire.labelPressure': '80 psi' },
  ];
  expect(labels.map((label) => softness(before, label))).toEqual(['stop', 'ok', 'stop']);
  expect(labels.map((label) => softness(topics.tires, label))).toEqual(['unknown', 'ok', 'stop']);
});

/** Limits that two topics hold against the same two values. */
const shared = all.flatMap((a, i) =>
  all.slice(i + 1).flatMap((b) =>
    Object.entries(a.limits).flatMap(([id, limit]) => {
      const other = b.limits[id];
      const isSame = other && other.used === limit.used && other.limit === limit.limit;
      return isSame ? [{ a, b, id }] : [];
    }),
  ),
);

const statesOf = (answer: Answer | undefined): ReadonlyMap<string, string> =>
  new Map(answer?.limits.map(({ id, state }) => [id, state]));

test('no two topics contradict each other on the same limit', () => {
  const rigs = new Map(all.map((topic) => [topic.id, [...rigsOf(topic, 2 * fold)]]));
  // Two topics share several limits, and a topic shares some with several others.
  const judgedOnce = new WeakMap<FactsGiven, Map<Topic, ReadonlyMap<string, string>>>();
  const statesIn = (topic: Topic, facts: FactsGiven): ReadonlyMap<string, string> => {
    const known = judgedOnce.get(facts) ?? new Map<Topic, ReadonlyMap<string, string>>();
    judgedOnce.set(facts, known);
    const limits = known.get(topic) ?? statesOf(judged(topic, facts));
    known.set(topic, limits);
    return limits;
  };
  const apart: string[] = [];
  let compared = 0;
  for (const { a, b, id } of shared) {
    for (const topic of [a, b]) {
      for (const [{ name }, facts] of rigs.get(topic.id) ?? []) {
        const areBoth = ([fact]: readonly [string, unknown]) =>
          Object.hasOwn(a.facts, fact) && Object.hasOwn(b.facts, fact);
        if (!Object.entries(facts).every(areBoth)) continue;
        const [in1, in2] = [statesIn(a, facts).get(id), statesIn(b, facts).get(id)];
        if (in1 === undefined || in2 === undefined) continue;
        compared += 1;
        const isSilent = in1 === 'not-asked' || in2 === 'not-asked';
        // One topic may know more, such as the ratings of a floor plan; none says no to the other’s yes.
        const isApart =
          new Set([in1, in2]).has('stop') && in1 !== in2 && in1 !== 'unknown' && in2 !== 'unknown';
        if (!isSilent && isApart) apart.push(`${name}: ${id} ${a.id} ${in1}, ${b.id} ${in2}`);
      }
    }
  }
  expect(apart).toEqual([]);
  expect(compared).toBeGreaterThan(20);
}, 900_000);
