import { fileURLToPath } from 'node:url';
import { defineConfig } from 'tsup';

const noPaths = fileURLToPath(new URL('./src/engine/condition/no-paths.ts', import.meta.url));

export default defineConfig({
  entry: {
    index: 'src/index.ts',
    quantity: 'src/quantity/index.ts',
    engine: 'src/engine/index.ts',
    'tow-fit': 'src/topics/tow-fit/index.ts',
  },
  format: ['esm', 'cjs'],
  dts: { compilerOptions: { ignoreDeprecations: '6.0' } },
  target: 'es2022',
  clean: true,
  // json-rules-engine is shipped inside, without the path language that conditions never use.
  noExternal: ['json-rules-engine'],
  esbuildOptions(options) {
    options.alias = { 'jsonpath-plus': noPaths };
  },
});
