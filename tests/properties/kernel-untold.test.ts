import { towFit } from '@tarebook/rules';
import { type FactsGiven, InputError, levels, type Topic } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { inputsOf } from '../../packages/sweep/src/kernel/inputs';
import { roomFor } from '../../packages/sweep/src/kernel/pair-loop';
import { pairing } from '../../packages/sweep/src/kernel/pairs';
import { programOf } from '../../packages/sweep/src/kernel/program';
import { towSides as sides } from '../../packages/sweep/src/kernel/sides';
import { filedByTopic, randomFrom, seed, someOf, toldVaguely } from '../untold/rigs';

/*
 * The law of the untold in kernels: what stops for certain is not bettered by telling one thing more,
 * however vaguely, nor by no longer knowing something; at the best it cannot be said.
 */
const asOf = '2026-11-01';
const topic: Topic = towFit;
const program = programOf(topic, sides);
const [stop, unknown] = [levels.indexOf('stop'), levels.indexOf('unknown')];

const isReadable = (facts: FactsGiven): boolean => {
  try {
    inputsOf(topic, facts);
    return true;
  } catch (problem) {
    if (problem instanceof InputError) return false;
    throw problem;
  }
};

type Told = { readonly says: string; readonly facts: FactsGiven };

/** The rig as told, with one thing more told vaguely, and with one thing no longer known. */
function toldOtherwise(facts: FactsGiven, random: () => number): readonly Told[] {
  const more = Array.from({ length: 6 }, () => toldVaguely(topic, facts, random)).flatMap((each) =>
    each ? [{ says: `${each.fact} told`, facts: each.facts }] : [],
  );
  const known = Object.keys(facts).filter((id) => !Array.isArray(facts[id]));
  const less = known.map((id) => ({ says: `${id} unknown`, facts: { ...facts, [id]: 'unknown' } }));
  return [{ says: '', facts }, ...more, ...less].filter((each) => isReadable(each.facts));
}

test('no certain stop of a kernel becomes better than unknown', { timeout: 300_000 }, () => {
  const random = randomFrom(seed + 31);
  const { places, over } = pairing({ topic, sides, asOf, program, withRoom: false });
  const bettered: string[] = [];
  let tried = 0;
  for (const { name, facts: whole } of filedByTopic().get(topic.id) ?? []) {
    for (const count of [5, 10, 20]) {
      const facts = someOf(whole, count, random);
      const all = isReadable(facts) ? toldOtherwise(facts, random) : [];
      if (all.length === 0) continue;
      const inputs = all.map((each) => inputsOf(topic, each.facts));
      // Only what vehicle and trailer tell is taken of each: the case is that of the first.
      const judge = over(places('rows', inputs), places('columns', inputs))(inputsOf(topic, facts));
      const rows = all.map((_, row) => {
        const found = roomFor(all.length);
        judge(row, found);
        return found.levels;
      });
      if (rows[0]?.[0] !== stop) continue;
      all.forEach(({ says }, i) => {
        for (const level of [rows[i]?.[0], rows[0]?.[i]]) {
          const isSure = level !== undefined && level < levels.length;
          if (!isSure) continue;
          tried += 1;
          if (level !== stop && level !== unknown) bettered.push(`${name}: ${says}, ${level}`);
        }
      });
    }
  }
  expect(bettered).toEqual([]);
  expect(tried).toBeGreaterThan(200);
});
