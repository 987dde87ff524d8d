import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import {
  beginGroup,
  commit,
  type Group,
  goOn,
  isGroup,
  openWorking,
  readLearners,
  waiting,
} from '../state/group';
import { openReader } from '../state/reading';
import { openTopic } from '../state/topics';
import { compared, questionOf, readPrediction } from './predict';
import { metBy, recordAsCsv, walkedCase } from './record';

const seed = { seed: Number(process.env.TAREBOOK_SEED ?? 20_261_125) };
const text = readFileSync(
  new URL('../../../cases/tow-fit/payload-not-known.md', import.meta.url),
  'utf8',
);
const oneCase = { topic: 'tow-fit', name: 'payload-not-known', title: 'A, "case"', text };
const begun = (learners: readonly string[]): Group => beginGroup(learners, [oneCase], 1e12);
beforeAll(() => Promise.all([openTopic('tow-fit'), openReader()]));

const question = () => {
  const walked = walkedCase({ text });
  if (!walked) throw new Error('The case cannot be judged.');
  return questionOf(walked.doc, walked.answer);
};

test('what is committed stays: no second word, none after the working is open', () => {
  const first = commit(begun(['Ada', 'Ben']), 'Ada', '900 lb', 1);
  expect(commit(first, 'Ada', '1,016 lb', 2)).toBe(first);
  expect(commit(first, 'Cleo', '1,016 lb', 2)).toBe(first);
  expect(waiting(first)).toEqual(['Ben']);
  const open = openWorking(first);
  expect(commit(open, 'Ben', '1,016 lb', 3)).toBe(open);
  expect(goOn(open)).toMatchObject({ at: 1, closed: true });
});

test('a prediction is met at its tolerance and not beyond it, in pounds and in kilograms', () => {
  const asked = question();
  expect(asked).toMatchObject({ kind: 'number', result: 'payload.used', within: 30 });
  for (const [said, met] of [
    ['986 lb', true],
    ['985.9 lb', false],
    ['1,046 lb', true],
    ['1,046.1 lb', false],
    ['460.85 kg', true],
    ['447 kg', false],
  ] as const) {
    expect([said, compared(said, asked, 'us').met]).toEqual([said, met]);
  }
  expect(compared('916 lb', asked, 'us').says).toBe('100 lb under');
  expect(compared('1,016 lb', asked, 'us').says).toBe('exactly');
});

test('a bare number is taken in the unit that stands beside the field', () => {
  const asked = question();
  expect(readPrediction('1,016', asked, 'us')).toEqual({ said: '1,016 lb' });
  expect(readPrediction('461', asked, 'metric')).toEqual({ said: '461 kg' });
  for (const wrong of ['', 'heavy', '4 ft', '900 lb and a bit']) {
    expect(readPrediction(wrong, asked, 'us')).toHaveProperty('wrong');
  }
});

test('the record survives a general CSV reader whatever the learners are called', () => {
  const name = fc
    .string({ unit: 'grapheme', minLength: 1, maxLength: 20 })
    .filter((each) => each.trim() === each && !/[\n\r,;]/.test(each));
  fc.assert(
    fc.property(fc.uniqueArray(name, { minLength: 1, maxLength: 5 }), (learners) => {
      const said = learners.reduce(
        (group, each) => commit(group, each, '1,000 lb', 1),
        begun(learners),
      );
      const rows: Record<string, string>[] = parse(recordAsCsv(openWorking(said)), {
        columns: true,
      });
      expect(rows.map(({ learner }) => learner?.replace(/^'/, ''))).toEqual(
        learners.map((each) => each.replace(/^'/, '')),
      );
      for (const row of rows) {
        expect(row.learner).not.toMatch(/^[=+@\t]/);
        expect(row).toMatchObject({ prediction: '1,000 lb', difference: '-16', met: 'yes' });
      }
      expect(metBy(openWorking(said), learners[0] ?? '')).toEqual({ met: 1, of: 1 });
    }),
    { ...seed, numRuns: 200 },
  );
});

test('a class reads back from JSON as itself, and a damaged one is told apart', () => {
  const group = openWorking(commit(begun(['Ada']), 'Ada', '900 lb', 1));
  expect(isGroup(JSON.parse(JSON.stringify(group)))).toBe(true);
  for (const key of Object.keys(begun(['Ada']))) {
    const { [key]: _, ...rest } = JSON.parse(JSON.stringify(group));
    expect(isGroup(rest), `without ${key}`).toBe(false);
  }
  expect(isGroup({ ...group, commitments: [{ case: 0 }] })).toBe(false);
});

test('learners are read one on a line, and a list that cannot be used says why', () => {
  expect(readLearners(' Ada \n\nBen, 7')).toEqual(['Ada', 'Ben', '7']);
  expect(readLearners(' \n')).toContain('Nobody is named');
  expect(readLearners('Ada\nAda')).toContain('twice');
  expect(readLearners('x'.repeat(41))).toContain('41 letters');
});
