import { defineConfig } from 'tsup';

export default defineConfig({
  entry: { tarebook: 'src/tarebook.ts', accept: 'src/accept.ts' },
  format: ['esm'],
  platform: 'node',
  target: 'node20',
  clean: true,
});
