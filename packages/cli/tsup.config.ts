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
  // Loaded by whoever asks for them; tsup would take an optional package in.
  external: ['@duckdb/node-api', 'bullmq', 'ioredis', 'wabt'],
  clean: true,
});
