import { writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { kindLearned } from '../../packages/record/src/learned/kind-weights';
import { topicLearned } from '../../packages/record/src/learned/topic-weights';
import { urgentLearned } from '../../packages/record/src/learned/urgent-weights';
import { learnKind, learnTopics, learnUrgent } from './learn';
import { packedMany, packedTwo } from './packed';

/**
 * What the package has learned is what the labeled messages teach. After a change of messages, signs,
 * splitting or what people call things, TAREBOOK_LEARN=1 writes it anew.
 */
const writes = Boolean(process.env.TAREBOOK_LEARN);

function write(name: string, type: string, learned: unknown): void {
  const text = `import type { ${type} } from './linear';

// Made by tests/questions/learned.test.ts of the labeled messages beside it; not written by hand.
export const ${name}Learned: ${type} = ${JSON.stringify(learned, null, 2)};
`;
  writeFileSync(
    new URL(`../../packages/record/src/learned/${name}-weights.ts`, import.meta.url),
    text,
  );
}

type Weights = Readonly<Record<string, string>>;

const stepsOf = (weights: Weights) =>
  new Map(
    Object.entries(weights).flatMap(([steps, terms]) =>
      terms.split(',').map((term) => [term, Number(steps)] as const),
    ),
  );

/** A weight so many steps from the one that is learned now is another one. */
const farAt = 3;

/**
 * Which part of the terms has another weight. Topics learn beside what they are called and what is
 * filed, so that a case more moves some of them a little; other messages move most of them.
 */
function apart(kept: Weights, now: Weights): number {
  const [a, b] = [stepsOf(kept), stepsOf(now)];
  const all = [...new Set([...a.keys(), ...b.keys()])];
  const far = all.filter((term) => Math.abs((a.get(term) ?? 0) - (b.get(term) ?? 0)) > farAt);
  return far.length / Math.max(1, all.length);
}
const mostApart = 0.02;

test('what tells danger is as it was learned', () => {
  const now = packedTwo(learnUrgent());
  if (writes) return write('urgent', 'LearnedTwo', now);
  expect(Object.keys(now.weights).length).toBeGreaterThan(10);
  expect(apart(urgentLearned.weights, now.weights)).toBeLessThan(mostApart);
  expect(urgentLearned.bias).toBeCloseTo(now.bias, 1);
});

test.each([
  ['kind', kindLearned, () => packedMany(learnKind(), 0.2)],
  ['topic', topicLearned, () => packedMany(learnTopics())],
] as const)('what tells the %s is as it was learned', (name, kept, learnNow) => {
  const now = learnNow();
  if (writes) return write(name, 'LearnedMany', now);
  expect(Object.keys(kept.weights)).toEqual(Object.keys(now.weights));
  for (const [id, weights] of Object.entries(now.weights))
    expect(apart(kept.weights[id] ?? {}, weights), id).toBeLessThan(mostApart);
});
