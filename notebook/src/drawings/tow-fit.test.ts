import { readFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { judge } from '../state/judged';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { rigFigures } from './tow-fit';

beforeAll(async () => {
  await Promise.all([openReader(), openTopic('tow-fit')]);
});

function ballOf(name: string) {
  const url = new URL(`../../../cases/tow-fit/${name}.md`, import.meta.url);
  const { doc, answer } = judge(readFileSync(url, 'utf8'));
  const [figure] = answer ? rigFigures({ doc, answer }) : [];
  return figure?.kind === 'rig' ? figure.ball : undefined;
}

test('on an extension that nobody has read the ball has no room drawn beside it', () => {
  expect(ballOf('an-extension-nobody-read')).toMatchObject({
    used: { lo: 440, hi: 440 },
    limit: undefined,
    state: 'unknown',
  });
});

test('without one the load on the ball stands against the least that may rest there', () => {
  expect(ballOf('rear-axle-with-bars')).toMatchObject({ limit: { hi: 900 }, state: 'ok' });
});
