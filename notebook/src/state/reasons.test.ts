import { readFileSync } from 'node:fs';
import { judgeCaseNow, readCase, setFact } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { nextSteps, reasonsOf } from './reasons';

const crossover = readFileSync(
  new URL('../../../cases/tow-fit/crossover-and-single-axle.md', import.meta.url),
  'utf8',
);
const judged = (text: string) => judgeCaseNow(readCase(text));

test('the limit that runs out first is the first reason; no more than three are told', () => {
  const answer = judged(crossover);
  const reasons = reasonsOf(answer);
  expect(reasons.length).toBeLessThanOrEqual(3);
  const [first] = reasons;
  expect(first?.kind === 'limit' && first.limit.id).toBe(answer.binding);
});

test('what stops it comes before what merely asks for care', () => {
  const text = setFact(readCase(crossover), 'vehicle.placardPayload', '1,000 lb');
  const levels = reasonsOf(judged(text)).map(({ level }) => level);
  expect(levels[0]).toBe('stop');
  const order = ['stop', 'unknown', 'if', 'care', 'ok'];
  expect(levels).toEqual(levels.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)));
});

test('what is to be done is told once', () => {
  const answer = judged(crossover);
  const steps = nextSteps(answer).map((each) => each.do);
  expect(new Set(steps).size).toBe(steps.length);
  for (const step of steps) expect(answer.findings.map((each) => each.do)).toContain(step);
});
