import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  base: './',
  resolve: {
    conditions: ['source', 'module', 'browser', 'production', 'import', 'default'],
    alias: {
      // The page reads Markdown and never writes it from a tree.
      'mdast-util-to-markdown': here('./src/no-writing.ts'),
      'jsonpath-plus': here('../packages/rules/src/engine/condition/no-paths.ts'),
    },
  },
  build: { target: 'es2022', outDir: 'dist', emptyOutDir: true },
  server: { fs: { allow: [here('..')] } },
});
