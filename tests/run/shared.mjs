// Plain Node, nothing installed: what `npm start` and `npm test` both stand on.

import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { layBeside } from './beside.mjs';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

/** Runs a command; resolves with its exit code and everything it printed. */
export function run(command, args, { env = {}, show = false, seconds = 3600, cwd = root } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd,
      env: { ...process.env, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    let out = '';
    let err = '';
    const timer = setTimeout(() => {
      err += `Stopped: ${command} took longer than ${seconds} seconds.\n`;
      child.kill('SIGKILL');
    }, seconds * 1000);
    child.stdout.setEncoding('utf8').on('data', (chunk) => {
      out += chunk;
      if (show) process.stdout.write(chunk);
    });
    child.stderr.setEncoding('utf8').on('data', (chunk) => {
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

/** Ends with one sentence for the person who ran the command. */
export function giveUp(sentence, code = 1) {
  console.error(sentence);
  process.exit(code);
}

/** Installs what the lock file says, unless that very lock file was installed before. */
export async function install() {
  const [major = 0] = process.versions.node.split('.').map(Number);
  if (major < 20) giveUp(`This is Node ${process.versions.node}; Tarebook needs Node 20 or later.`);
  const lock = readFileSync(join(root, 'package-lock.json'));
  const hash = createHash('sha256').update(lock).digest('hex');
  const mark = join(root, 'node_modules', '.tarebook-lock');
  if (existsSync(mark) && readFileSync(mark, 'utf8') === hash) return;
  console.log('Installing packages …');
  const { code, out, err } = await run('npm', ['ci', '--no-audit', '--no-fund']);
  if (code !== 0) {
    giveUp(`${out}${err}\nThe packages could not be installed; npm says why above.`);
  }
  writeFileSync(mark, hash);
}

export const packages = [
  'packages/rules',
  'packages/casebook',
  'packages/sweep',
  'packages/record',
  'packages/cli',
];

/** Builds one after another, as each stands on those before; '' or what the failing one printed. */
export async function build(workspaces = [...packages, 'notebook']) {
  layBeside(root, packages);
  for (const workspace of workspaces) {
    const { code, out, err } = await run('npm', ['run', 'build', '-w', workspace]);
    if (code !== 0) return `${workspace} does not build:\n${out}${err}`;
  }
  return '';
}
