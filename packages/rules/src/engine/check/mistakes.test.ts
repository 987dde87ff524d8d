import { describe, expect, test } from 'vitest';
import type { Topic } from '../define/shapes';
import { sayProblem } from './messages';
import { mistakes } from './mistakes';
import type { Mistake } from './problem';
import { checkTopic } from './topic';
import { wrongTables } from './wrong-tables.fixture';
import { wrongShelves } from './wrong-topics.fixture';

/** One that is added to mistakes.ts without a rule set that has it does not compile. */
const wrong: Readonly<Record<Mistake, Topic>> = { ...wrongShelves, ...wrongTables };
const each = Object.entries(wrong) as [Mistake, Topic][];

describe.each(each)('%s', (code, topic) => {
  const told = checkTopic(topic).filter((problem) => problem.code === code);

  test('is told of a rule set that has it', () => {
    expect(told).not.toEqual([]);
  });

  test('its sentence names the place, what was found and what would be right', () => {
    for (const problem of told) {
      const said = sayProblem(problem);
      expect(said.startsWith(`${problem.fact}: `)).toBe(true);
      expect(problem.fact).toMatch(/^[a-z]/);
      expect(problem.wanted.trim()).not.toBe('');
      expect(said).toContain(`; ${problem.wanted}.`);
      expect(said).not.toMatch(/\$\w|undefined|: ;/);
      expect(said).not.toContain(`Did you mean \`${problem.found}\``);
      for (const hole of mistakes[code][0].match(/\$\w+/g) ?? []) {
        const value = new Map<string, unknown>(Object.entries(problem)).get(hole.slice(1));
        expect(String(value ?? '')).not.toBe('');
        expect(said).toContain(String(value));
      }
    }
  });
});

test('no two kinds of mistake have one wording, and all are told as data', () => {
  const wordings = Object.entries(mistakes).filter(([, [found]]) => found !== '$found');
  expect(new Set(wordings.map(([, words]) => words.join('; '))).size).toBe(wordings.length);
});
