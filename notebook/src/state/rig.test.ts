import { readFileSync } from 'node:fs';
import { judgeRig, readRig } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { expect, test } from 'vitest';
import { rigTold } from './rig';

const folder = new URL('../../../cases/rig/', import.meta.url);

test('topics of a rig that stop alike stand in the order in which they stand everywhere else, not by name', async () => {
  const text = readFileSync(new URL('bought-used-and-swaying.md', folder), 'utf8');
  const { answers } = judgeRig(readRig(text, topics), topics);
  const ids = answers.map(({ topic }) => topic.id);
  const byName = answers.toSorted((a, b) =>
    a.level === b.level ? a.topic.id.localeCompare(b.topic.id, 'en') : 0,
  );
  expect(byName.map(({ topic }) => topic.id)).not.toEqual(ids);
  const told = await rigTold('used', text, [], () => undefined);
  if ('says' in told) throw new Error(told.says);
  expect(told.parts.map(({ topic }) => topic)).toEqual(ids);
});
