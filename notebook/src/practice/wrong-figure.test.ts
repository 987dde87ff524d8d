import { readFileSync } from 'node:fs';
import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { wrongFigureOf } from './wrong-figure';

const answerOf = async (name: string) => {
  await Promise.all([openTopic('tow-fit'), openReader()]);
  const { answer } = judge(
    readFileSync(new URL(`../../../cases/tow-fit/${name}.md`, import.meta.url), 'utf8'),
  );
  if (!answer) throw new Error(`${name} cannot be judged.`);
  return answer;
};

/** A sum as a person would type it into a calculator; undefined for words such as “the least of”. */
function reckoned(working: string): number | undefined {
  // Feet and inches in one sum would have to be converted first.
  if (/ ft\b/.test(working) && / in\b/.test(working)) return undefined;
  const bare = working
    .replace(/(\d),(?=\d{3})/g, '$1')
    .replace(/(\d[\d.]*) ?%/g, '($1/100)')
    .replace(/ (?:lb\/gal|lb|gal|ft|in)\b/g, '')
    .replaceAll('−', '-')
    .replaceAll('×', '*')
    .replaceAll('÷', '/');
  return /^[-+*/() .\d]+$/.test(bare) ? Number(evaluate(bare)) : undefined;
}

test.each(['two-too-many', 'payload-not-known', 'tandem-close-to-maximum', 'only-with-bars'])(
  '%s: reckoned again by another calculator, the changed line alone is wrong',
  async (name) => {
    const answer = await answerOf(name);
    let again = 0;
    for (let seed = 1; seed <= 40; seed += 1) {
      const found = wrongFigureOf(answer, seed);
      if (!found) throw new Error('There is nothing to change.');
      const { lines, wrong, right } = found;
      expect(lines.length).toBeGreaterThanOrEqual(3);
      expect(lines.filter(({ id, says }) => says !== answer.trace.steps[id]?.value)).toHaveLength(
        1,
      );
      for (const { id, working, says } of lines) {
        const value = reckoned(working);
        if (value === undefined) continue;
        again += 1;
        const said = Number(says.replace(/[,%]| .*$/g, '')) / (says.includes('%') ? 100 : 1);
        const off = Math.abs(said - value) / Math.max(1e-9, Math.abs(value));
        if (id === wrong) expect(off, `${working} = ${says}, not ${right}`).toBeGreaterThan(0.05);
        else expect(off, `${working} = ${says}`).toBeLessThan(0.02);
      }
    }
    expect(again).toBeGreaterThan(100);
  },
);

test('the same seed changes the same figure, and seeds change different ones', async () => {
  const answer = await answerOf('two-too-many');
  expect(wrongFigureOf(answer, 5)).toEqual(wrongFigureOf(answer, 5));
  const wrong = Array.from({ length: 20 }, (_, seed) => wrongFigureOf(answer, seed)?.wrong);
  expect(new Set(wrong).size).toBeGreaterThan(3);
});
