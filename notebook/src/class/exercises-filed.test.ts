import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { exercises } from '../state/practice';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { guessCode, readGuessCode } from './guess-code';
import { compared, foundWords, readPrediction } from './predict';
import { walkedCase } from './record';
import { severalSaid } from './several';

/** A topic of limits, one of reckoning, one of findings. */
const topics = ['tow-fit', 'house-battery', 'cold-weather'];
const folder = new URL('../../../cases/', import.meta.url);

beforeAll(() => Promise.all([openReader(), ...topics.map(openTopic)]));

test.each(topics)(
  '%s: of every exercise that a filed case has the right answer is met, and travels as a code',
  (topic) => {
    const had: Record<string, number> = {};
    const wrong: string[] = [];
    for (const file of readdirSync(new URL(`${topic}/`, folder)).slice(0, 6)) {
      const text = readFileSync(new URL(`${topic}/${file}`, folder), 'utf8');
      for (const exercise of exercises.filter((each) => each !== 'predict')) {
        const each = { topic, name: file, title: file, text, exercise };
        const walked = walkedCase(each);
        if (!walked) continue;
        const { question, task, answer } = walked;
        if (question.kind === 'number') throw new Error(`${file}: ${exercise} asks a figure`);
        had[exercise] = (had[exercise] ?? 0) + 1;
        if (new Set(question.words).size < question.words.length)
          wrong.push(`${file}: ${exercise} names two alike`);
        const best =
          task.kind === 'ask'
            ? severalSaid([
                ...task.asking.best.flatMap((id) =>
                  task.asking.hidden.filter((h) => h.id === id).map(({ label }) => label),
                ),
                answer.words,
              ])
            : task.kind === 'say'
              ? severalSaid(question.words)
              : foundWords(question, 'us');
        const read = readPrediction(best, question, 'us');
        if ('wrong' in read || !compared(best, question, 'us').met)
          wrong.push(`${file}: ${exercise}: “${best}” is not met`);
        const code =
          guessCode({ case: 0, learner: 0, said: best, sure: 'certain' }, question, 'us') ?? '';
        const back = readGuessCode(code, [each], ['Ada'], () => question);
        if (typeof back === 'string' || back.said !== best)
          wrong.push(`${file}: ${exercise}: ${code} says ${JSON.stringify(back)}`);
        if (task.kind === 'say' && compared(severalSaid([]), question, 'us').met)
          wrong.push(`${file}: a sentence that says nothing is met`);
        if (
          task.kind === 'ask' &&
          task.asking.best.length < task.asking.hidden.length &&
          compared(
            severalSaid([...task.asking.hidden.map(({ label }) => label), answer.words]),
            question,
            'us',
          ).met
        )
          wrong.push(`${file}: asking for everything is met`);
      }
    }
    expect(wrong).toEqual([]);
    expect(had.say).toBeGreaterThan(0);
  },
);
