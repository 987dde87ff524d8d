import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const folder = fileURLToPath(new URL('..', import.meta.url));
const manifest = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
const command: string = manifest.bin.tarebook;

test('what npm links as `tarebook` is no product of the build, as npm links before it', () => {
  const made = readFileSync(new URL('../../../.gitignore', import.meta.url), 'utf8').split('\n');
  expect(command.split('/').filter((part) => made.includes(part))).toEqual([]);
  expect(existsSync(join(folder, command))).toBe(true);
});

test('not built yet, the command says so in one sentence', () => {
  const away = mkdtempSync(join(tmpdir(), 'tarebook-unbuilt-'));
  try {
    cpSync(join(folder, command), join(away, command), { recursive: true });
    cpSync(join(folder, 'package.json'), join(away, 'package.json'));
    const { status, stdout, stderr } = spawnSync(process.execPath, [join(away, command), 'rules'], {
      encoding: 'utf8',
    });
    expect({ status, stdout, stderr }).toEqual({
      status: 2,
      stdout: '',
      stderr:
        'Tarebook is not built yet; run `npm start` or `npm run build` in its folder first.\n',
    });
  } finally {
    rmSync(away, { recursive: true, force: true });
  }
});
