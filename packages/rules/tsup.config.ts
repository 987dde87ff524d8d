import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'tsup';

const noPaths = fileURLToPath(new URL('./src/engine/condition/no-paths.ts', import.meta.url));

/** Each topic can be imported by itself, under its id. */
const topics = readdirSync(new URL('./src/topics', import.meta.url), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => [name, `src/topics/${name}/index.ts`]);

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    quantity: 'src/quantity/index.ts',
    engine: 'src/engine/index.ts',
    // Named as an entry to stand in a file of its own, which a bundler can leave out whole.
    'json-rules-engine': 'src/engine/condition/library.ts',
    ...Object.fromEntries(topics),
  },
  format: ['esm', 'cjs'],
  // Entries share what they have in common in either format: a topic brings its code to the one engine.
  splitting: true,
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
  target: 'es2022',
  clean: true,
  // json-rules-engine is shipped inside, without the path language that conditions never use.
  noExternal: ['json-rules-engine'],
  esbuildOptions(options) {
    options.alias = { 'jsonpath-plus': noPaths };
  },
});
