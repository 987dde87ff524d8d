import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Options } from 'tsup';
import ts from 'typescript';
import { yardForEsbuild } from '../../tests/run/catalogue.mjs';

const noPaths = fileURLToPath(new URL('./src/engine/condition/no-paths.ts', import.meta.url));

/** Each topic can be imported by itself, under its id. */
const topics: readonly (readonly [string, string])[] = readdirSync(
  new URL('./src/topics', import.meta.url),
  { withFileTypes: true },
)
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => [name, `src/topics/${name}/index.ts`]);

/** A constant whose making may look to a bundler as if it did something: it calls, or reads a part. */
const isMade = (made: ts.Expression, text: string): boolean =>
  !ts.isArrowFunction(made) && !ts.isStringLiteralLike(made) && /[(.]/.test(text);

/** The text of a file, with each of its constants made by a call known to be pure. */
function withPureData(text: string): string {
  const file = ts.createSourceFile('data.ts', text, ts.ScriptTarget.Latest);
  const made = file.statements
    .flatMap((each) => (ts.isVariableStatement(each) ? each.declarationList.declarations : []))
    .flatMap(({ initializer }) => initializer ?? [])
    .filter((each) => isMade(each, each.getText(file)));
  return made.reduceRight((so, each) => {
    const [from, to] = [each.getStart(file), each.end];
    return `${so.slice(0, from)}/* @__PURE__ */ (() => (${so.slice(from, to)}))()${so.slice(to)}`;
  }, text);
}

/**
 * A rule set is data, but made by calls and of parts of other data, and so are tables of the engine; a
 * bundler must take either for something that may have an effect. Told that it has none, it leaves out
 * every rule set that a program does not ask, and all of the engine that it does not use.
 */
const pureData: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'pure-data',
  setup(build) {
    build.onLoad({ filter: /\/packages\/rules\/src\/.*\.ts$/ }, async ({ path, suffix }) => ({
      contents: withPureData(await readFile(path, 'utf8')),
      loader: 'ts',
      ...(suffix === '?judging' && { pluginData: judgingOnly }),
    }));
  },
};

/** What of a topic's own files stands beside an answer; `judging` in the sources leaves the same out. */
const besideAnswers = /^\.\/(asked|askings|everybody|how|called|changes)$/;

/**
 * What the index exports of a rule set only judges, so that a bundler has no need to take the rest:
 * each topic's own file once more, with nothing in place of what stands beside an answer.
 */
const judgingOnly: NonNullable<Options['esbuildPlugins']>[number] = {
  name: 'judging-only',
  setup(build) {
    build.onResolve({ filter: /^\.\/topics\/[a-z-]+\/index$/ }, ({ path, resolveDir }) => ({
      path: join(resolveDir, `${path}.ts`),
      suffix: '?judging',
    }));
    build.onResolve({ filter: besideAnswers }, ({ pluginData }) =>
      pluginData === judgingOnly ? { path: 'beside', namespace: 'nothing' } : undefined,
    );
    build.onLoad({ filter: /.*/, namespace: 'nothing' }, () => ({
      contents:
        'export const askings = undefined, everybody = askings, how = askings, called = askings, changes = askings;',
    }));
  },
};

const entries = {
  index: 'src/index.ts',
  quantity: 'src/quantity/index.ts',
  engine: 'src/engine/index.ts',
  // Named as an entry to stand in a file of its own, which a bundler can leave out whole.
  'json-rules-engine': 'src/engine/condition/library.ts',
  ...Object.fromEntries(topics),
};

/** The declarations that the compiler has written before: made of the sources here, they take ten times as long. */
const declared = Object.fromEntries(
  Object.entries(entries).map(([name, path]) => [
    name,
    path.replace(/^src\//, '.types/').replace(/\.ts$/, '.d.ts'),
  ]),
);

export default defineConfig({
  entry: entries,
  format: ['esm', 'cjs'],
  // Entries share what they have in common in either format: a topic brings its code to the one engine.
  splitting: true,
  dts: { entry: declared, compilerOptions: { ignoreDeprecations: '6.0' } },
  target: 'es2022',
  clean: true,
  // json-rules-engine is shipped inside, without the path language that conditions never use.
  noExternal: ['json-rules-engine'],
  esbuildPlugins: [judgingOnly, pureData, yardForEsbuild],
  esbuildOptions(options) {
    options.alias = { 'jsonpath-plus': noPaths };
  },
});
