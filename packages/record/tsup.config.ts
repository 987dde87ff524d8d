import { defineConfig } from 'tsup';

export default defineConfig({
  entry: { index: 'src/index.ts' },
  format: ['esm'],
  dts: { compilerOptions: { ignoreDeprecations: '6.0', customConditions: [] } },
  target: 'es2022',
  clean: true,
});
