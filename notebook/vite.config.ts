import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

const id = 'virtual:filed';

/**
 * The worked cases as `virtual:filed`, so that a case costs its topic's list and its own text:
 *
 *     topic ► list of cases ► text          each arrow a script of its own, loaded when wanted
 *
 * @param folder holds a folder for each topic, and one of refused documents, which are no cases
 */
function filedCases(folder: string): Plugin {
  const within = (...path: string[]) => readdirSync(join(folder, ...path), { withFileTypes: true });
  const topics = () =>
    within()
      .filter((each) => each.isDirectory() && each.name !== 'refused')
      .map(({ name }) => [name, `${id}/${name}`] as const);
  const cases = (topic: string) =>
    within(topic)
      .filter(({ name }) => name.endsWith('.md'))
      .map(({ name }) => [name.slice(0, -3), `${join(folder, topic, name)}?raw`] as const);
  return {
    name: 'filed-cases',
    resolveId: (source) =>
      source === id || source.startsWith(`${id}/`) ? `\0${source}` : undefined,
    load(module) {
      if (!module.startsWith(`\0${id}`)) return undefined;
      const topic = module.slice(id.length + 2);
      const each = (topic === '' ? topics() : cases(topic)).map(
        ([name, path]) => `${JSON.stringify(name)}: () => import(${JSON.stringify(path)})`,
      );
      return `export default { ${each.join(',\n')} };`;
    },
  };
}

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
