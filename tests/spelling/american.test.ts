import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { british, britishIn } from './british';

const root = new URL('../..', import.meta.url).pathname;

/**
 * Where a British word has to stand: what people write is read in both spellings, what was renamed
 * is read by its old name, and another library has its own names.
 */
const kept: Readonly<Record<string, readonly string[]>> = {
  'DEVELOPERS.md': ['centre', 'equalise', 'winterised'],
  'cases/refused/off-grid-stay-days-in-gallons.md': ['grey'],
  'tests/questions/dangers.json': ['grey', 'tyre'],
  'tests/questions/open.json': ['burnt', 'grey', 'neighbour'],
  'tests/questions/once-held-out.json': ['burnt', 'grey'],
  'tests/questions/train.json': [
    ...['burnt', 'centre', 'grey', 'greyhound', 'labelled', 'neighbour', 'neighbours', 'vapour'],
  ],
  'packages/record/src/learned/kind-weights.ts': ['burnt', 'tyre'],
  'packages/record/src/learned/topic-weights.ts': ['burnt', 'instal'],
  'packages/record/src/learned/urgent-weights.ts': ['burnt', 'instal', 'tyre'],
  'packages/record/src/danger/air.ts': ['burnt', 'odour', 'sulphur'],
  'packages/record/src/danger/doubt.ts': ['burnt'],
  'packages/record/src/danger/mishap.ts': ['burnt'],
  'packages/record/src/danger/odd.ts': ['burnt', 'colour', 'tyre', 'tyres'],
  'packages/record/src/danger/power.ts': ['burnt', 'grey', 'tyre'],
  'packages/record/src/danger/road.ts': ['stabiliser', 'tyre', 'tyres'],
  'packages/record/src/words/clauses/living.ts': ['grey', 'winterised'],
  'packages/record/src/words/clauses/rig.ts': ['centre', 'grey', 'kerb', 'tyres'],
  'packages/record/src/words/living.ts': ['grey'],
  'packages/record/src/words/sayings/living.ts': ['burnt', 'equalise', 'equalised', 'grey'],
  'packages/record/src/words/sayings/papers.ts': ['tyre'],
  'packages/record/src/words/sayings/rig.ts': ['centre', 'grey', 'labelled', 'towards'],
  'packages/record/src/words/sayings/trouble.ts': ['burnt'],
  'packages/rules/src/quantity/units.ts': [
    ...[
      'centimetre',
      'centimetres',
      'millimetre',
      'millimetres',
      'kilometre',
      'kilometres',
      'litre',
      'litres',
    ],
    ...['metre', 'metres', 'tonne', 'tonnes'],
  ],
  'packages/rules/src/topics/cold-weather/index.ts': ['winterised'],
  'packages/rules/src/topics/house-battery/index.ts': ['equalise'],
  'packages/rules/src/topics/off-grid-stay/asked.ts': ['grey'],
  'packages/rules/src/topics/shore-power/asked.ts': ['burnt'],
  'packages/rules/src/topics/truck-camper/index.ts': ['centre'],
  'tests/properties/cold-weather.test.ts': ['winterised'],
  'tests/published/electric-tow-range.test.ts': ['litre'],
  'tests/published/tow-fit-units.test.ts': ['litre', 'tonne'],
};

/** Rule sets as they were released, names that others chose, and this list. */
const isAside = (path: string): boolean =>
  path === 'package-lock.json' ||
  path.startsWith('packages/rules/published/') ||
  path.startsWith('tests/spelling/');

/** Everything that git knows, new files too. */
const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard'], {
  cwd: root,
  encoding: 'utf8',
})
  .split('\n')
  .filter((path) => /\.(ts|mjs|md|css|html|csv|json)$/.test(path) && !isAside(path));

const foundIn = new Map(
  files.flatMap((path) => {
    const found = [...britishIn(readFileSync(join(root, path), 'utf8')), ...britishIn(path)];
    return found.length > 0 ? [[path, found] as const] : [];
  }),
);

test('American English is written in every rule, case, page and document', () => {
  expect(files.length).toBeGreaterThan(500);
  const strange = [...foundIn].flatMap(([path, found]) =>
    found
      .filter(({ word }) => !kept[path]?.includes(word))
      .map(({ line, word }) => `${path}:${line} ${word}`),
  );
  expect(strange).toEqual([]);
});

test('no word is kept that no longer stands there', () => {
  const idle = Object.entries(kept).flatMap(([path, words]) =>
    words
      .filter((word) => !foundIn.get(path)?.some((each) => each.word === word))
      .map((word) => `${path} ${word}`),
  );
  expect(idle).toEqual([]);
});

test('the list finds words in sentences and in names, and leaves those that only begin alike', () => {
  expect(britishIn('a grey tank\n`charge.equaliseAllowed`')).toEqual([
    { line: 1, word: 'grey' },
    { line: 2, word: 'equalise' },
  ]);
  expect(britishIn('realistic emphasis, installed and programmed; a spelter')).toEqual([]);
  expect(Object.keys(british).length).toBeGreaterThan(90);
});
