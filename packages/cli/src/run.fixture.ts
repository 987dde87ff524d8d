import { type SpawnSyncOptions, type SpawnSyncReturns, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'tsup';
import { yardForEsbuild } from '../../../tests/run/catalogue.mjs';

const modules = fileURLToPath(new URL('../../../node_modules/', import.meta.url));

let made: Promise<string> | undefined;

/** The command line as it is in the sources, bundled where it finds what it imports. */
async function bundle(): Promise<string> {
  const folder = join(modules, '.cache', `tarebook-cli-${process.env.VITEST_POOL_ID ?? 0}`);
  const sources = ['tarebook', 'accept', 'write-beside', 'sweep-thread'];
  await build({
    config: false,
    entry: Object.fromEntries(
      sources.map((name) => [name, fileURLToPath(new URL(`${name}.ts`, import.meta.url))]),
    ),
    outDir: folder,
    outExtension: () => ({ js: '.mjs' }),
    format: ['esm'],
    target: 'node20',
    noExternal: [/^@tarebook\//],
    esbuildPlugins: [yardForEsbuild],
    // They find their own files beside themselves.
    external: ['piscina', '@duckdb/node-api', 'bullmq', 'ioredis', 'wabt'],
    esbuildOptions: (options) => {
      options.conditions = ['source'];
    },
    // Packages of the older module format ask for what Node brings by `require`.
    banner: {
      js: "import { createRequire as requiring } from 'node:module'; const require = requiring(import.meta.url);",
    },
    silent: true,
  });
  return folder;
}

export const bundled = (): Promise<string> => {
  made ??= bundle();
  return made;
};

export type Ran = { readonly status: number | null; readonly out: string; readonly err: string };

const told = ({ status, stdout, stderr }: SpawnSyncReturns<string | Buffer>): Ran => ({
  status,
  out: String(stdout),
  err: String(stderr),
});

/** Runs a program of the command line as its own process. */
export async function run(
  args: readonly string[],
  options: SpawnSyncOptions = {},
  program = 'tarebook',
): Promise<Ran> {
  const file = join(await bundled(), `${program}.mjs`);
  return told(spawnSync(process.execPath, [file, ...args], options));
}

/** The same behind a line of shell, in which "$@" is the command. */
export async function runIn(
  shell: string,
  args: readonly string[],
  options: SpawnSyncOptions = {},
  program = 'tarebook',
): Promise<Ran> {
  const file = join(await bundled(), `${program}.mjs`);
  return told(spawnSync('bash', ['-c', shell, 'bash', process.execPath, file, ...args], options));
}
