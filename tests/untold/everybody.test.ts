import { topics } from '@tarebook/rules';
import {
  type Answer,
  answerEverybody,
  answerTraced,
  type Ends,
  type FactsGiven,
  InputError,
  type Topic,
} from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { describe, expect, test } from 'vitest';
import { filedByTopic, randomFrom, seed, someOf } from './rigs';

/**
 * What is said to everybody by branches, each proved by judging the case with what is presumed and
 * what is looked for: the outcome is the judged one, and a figure that is presumed and stated is the
 * one that was judged.
 */
const asOf = '2026-11-01';
const filed = filedByTopic();
const times = Number(process.env.TAREBOOK_RIGS ?? 6);

function judged(topic: Topic, facts: FactsGiven): Answer | undefined {
  try {
    return answerTraced(topic, { facts, asOf });
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

const holesIn = (words: string): readonly string[] =>
  [...words.matchAll(/\{([\w.]+)\}/g)].flatMap(([, name]) => name ?? []);

/** The results that are said to be presumed, or that something presumed follows from. */
function stated(topic: Topic, asking: string, given: FactsGiven): readonly string[] {
  const { given: presumed = {}, givenSays = '' } = topic.everybody?.[asking] ?? {};
  const from = Object.entries(presumed).flatMap(([fact, value]) =>
    Object.hasOwn(given, fact) && typeof value === 'string' && value.startsWith('=')
      ? [value.slice(1).trim()]
      : [],
  );
  return [...new Set([...from, ...holesIn(givenSays)])];
}

const isSame = (a: Ends, b: Ends): boolean => {
  const near = (x: number, y: number) => x === y || Math.abs(x - y) <= 1e-5 * Math.abs(x);
  return near(a.lo, b.lo) && near(a.hi, b.hi);
};

const asked = Object.values<Topic>(topics).flatMap((topic) =>
  Object.keys(topic.everybody ?? {}).map((asking) => [topic.id, asking, topic] as const),
);

let branches = 0;

describe.each(asked)('%s, %s', { timeout: 300_000 }, (id, asking, topic) => {
  test('each branch comes out as judged, with the figures that are stated', () => {
    const random = randomFrom(seed + id.length * 31 + asking.length);
    const own = filed.get(id) ?? [];
    const wrong: string[] = [];
    for (let i = 0; i < times; i += 1) {
      const rig = own[Math.floor(random() * own.length)];
      if (!rig) continue;
      const facts = someOf(rig.facts, [2, 4, 8, 40][i % 4] ?? 2, random);
      const before = judged(topic, facts);
      if (!before || (topic.askings?.[asking] === undefined && asking !== 'any')) continue;
      const told = answerEverybody(topic, { facts, asOf }, asking === 'any' ? undefined : asking);
      for (const { when, given, outcome, says } of told.branches) {
        branches += 1;
        const after = judged(topic, { ...facts, ...given, ...when });
        if (after?.outcome !== outcome) wrong.push(`${rig.name}: ${says} judged ${after?.outcome}`);
        // With what is presumed: a branch tells more, by which other trailers than this one may fit.
        const presumed = judged(topic, { ...facts, ...given });
        for (const name of stated(topic, asking, given)) {
          const [is, was] = [presumed?.values[name], before.values[name]];
          if (!is || !was || typeof is !== 'object' || typeof was !== 'object') continue;
          if (!isSame(was, is)) {
            wrong.push(
              `${rig.name}: ${name} stated ${was.lo}, judged ${is.lo} ${JSON.stringify(facts)}`,
            );
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });
});

test('there were branches to prove', () => {
  expect(branches).toBeGreaterThan(40);
});

/**
 * The trailer by its label: 5,000 − 2,060 = 2,940 lb, and 210 lb packed: 3,150 lb on the road, which is
 * judged with its cargo once. On the rating of 6,000 lb shopping begins at 5/6: 5,000 lb on the road.
 */
test.each([
  ['trip', { 'vehicle.curbWeight': '4,500 lb', 'trip.altitude': '5,000 ft' }, 3150],
  ['brakes', { 'trailer.brakes': 'electric' }, 3150],
  ['how-heavy', { 'vehicle.maxTrailerWeight': '6,000 lb' }, 5000],
] as const)('%s: what rides in the trailer counts once in a branch', (asking, told, loaded) => {
  const label = { 'trailer.gvwr': '5,000 lb', 'trailer.cargoCapacity': '2,060 lb' };
  const facts: FactsGiven = {
    ...(asking === 'how-heavy' ? {} : label),
    ...told,
    'trailer.cargo': [{ label: 'Things', weight: '210 lb' }],
  };
  const { branches: found } = answerEverybody(towFit, { facts, asOf }, asking);
  if (asking !== 'brakes') expect(found.length).toBeGreaterThan(0);
  for (const { when, given } of found) {
    const after = judged(towFit, { ...facts, ...given, ...when });
    expect(after?.values['trailer.loaded']).toMatchObject({ lo: loaded, hi: loaded });
  }
});
