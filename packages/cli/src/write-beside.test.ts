import { spawn } from 'node:child_process';
import {
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { bundled, run, runIn } from './run.fixture';
import { writeBeside } from './write-beside';

const folder = mkdtempSync(join(tmpdir(), 'tarebook-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const caseText = `---
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
| \`verdict\` | fits |
`;

function casesIn(name: string): { cwd: string; file: string } {
  const cwd = join(folder, name);
  mkdirSync(join(cwd, 'cases'), { recursive: true });
  const file = join(cwd, 'cases', 'light.md');
  writeFileSync(file, caseText);
  return { cwd, file };
}

test('a writer that is killed at any moment leaves one whole text or the other', async () => {
  const file = join(folder, 'killed.md');
  const texts = ['a', 'b'].map((letter) => letter.repeat(4_000_000));
  writeFileSync(file, texts[0] ?? '');
  const module = pathToFileURL(join(await bundled(), 'write-beside.mjs')).href;
  const program = `
    import { writeBeside } from ${JSON.stringify(module)};
    process.stdout.write('begun');
    for (let i = 0; ; i += 1) await writeBeside(${JSON.stringify(file)}, 'ab'[i % 2].repeat(4_000_000));
  `;
  for (let i = 0; i < 12; i += 1) {
    const child = spawn(process.execPath, ['--input-type=module', '--eval', program]);
    const gone = new Promise((resolve) => child.once('exit', resolve));
    await new Promise((resolve) => child.stdout.once('data', resolve));
    await setTimeout(i * 7);
    child.kill('SIGKILL');
    await gone;
    expect(texts).toContain(readFileSync(file, 'utf8'));
  }
});

test('--accept that finds no room on the disk says so, and the case is as it was', async () => {
  const { cwd, file } = casesIn('full');
  const ran = await runIn('ulimit -f 0; exec "$@"', ['--accept'], { cwd }, 'accept');
  expect(ran.status).toBe(2);
  expect(ran.err).toBe('cases/light.md: it stays as it was; a file cannot be that long here.\n');
  expect(readFileSync(file, 'utf8')).toBe(caseText);
  expect(readdirSync(join(cwd, 'cases'))).toEqual(['light.md']);
});

test('--accept rewrites what is expected, through a link too, and leaves nothing beside it', async () => {
  const { cwd, file } = casesIn('accepted');
  const other = join(cwd, 'elsewhere.md');
  writeFileSync(other, caseText, { mode: 0o640 });
  symlinkSync('../elsewhere.md', join(cwd, 'cases', 'linked.md'));
  const ran = await run(['--accept'], { cwd }, 'accept');
  expect(ran).toMatchObject({ status: 0, err: '' });
  const accepted = caseText.replace('| fits |', '| does not fit |');
  expect(readFileSync(file, 'utf8')).toBe(accepted);
  expect(readFileSync(other, 'utf8')).toBe(accepted);
  expect(lstatSync(join(cwd, 'cases', 'linked.md')).isSymbolicLink()).toBe(true);
  expect(statSync(other).mode & 0o777).toBe(0o640);
  expect(readdirSync(join(cwd, 'cases'))).toEqual(['light.md', 'linked.md']);
});

test('a folder that is not there is told, and nothing is made', async () => {
  await expect(writeBeside(join(folder, 'nowhere', 'x.md'), 'x')).rejects.toThrow(
    'it stays as it was; there is no such file or folder.',
  );
});
