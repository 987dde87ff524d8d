// What the READMEs show, and every entry of the packages, compiled as a stranger’s strict TypeScript.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { run } from '../run/shared.mjs';

/** Both ways in which a project today finds the types of a package. */
const resolutions = {
  bundler: { module: 'esnext', moduleResolution: 'bundler' },
  node16: { module: 'node16', moduleResolution: 'node16' },
};
const strict = {
  ...{ strict: true, noEmit: true, skipLibCheck: false, target: 'es2022' },
  ...{ verbatimModuleSyntax: true, isolatedModules: true, exactOptionalPropertyTypes: true },
};

/** A page knows nothing of Node; a program there has its types. */
const grounds = {
  page: { lib: ['es2023', 'dom', 'dom.iterable'], types: [] },
  node: { lib: ['es2023'], types: ['node'] },
};

/** Every import that a package offers: its entries, and one of each that stands for many. */
const entriesOf = (name, { exports }) =>
  Object.entries(exports).flatMap(([entry, target]) => {
    if (target === null || /\.json$|published/.test(entry)) return [];
    const path = entry.replace('*', 'tow-fit').slice(1);
    return [`${name}${path}`];
  });

/** The programs of a README, by their place in it. */
const blocksOf = (text) =>
  [...text.matchAll(/^```(?:js|ts)\n([\s\S]*?)^```/gm)].map(([, program]) => program);

/**
 * Resolves with a line for each way of compiling: '' where all compiles, else what the compiler says.
 *
 * @param away where the packed packages stand under node_modules
 * @param ours names of the packages
 */
export async function strictly(root, away, ours) {
  const folder = join(away, 'strict');
  mkdirSync(folder, { recursive: true });
  const files = { page: [], node: [] };
  const write = (name, text) => {
    writeFileSync(join(folder, name), text);
    files[/\bnode:|import\.meta\.resolve/.test(text) ? 'node' : 'page'].push(name);
  };
  const readmes = { workspace: join(root, 'README.md') };
  const entries = [];
  for (const name of ours) {
    const of = join(away, 'node_modules', name);
    readmes[name] = join(of, 'README.md');
    entries.push(...entriesOf(name, JSON.parse(readFileSync(join(of, 'package.json'), 'utf8'))));
  }
  let shown = 0;
  for (const [name, file] of Object.entries(readmes)) {
    for (const [i, program] of blocksOf(readFileSync(file, 'utf8')).entries()) {
      write(`${name.replace(/\W+/g, '-')}-${i}.mts`, program);
      shown += 1;
    }
  }
  const imports = entries.map((entry, i) => `import * as entry${i} from '${entry}';\n`);
  const all = entries.map((_, i) => `entry${i}`).join(', ');
  write('entries.mts', `${imports.join('')}export const all = [${all}] as const;\n`);
  const found = {};
  for (const [way, options] of Object.entries(resolutions)) {
    for (const [ground, more] of Object.entries(grounds)) {
      const config = `tsconfig.${way}.${ground}.json`;
      const compilerOptions = { ...strict, ...options, ...more };
      writeFileSync(
        join(folder, config),
        JSON.stringify({ compilerOptions, files: files[ground] }),
      );
      const compiler = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
      const { code, out } = await run('node', [compiler, '-p', config], { cwd: folder });
      found[`${way}, ${ground}`] = code === 0 ? '' : out;
    }
  }
  // A README without programs would pass whatever it said.
  if (shown < 7) found.readmes = `only ${shown} programs stand in the READMEs`;
  return found;
}
