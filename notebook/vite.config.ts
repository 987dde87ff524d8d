import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { filedCases } from './filed-cases';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here('.'),
  base: './',
  plugins: [
    filedCases(here('../cases')),
    // The built files, kept on the device so that the page opens without a network. The page
    // registers the worker itself, once everything else is done (src/offline).
    VitePWA({
      injectRegister: false,
      registerType: 'prompt',
      manifest: {
        name: 'Tarebook',
        short_name: 'Tarebook',
        description: 'What may tow what, which limit runs out first, and why.',
        lang: 'en',
        start_url: './',
        scope: './',
        display: 'standalone',
        background_color: '#f5f1e8',
        theme_color: '#f5f1e8',
        icons: [{ src: 'mark.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
      },
      workbox: {
        globPatterns: ['**/*.{js,css,html,svg,woff2}'],
        cleanupOutdatedCaches: true,
        clientsClaim: true,
        sourcemap: false,
      },
    }),
  ],
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
