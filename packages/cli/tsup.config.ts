import { defineConfig } from 'tsup';

export default defineConfig({
  entry: {
    tarebook: 'src/tarebook.ts',
    accept: 'src/accept.ts',
    'sweep-thread': 'src/sweep-thread.ts',
  },
  format: ['esm'],
  platform: 'node',
  target: 'node20',
  clean: true,
});
