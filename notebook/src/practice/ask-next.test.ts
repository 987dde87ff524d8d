import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { askingOf, scored, standing } from './ask-next';

const folder = new URL('../../../cases/', import.meta.url);
const filesOf = (topic: string) =>
  readdirSync(new URL(`${topic}/`, folder))
    .filter((file) => file.endsWith('.md'))
    .slice(-14);
const asking = async (topic: string, file: string) => {
  await Promise.all([openTopic(topic), openReader()]);
  const { doc, answer } = judge(readFileSync(new URL(`${topic}/${file}`, folder), 'utf8'));
  if (!answer) throw new Error(`${topic}/${file} cannot be judged.`);
  return { doc, answer, exercise: askingOf(doc, answer) };
};

test.each(['tow-fit', 'truck-camper'])(
  '%s: asked in the rules’ own order, the verdict is settled with the last question, not before',
  async (topic) => {
    let made = 0;
    for (const file of filesOf(topic)) {
      const { exercise, answer } = await asking(topic, file);
      if (!exercise) continue;
      made += 1;
      const { best } = exercise;
      expect(standing(exercise, []).settled, file).toBe(false);
      expect(standing(exercise, best.slice(0, -1)).settled, file).toBe(false);
      const done = standing(exercise, best);
      expect(done.settled, file).toBe(true);
      expect(judge(done.text).answer?.outcome, file).toBe(answer.outcome);
      for (const [at, fact] of best.entries()) {
        expect(standing(exercise, best.slice(0, at)).next?.id, file).toBe(fact);
      }
    }
    expect(made).toBeGreaterThan(3);
  },
);

test('what settles nothing counts against the score, and the rules’ own number is named', async () => {
  const { exercise } = await asking('tow-fit', 'two-too-many.md');
  if (!exercise) throw new Error('There is nothing to ask.');
  const idle = exercise.hidden.find(({ id }) => !exercise.best.includes(id));
  if (!idle) throw new Error('Nothing idle is hidden.');
  const asked = [idle.id, ...exercise.best];
  expect(standing(exercise, asked).settled).toBe(true);
  expect(scored(exercise, asked.length)).toEqual({
    met: false,
    says: `Settled with ${asked.length} questions; ${exercise.best.length} would have been enough, so 1 settled nothing.`,
  });
  expect(scored(exercise, exercise.best.length).met).toBe(true);
});

test('a case whose verdict stays open has nothing to ask for', async () => {
  expect((await asking('tow-fit', 'payload-not-known.md')).exercise).toBeUndefined();
});
