import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { publish } from '@tarebook/rules';
import { afterAll, expect, test } from 'vitest';
import { firewood } from '../../../tests/examples/firewood.mjs';
import { run } from './run.fixture';

const folder = mkdtempSync(join(tmpdir(), 'tarebook-own-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const write = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};
const examples = new URL('../../../tests/examples/', import.meta.url);
const document = write('firewood.md', readFileSync(new URL('firewood.md', examples), 'utf8'));
const json = write('firewood.json', JSON.stringify(publish(firewood)));
// As a module that has taken the package's engine into itself.
const module = write(
  'firewood.mjs',
  `export const firewood = ${JSON.stringify(firewood)};\nexport default firewood;\nexport const helper = () => 1;`,
);

// What a compiler makes of TypeScript where a package does not say that its modules are of the newer kind.
const common = write(
  'firewood.cjs',
  `"use strict";\nObject.defineProperty(exports, "__esModule", { value: true });\nexports.helper = exports.firewood = void 0;\nexports.firewood = ${JSON.stringify(firewood)};\nexports.helper = () => 1;`,
);

test.each([
  ['published JSON', json],
  ['a module', module],
  ['a CommonJS module', common],
])('a topic of one’s own from %s judges, checks and is shown', async (_, file) => {
  const judged = await run(['judge', document, '--topics', file, '--json']);
  expect(judged.err).toBe('');
  // By hand: 10 × 33 lb = 330 lb, over 300 lb.
  expect(JSON.parse(judged.out)).toMatchObject({
    topic: 'firewood',
    outcome: 'stays-home',
    binding: 'room',
    values: { 'wood.weight': { lo: 330, hi: 330, unit: 'lb' } },
  });
  const checked = await run(['check', document, '--topics', file]);
  expect(checked.out).toContain('1 hold');
  expect(checked.status).toBe(0);
  const saved = write('saved.json', judged.out);
  const again = await run(['judge', saved, '--topics', file, '--json']);
  expect(again.err).toBe('');
  expect(JSON.parse(again.out)).toMatchObject({ same: true, outcome: 'stays-home' });
  const page = await run(['rules', 'firewood', '--topics', file]);
  expect(page.out).toContain('How much firewood may ride along?');
  const diff = await run(['rules', 'firewood', '--topics', file, '--diff', '0.9.0']);
  expect(diff.err).toContain('no kept version “0.9.0” of firewood; none is kept yet');
  const without = await run(['rules', 'firewood']);
  expect(without.err).toContain('One of your own comes with `--topics FILE`.');
  const list = await run(['rules', '--topics', file]);
  expect(list.out).toContain('firewood');
  expect(list.out).toContain('tow-fit');
});

test('a house file moves what a topic of one’s own lets a house move', async () => {
  const layer = (topic: string) => ({
    topic,
    name: 'Sallowbridge',
    parameters: { 'margin.wood': { value: '40 %', reason: 'Ours is wetter.' } },
  });
  const house = write('house.json', JSON.stringify(layer('firewood')));
  const judged = await run(['judge', document, '--topics', json, '--house', house, '--json']);
  expect(judged.err).toBe('');
  expect(JSON.parse(judged.out)).toMatchObject({ house: { name: 'Sallowbridge' } });
  const checked = await run(['check', document, '--topics', json, '--house', house]);
  expect(checked.err).toBe('');
  const other = write('other.json', JSON.stringify(layer('firewod')));
  const near = await run(['judge', document, '--topics', json, '--house', other]);
  expect(near.err).toContain('there is no topic “firewod”');
  expect(near.err).toContain('Did you mean firewood?');
});

test('the topic of the README is checked, listed and judges', async () => {
  const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8');
  const [, program = ''] = /```js\n([\s\S]*?)```/.exec(readme) ?? [];
  const plain = program.replace(/^import .*$/m, 'const defineTopic = (made) => made;');
  const file = write('readme.mjs', plain);
  const [, indented = ''] = /```markdown\n( {3}---\n[\s\S]*?)```/.exec(readme) ?? [];
  const own = write('readme.md', indented.replaceAll(/^ {3}/gm, ''));
  const { err, out } = await run(['judge', own, '--topics', file, '--json']);
  expect(err).toBe('');
  // By hand: 10 × 25 lb × 1.30 = 325 lb, 25 lb over 300 lb.
  expect(JSON.parse(out)).toMatchObject({
    outcome: 'stays-home',
    restsOn: '',
    sentence: expect.stringContaining('over by 25 lb'),
  });
  const checked = await run(['check', own, '--topics', file]);
  expect(checked.out).toContain('1 case, 1 hold');
  // The example of a house file, of words told first and of a table of words.
  const [, layer = ''] = /the file as `(\{ "topic": "firewood".*?\} \} \})`/.exec(readme) ?? [];
  const house = write('readme-house.json', layer);
  const moved = await run(['judge', own, '--topics', file, '--house', house, '--json']);
  expect(moved.err).toBe('');
  // By hand: 10 × 25 lb × 1.35 = 337.5 lb.
  expect(JSON.parse(moved.out)).toMatchObject({ values: { 'wood.weight': { hi: 337.5 } } });
  const [, tells = ''] = /as `(\{ of: .*? \})`, with `when`/.exec(readme) ?? [];
  const [, words = ''] = /`wordTables: (\{ density: .*? \} \})` and `pick/.exec(readme) ?? [];
  const more = plain
    .replace('  apart: {},', `  apart: {},\n  tells: [${tells}],\n  wordTables: ${words},`)
    .replace(
      '  formulas: {',
      "  formulas: {\n    'wood.density': { label: 'Density', unit: 'lb/gal', source, is: 'pick(density, wood.state)' },",
    )
    .replace("headline: ['wood.weight']", "headline: ['wood.weight', 'wood.density']");
  const five = readFileSync(own, 'utf8').replace('| 10 |', '| 5 |');
  const fewer = write('five.md', five.slice(0, five.indexOf('| Expect')));
  const told = await run(['judge', fewer, '--topics', write('more.mjs', more), '--json']);
  expect(told.err).toBe('');
  const { sentence, values } = JSON.parse(told.out);
  // By hand: 5 × 25 lb × 1.30.
  expect(sentence).toContain('The wood comes to 162.5 lb.');
  expect(values['wood.density']).toMatchObject({ lo: 4.6, unit: 'lb/gal' });
});

test.each([
  ['no-such.json', undefined, 'there is no such file'],
  ['broken.json', '{', 'this is not JSON'],
  ['list.json', '[{"id":"firewood"}]', 'title: it is missing; give a text.'],
  ['throws.mjs', 'export const a = b;', 'it cannot be loaded as a module: b is not defined.'],
  ['own.mts', 'export {};', 'this is TypeScript; compile it first'],
  ['empty.mjs', 'const a = 1;', 'it exports no rule set'],
])('what is no topic is refused in a sentence: %s', async (name, text, says) => {
  const file = text === undefined ? join(folder, name) : write(name, text);
  const { status, err } = await run(['rules', '--topics', file]);
  expect(status).toBe(2);
  expect(err).toContain(says);
});

test('a topic with the id of one of ours is refused, and one that is wrong is told why', async () => {
  const taken = write('taken.json', JSON.stringify({ ...publish(firewood), id: 'tires' }));
  expect((await run(['rules', '--topics', taken])).err).toContain(
    'there is a topic “tires” already',
  );
  const wrong = { ...firewood, headline: ['no.such'] };
  const file = write('wrong.json', JSON.stringify(publish(wrong)));
  expect((await run(['rules', '--topics', file])).err).toContain(
    'headline: there is no result “no.such”',
  );
});
