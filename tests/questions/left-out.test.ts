import { expect, test } from 'vitest';
import { isEnough } from '../../packages/record/src/learned/hunch';
import { urgentTerms } from '../../packages/record/src/learned/urgent-terms';
import { learnUrgent, lessons, writerOf } from './learn';
import { scoresOf } from './softmax';

/**
 * How danger is heard in the messages of a writer from whom nothing was learned: each in turn is left
 * out. Those whose messages were written only to learn from never saw the signs, nor the signs them.
 */
const writers = ['ta', 'tb', 'tc'];

test('of a writer who is left out hardly a danger is missed, and few calm messages are taken for one', () => {
  const heard = writers.flatMap((writer) => {
    const learned = learnUrgent((each) => each !== writer);
    return lessons
      .filter((each) => writerOf(each) === writer)
      .map(({ text, urgent }) => {
        const [calm = 0, danger = 0] = scoresOf(learned, { terms: [...urgentTerms(text).keys()] });
        return { urgent, isHeard: isEnough(danger - calm, text) };
      });
  });
  const dangers = heard.filter(({ urgent }) => urgent !== null);
  const calm = heard.filter(({ urgent }) => urgent === null);
  expect(dangers.length).toBeGreaterThan(570);
  expect(dangers.filter(({ isHeard }) => !isHeard).length / dangers.length).toBeLessThan(0.016);
  expect(calm.filter(({ isHeard }) => isHeard).length / calm.length).toBeLessThan(0.27);
});
