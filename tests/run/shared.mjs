// Plain Node, nothing installed: what `npm start` and `npm test` both stand on.
import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** Runs a command in the project; resolves with its exit code and everything it printed. */
export function run(command, args, { env = {}, show = false, seconds = 1800, cwd = root } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let out = '';
    let err = '';
    const timer = setTimeout(() => child.kill('SIGKILL'), seconds * 1000);
    child.stdout.on('data', (chunk) => {
      out += chunk;
      if (show) process.stdout.write(chunk);
    });
    child.stderr.on('data', (chunk) => {
      err += chunk;
      if (show) process.stderr.write(chunk);
    });
    child.on('error', (problem) => {
      clearTimeout(timer);
      resolve({ code: 127, out, err: `${err}${problem.message}\n` });
    });
    child.on('close', (code) => {
      clearTimeout(timer);
      resolve({ code: code ?? 1, out, err });
    });
  });
}

/** A program of an installed package. */
export const bin = (name) => join(root, 'node_modules', '.bin', name);

/** Installs what the lock file says, unless that very lock file was installed before. */
export async function install() {
  const lock = readFileSync(join(root, 'package-lock.json'));
  const hash = createHash('sha256').update(lock).digest('hex');
  const mark = join(root, 'node_modules', '.tarebook-lock');
  if (existsSync(mark) && readFileSync(mark, 'utf8') === hash) return;
  console.log('Installing packages …');
  const { code, out, err } = await run('npm', ['ci', '--no-audit', '--no-fund']);
  if (code !== 0) {
    console.error(`${out}${err}`);
    console.error('The packages could not be installed; npm says why above.');
    process.exit(1);
  }
  writeFileSync(mark, hash);
}

/** Builds packages and page in their order; resolves with what the failing one printed, or ''. */
export async function build() {
  for (const workspace of ['packages/rules', 'packages/casebook', 'packages/cli']) {
    const { code, out, err } = await run('npm', ['run', 'build', '-w', workspace]);
    if (code !== 0) return `${workspace} does not build:\n${out}${err}`;
  }
  return '';
}
