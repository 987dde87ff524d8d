// Test files and all they stand on as one file, which a plain Node runs: made in a second, and started
// in half of one, so that a hundred changes of the sources can be tried in an hour.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import * as esbuild from 'esbuild';
import { yardForEsbuild } from '../run/catalogue.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));

const testsOf = (place) =>
  place.endsWith('.ts')
    ? [place]
    : readdirSync(`${root}${place}`, { recursive: true })
        .filter((name) => name.endsWith('.test.ts'))
        .toSorted()
        .map((name) => `${place}/${name}`);

/** Tests find their files beside themselves, also when they stand in one file elsewhere. */
const stayInPlace = {
  name: 'stay-in-place',
  setup(build) {
    build.onLoad({ filter: /\.ts$/ }, ({ path }) => {
      if (path.includes('/node_modules/')) return undefined;
      const here = JSON.stringify(pathToFileURL(path).href);
      const contents = readFileSync(path, 'utf8').replaceAll('import.meta.url', here);
      return { contents, loader: 'ts' };
    });
  },
};

/** Puts the test files of these places together, and tells where; `more` changes sources on the way. */
export async function together(name, places, more = []) {
  const outfile = `${root}node_modules/.mutants/${name}.mjs`;
  const imports = places.flatMap(testsOf).map((file) => `import './${file}';`);
  const contents = [...imports, "import { runAll } from 'vitest';", 'await runAll();'].join('\n');
  await esbuild.build({
    stdin: { contents, resolveDir: root },
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    conditions: ['source'],
    // Packages say that importing them does nothing by itself; importing a test does.
    ignoreAnnotations: true,
    alias: { vitest: `${root}tests/mutants/at-once.mjs` },
    plugins: [yardForEsbuild, ...more, stayInPlace],
    external: ['highs', 'json-rules-engine', 'publicodes', 'logic-solver', 'mathjs', 'ajv'],
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
    logLevel: 'silent',
  });
  return outfile;
}
