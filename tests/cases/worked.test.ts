import { type CaseDocument, compareWithExpect, judgeCase } from '@tarebook/casebook';
import { towFit } from '@tarebook/rules';
import type { Answer } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, refusedFolder } from './files';

const worked = markdownBelow(casesFolder, refusedFolder).map(({ name, text }) => ({
  name,
  doc: readFiled(text),
}));
const towFitCases = worked.filter(({ doc }) => doc.front.topic === 'tow-fit');

const namesExpected = (doc: CaseDocument): readonly string[] =>
  doc.expectations.map(({ name }) => name);

test('there are at least fourteen worked cases of tow fit, at every level of trainee', () => {
  expect(towFitCases.length).toBeGreaterThanOrEqual(14);
  const levels = new Set(towFitCases.map(({ doc }) => doc.front.level));
  expect([...levels].toSorted()).toEqual(['hard', 'starter', 'working']);
});

describe.each(worked)('$name', ({ doc }) => {
  test('has no troubles', () => {
    expect(doc.troubles).toEqual([]);
  });

  test('has a title, a level, a day, and says what verdict and binding limit must come out', () => {
    expect(doc.front.title).not.toBe('Untitled case');
    expect(doc.front.level).toBeDefined();
    expect(doc.front.asOf).toBeDefined();
    expect(namesExpected(doc)).toEqual(expect.arrayContaining(['verdict', 'limit.binding']));
  });

  test('comes out as expected', async () => {
    expect(compareWithExpect(doc, await judgeCase(doc))).toEqual([]);
  });

  test('asks the learner for one guess', () => {
    expect(doc.blocks.filter(({ kind }) => kind === 'predict')).toHaveLength(1);
  });

  test('says that it is invented', () => {
    expect(doc.text.trimEnd().split('\n').at(-1)).toMatch(/invented|made up/i);
  });
});

/**
 * What the cases expect, beyond what merely comes out: a limit or finding counts as exercised in a
 * state only if somebody wrote that state down.
 */
const expectedStates = new Set(
  towFitCases.flatMap(({ doc }) => doc.expectations.map(({ name, text }) => `${name} ${text}`)),
);

const states = (kind: 'limit' | 'finding', id: string, all: readonly string[]) =>
  all.map((state) => ({ name: `${kind}.${id}`, state }));

const limitStates = Object.entries(towFit.limits).flatMap(([id, limit]) =>
  states('limit', id, 'margin' in limit ? ['stop', 'care'] : ['stop']),
);

const findingStates = Object.entries(towFit.findings).flatMap(([id, finding]) =>
  states(
    'finding',
    id,
    (['stop', 'if', 'care'] as const).filter((level) => level in finding),
  ),
);

test('all limits and all findings are counted', () => {
  expect(Object.keys(towFit.limits)).toHaveLength(23);
  expect(Object.keys(towFit.findings)).toHaveLength(24);
});

test.each([...limitStates, ...findingStates])('some case expects $name to be $state', (wanted) => {
  expect(expectedStates).toContain(`${wanted.name} ${wanted.state}`);
});

test.each(['limit.payload', 'limit.tongue', 'limit.trailer-gross', 'finding.unbraked'])(
  'some case expects %s to be unknown',
  (name) => {
    expect(expectedStates).toContain(`${name} unknown`);
  },
);

test('every verdict is the end of some case', async () => {
  const answers: Answer[] = await Promise.all(towFitCases.map(({ doc }) => judgeCase(doc)));
  const outcomes = new Set(answers.map(({ outcome }) => outcome));
  expect(outcomes).toEqual(
    new Set(['fits', 'fits-if', 'fits-with-care', 'does-not-fit', 'cannot-say']),
  );
});
