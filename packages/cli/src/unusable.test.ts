import { chmodSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { bundled, type Ran, run, runIn } from './run.fixture';

const folder = mkdtempSync(join(tmpdir(), 'tarebook-'));
afterAll(() => {
  chmodSync(at('shut'), 0o700);
  rmSync(folder, { recursive: true, force: true });
});
const at = (...names: string[]): string => join(folder, ...names);

const caseText = (verdict: string): string => `---
title: A light trailer
topic: tow-fit
as-of: 2026-06-15
---

| Fact | Value |
| --- | --- |
| \`vehicle.maxTrailerWeight\` | 5,000 lb |
| \`trailer.dryWeight\` | 6,000 lb |

| Expect | Value |
| --- | --- |
| \`verdict\` | ${verdict} |
`;
const refusedText = caseText('does not fit').replace('6,000 lb', '6,000');

mkdirSync(at('all', 'inner', 'refused'), { recursive: true });
mkdirSync(at('elsewhere'));
mkdirSync(at('shut'));
writeFileSync(at('all', 'a.md'), caseText('does not fit'));
writeFileSync(at('all', 'b.md'), refusedText);
writeFileSync(at('all', 'inner', 'c.md'), caseText('fits'));
writeFileSync(at('all', 'inner', 'refused', 'd.md'), refusedText);
writeFileSync(at('elsewhere', 'e.md'), caseText('does not fit'));
writeFileSync(at('shut.md'), caseText('fits'));
writeFileSync(at('latin.md'), Buffer.from([0x2d, 0xe9, 0x2d]));
symlinkSync('../elsewhere', at('all', 'link'));
symlinkSync('..', at('all', 'inner', 'round'));
symlinkSync('nowhere.md', at('all', 'broken.md'));
symlinkSync('two', at('one'));
symlinkSync('one', at('two'));
chmodSync(at('shut'), 0o000);
chmodSync(at('shut.md'), 0o000);

/** One line a problem, each a sentence, and nothing of a stack. */
function expectSaid({ err }: Ran): void {
  expect(err).not.toMatch(/^\s+at |node:internal|Error:/m);
  for (const line of err.trimEnd().split('\n')) expect(line).toMatch(/^.+: \S.*\.$/);
}

const root = process.getuid?.() === 0;
/** Nobody's rights are withheld from root. */
const asNobody = root ? { uid: 65534, gid: 65534 } : {};
chmodSync(folder, 0o755);

describe('what cannot be opened is told in one sentence, exit code 2', () => {
  const long = 'a'.repeat(300);
  test.each([
    ['a file that is not there', ['judge', at('nowhere.md')], 'there is no such file or folder'],
    ['a folder given as a file', ['judge', folder], 'this is a folder; name a file'],
    ['a broken link', ['judge', at('all', 'broken.md')], 'this link leads to nothing'],
    ['links in a circle', ['judge', at('one')], 'the links there lead round in a circle'],
    ['a file as a folder', ['judge', at('all', 'a.md', 'x.md')], 'is a file and no folder'],
    ['an over-long name', ['judge', at(long)], 'this name is longer than a file can have'],
    ['an over-long path', ['check', at(...Array<string>(40).fill(long))], 'longer than a file'],
    ['text that is no UTF-8', ['judge', at('latin.md')], 'not UTF-8'],
    ['a device without end', ['judge', '/dev/zero'], 'longer than 64 MiB'],
    ['a house file that is a folder', ['judge', at('all', 'a.md'), '--house', folder], 'a folder'],
    ['a name of no letters', ['check', ''], 'an empty name: there is no such file or folder'],
    ['links in a circle, for check', ['check', at('one')], 'round in a circle'],
  ])('%s', async (_, args, says) => {
    const ran = await run(args);
    expect(ran).toMatchObject({ status: 2, out: '' });
    expectSaid(ran);
    expect(ran.err).toContain(says);
    expect(ran.err.split('\n')).toHaveLength(2);
    expect(ran.err.length).toBeLessThan(400);
  });

  test.each(['judge', 'check'])('a file one may not read, by %s', async (command) => {
    chmodSync(await bundled(), 0o755);
    const ran = await run([command, at('shut.md')], asNobody);
    expect(ran).toMatchObject({ status: 2, out: '' });
    expect(ran.err).toBe(`${at('shut.md')}: you have no right to open it.\n`);
  });

  test('a folder one may not read is told, and skipped', async () => {
    const ran = await run(['check', at('shut'), at('elsewhere')], asNobody);
    expect(ran.status).toBe(2);
    expect(ran.out).toContain('1 case, 1 hold, 0 differ');
    expect(ran.err).toBe(`${at('shut')}: you have no right to open it; skipped.\n`);
  });
});

describe('check', () => {
  test('runs what it can, follows links, and says what it refused and left out', async () => {
    const ran = await run(['check', at('all'), '--json']);
    expect(ran.status).toBe(2);
    const checked: readonly { file: string; holds: boolean }[] = JSON.parse(ran.out);
    expect(checked.map(({ file, holds }) => [file, holds])).toEqual([
      [at('all', 'a.md'), true],
      [at('all', 'inner', 'c.md'), false],
      [at('all', 'link', 'e.md'), true],
    ]);
    expectSaid(ran);
    expect(ran.err.trimEnd().split('\n').toSorted()).toEqual([
      `${at('all', 'b.md')}:10:25: \`trailer.dryWeight\`: “6,000” has no unit; write a number with its unit, such as “1,250 lb”.`,
      `${at('all', 'broken.md')}: this link leads to nothing; skipped.`,
      `${at('all', 'inner', 'refused')}: a folder of documents made to be refused; skipped.`,
      `${at('all', 'inner', 'round')}: it leads to ${at('all')}, which was read before; skipped.`,
    ]);
  });

  test('writes an empty array where every document is refused', async () => {
    const ran = await run(['check', at('all', 'b.md'), '--json']);
    expect(ran.status).toBe(2);
    expect(JSON.parse(ran.out)).toEqual([]);
  });

  test('says in text too what it ran', async () => {
    const ran = await run(['check', at('all')]);
    expect(ran.status).toBe(2);
    expect(ran.out).toContain('3 cases, 2 hold, 1 differ');
    expect(ran.err).toContain('b.md:10:25: ');
  });
});

describe('what cannot be written', () => {
  test.each([
    ['rules'],
    ['rules', 'tow-fit', '--json'],
    ['check', at('elsewhere')],
    ['check', at('elsewhere'), '--json'],
    ['judge', at('all', 'a.md')],
    ['--help'],
  ])('a full disk under the output of %s %s %s', async (...args) => {
    const ran = await runIn('"$@" > /dev/full', args.filter(Boolean));
    expect(ran.status).toBe(2);
    expect(ran.err).toBe(
      'standard output: the disk is full; what was to be said is not all there.\n',
    );
  });

  test('a closed pipe ends it quietly', async () => {
    const ran = await runIn('"$@" | head -1', ['rules', 'tow-fit', '--json']);
    expect(ran).toEqual({ status: 0, out: '{\n', err: '' });
  });

  test('a full disk under both outputs is still exit code 2', async () => {
    const ran = await runIn('"$@" > /dev/full 2> /dev/full', ['rules']);
    expect(ran.status).toBe(2);
  });
});
