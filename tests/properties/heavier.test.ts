import { topics } from '@tarebook/rules';
import {
  type Answer,
  answerTraced,
  type FactsGiven,
  InputError,
  type Topic,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { filedByTopic, randomFrom, seed, someOf } from '../untold/rigs';

const asOf = '2026-11-01';
const filed = filedByTopic();

/** Lists of what rides along; each row has a weight. */
const lists = ['trailer.cargo', 'trailer.options', 'load.cargo', 'load.occupants'] as const;

/**
 * Sums without a tongue: a pound more is a pound more, whatever else is told. A tongue, or one axle, may
 * be lifted by what lies behind, so of those only the upper end is held.
 */
const sums = new Set([
  'trailer.loaded',
  'combined.gross',
  'usual.loaded',
  'usual.gross',
  'wanted.weight',
]);

type Ends = { readonly lo: number; readonly hi: number };

/** The load figures of an answer: what stands on each limit, and what worked figures name. */
function loadsOf(topic: Topic, { limits, values }: Answer): ReadonlyMap<string, Ends> {
  const used = limits.flatMap(({ id, used: ends, state }) => {
    const name = topic.limits[id]?.used;
    return state === 'not-asked' || ends.unit !== 'lb' || name === undefined
      ? []
      : [[name, ends] as const];
  });
  const worked = [...sums].flatMap((name) => {
    const ends = values[name];
    return ends ? [[name, ends] as const] : [];
  });
  return new Map<string, Ends>([...used, ...worked]);
}

function judged(topic: Topic, facts: FactsGiven): Answer | undefined {
  try {
    return answerTraced(topic, { facts, asOf });
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

/** One more thing in a list, its place not told; nothing where the list itself was not told and silence counts somebody. */
function withOneMore(
  facts: FactsGiven,
  list: (typeof lists)[number],
  weight: number,
): FactsGiven | undefined {
  const told = facts[list];
  if (typeof told === 'string') return undefined;
  const rows = Array.isArray(told) ? told : undefined;
  if (!rows && list === 'load.occupants') return undefined;
  return {
    ...facts,
    [list]: [...(rows ?? []), { weight: { lo: weight, hi: weight, unit: 'lb' } }],
  };
}

const loaded: readonly Topic[] = Object.values(topics).filter(({ facts }) =>
  lists.some((list) => Object.hasOwn(facts, list)),
);

test('several topics reckon with what is loaded', () => {
  expect(loaded.length).toBeGreaterThan(5);
});

describe.each(loaded.map((topic) => [topic.id, topic] as const))('%s', (_, topic) => {
  test('a thing more makes no load figure lighter', () => {
    const random = randomFrom(seed + topic.id.length);
    const lighter: string[] = [];
    let tried = 0;
    for (const { name, facts: whole } of filed.get(topic.id) ?? []) {
      for (const count of [2, 5, 10, 40]) {
        const facts = someOf(whole, count, random);
        const before = judged(topic, facts);
        if (!before) continue;
        const list = lists[Math.floor(random() * lists.length)] ?? 'trailer.cargo';
        if (!Object.hasOwn(topic.facts, list)) continue;
        const more = withOneMore(facts, list, 5 + Math.round(random() * 200));
        const after = more && judged(topic, more);
        if (!after) continue;
        tried += 1;
        const then = loadsOf(topic, after);
        for (const [figure, { lo, hi }] of loadsOf(topic, before)) {
          const now = then.get(figure);
          if (!now) continue;
          const isLighter = now.hi < hi - 1e-6 || (sums.has(figure) && now.lo < lo - 1e-6);
          if (isLighter) {
            lighter.push(`${name}: ${list} more, ${figure} ${lo}–${hi} → ${now.lo}–${now.hi}`);
          }
        }
      }
    }
    expect(lighter).toEqual([]);
    expect(tried).toBeGreaterThan(5);
  });
});

test('towels without a place do not make the example of a usual trailer lighter', () => {
  const { 'tow-fit': towFit } = topics;
  if (!towFit) throw new Error('tow-fit');
  const bare: FactsGiven = { 'trailer.dryWeight': { lo: 2900, hi: 2900, unit: 'lb' } };
  const towels = withOneMore(bare, 'trailer.cargo', 5);
  const usual = (facts: FactsGiven) => judged(towFit, facts)?.values['usual.loaded'];
  // 2,900 × 1.12, common practice; the handbook’s own check value is 5,000 → 5,500 to 5,700.
  expect(usual(bare)).toMatchObject({ lo: 3248, hi: 3248 });
  expect(usual(towels ?? {})).toMatchObject({ lo: 3248, hi: 3248 });
});
