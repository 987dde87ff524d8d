import { topics } from '@tarebook/rules';
import { readFacts } from '@tarebook/rules/engine';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compiledOf } from '../../packages/rules/src/engine/answer/answer';
import { inBase, parametersOn } from '../../packages/rules/src/engine/answer/parameters';
import { run, runLike } from '../../packages/rules/src/engine/formula/run';
import { anyFacts } from './any-facts';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';

test.each(Object.values(topics).map((topic) => [topic.id, topic] as const))(
  '%s: facts told otherwise are reckoned as from the start, whatever is taken from before',
  (_, topic) => {
    const compiled = compiledOf(topic);
    const parameters = inBase(parametersOn(topic, asOf), asOf);
    const names = [...compiled.formulas.keys(), ...Object.keys(topic.decisions ?? {})];
    const ids = Object.keys(topic.facts);
    let taken = 0;
    fc.assert(
      fc.property(
        anyFacts(topic),
        anyFacts(topic),
        fc.subarray(ids, { minLength: 1, maxLength: 2 }),
        (facts, others, changed) => {
          const { inputs } = readFacts(topic, facts);
          const { inputs: other } = readFacts(topic, others);
          const now = new Map(inputs);
          for (const id of changed) {
            const input = other.get(id);
            if (input) now.set(id, input);
          }
          const before = run(compiled, inputs, parameters);
          const like = runLike(before, compiled, now, parameters);
          const anew = run(compiled, now, parameters);
          for (const name of names) {
            if (like.value(name) === before.value(name)) taken += 1;
            expect([name, like.value(name)]).toEqual([name, anew.value(name)]);
          }
        },
      ),
      { numRuns: topic.id === 'options-fit' ? 5 : 20, seed },
    );
    // Else nothing would be tried here.
    expect(taken).toBeGreaterThan(0);
  },
);
