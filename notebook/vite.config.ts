import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parse } from 'csv-parse/sync';
import { defineConfig, type Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { yardForVite } from '../tests/run/catalogue.mjs';
import { filedCases } from './build/filed-cases.ts';
import { kernel } from './build/kernel.ts';
import { ownTopicsForVite } from './build/own-topics.ts';

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

const published = here('../packages/rules/published/');

/** The script of a kept version, by its topic; any other by its name. */
function scriptName({ facadeModuleId }: { readonly facadeModuleId?: string | null }): string {
  const [, topic] = /\/rules\/published\/([^/]+)\/[^/]+\.json/.exec(facadeModuleId ?? '') ?? [];
  return topic === undefined ? 'assets/[name]-[hash].js' : `assets/kept/${topic}-[name]-[hash].js`;
}

/** The latest version of each topic says what the page has already, and is never asked for. */
const latestKept = readdirSync(published, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name: topic }) => {
    const versions = readdirSync(`${published}${topic}`).map((file) => file.replace('.json', ''));
    const order = new Intl.Collator('en', { numeric: true });
    return `**/kept/${topic}-${versions.sort(order.compare).at(-1)}-*.js`;
  });

/** The named loads of the seeds as `virtual:loads`, read when the page is built. */
function namedLoads(file: string): Plugin {
  const name = 'virtual:loads';
  return {
    name: 'named-loads',
    resolveId: (source) => (source === name ? `\0${name}` : undefined),
    load(module) {
      if (module !== `\0${name}`) return undefined;
      const rows: unknown = parse(readFileSync(file, 'utf8'), { columns: true, comment: '#' });
      return `export default ${JSON.stringify(rows)};`;
    },
  };
}

/**
 * Has the browser fetch the page's scripts beside the small one that starts them, not after it.
 *
 * @param page the module that draws the page
 */
function besideTheFirst(page: string): Plugin {
  return {
    name: 'beside-the-first',
    transformIndexHtml: {
      order: 'post',
      handler(_, { bundle = {} }) {
        const chunks = Object.values(bundle).filter((each) => each.type === 'chunk');
        const wanted = new Set<(typeof chunks)[number]>();
        const want = (chunk: (typeof chunks)[number] | undefined): void => {
          if (!chunk || chunk.isEntry || wanted.has(chunk)) return;
          wanted.add(chunk);
          for (const name of chunk.imports) want(chunks.find(({ fileName }) => fileName === name));
        };
        want(chunks.find(({ facadeModuleId }) => facadeModuleId === page));
        // The largest first: a browser fetches but a few at a time.
        const inOrder = [...wanted].toSorted((a, b) => b.code.length - a.code.length);
        return inOrder.map(({ fileName }) => ({
          tag: 'link',
          attrs: { rel: 'modulepreload', crossorigin: true, href: `./${fileName}` },
          injectTo: 'head' as const,
        }));
      },
    },
  };
}

/** In a worker there is no document to ask what `&amp;` stands for; the library has a table for it. */
function withoutDocument(): Plugin {
  const name = 'decode-named-character-reference';
  return {
    name: 'without-document',
    enforce: 'pre',
    resolveId: (source) => (source === name ? here(`../node_modules/${name}/index.js`) : undefined),
  };
}

/**
 * What people call the things of a topic is for whoever seeks among the rules, and for the workers
 * that read what people write: a case is judged without those words, a twentieth of its rule set.
 */
function wordsApart(): Plugin {
  const without = '\0words-apart';
  return {
    name: 'words-apart',
    enforce: 'pre',
    resolveId: (source, importer) =>
      source === './called' && /[\\/]topics[\\/][^\\/]+[\\/]index\.ts$/.test(importer ?? '')
        ? without
        : undefined,
    load: (module) => (module === without ? 'export const called = undefined;' : undefined),
  };
}

/** Lit and its first elements, quantities, and the shapes of rule sets. */
const base =
  /node_modules[\\/](@lit|lit|lit-html|lit-element)[\\/](?!.*(unsafe|repeat))|[\\/](quantity[\\/]|engine[\\/]define[\\/]topic\.ts|plain-element\.ts|idle\.ts)/;

/** What judges a case of whatever topic; what only some topics reckon with stays with them. */
const judging =
  /[\\/]engine[\\/](formula[\\/](?!catalogued|dimensions|standing-on|sun)|answer[\\/](?!catalogued|bringing|by-engine|limit-trials|quickly)|condition[\\/](operators|rules|walk)|missing[\\/]|trace[\\/])/;

/** The small parts that a first case is drawn with; each by itself would be a script of its own. */
const drawing =
  /[\\/]notebook[\\/]src[\\/](counter[\\/](fact-row|quantity-field|choice-field|value-typed|case-fold|known|people-steppers)|elements[\\/]marks|sections[\\/](parts|case-view)|state[\\/](refused|people|house|shelf|entry|level|ticket))\.ts$/;

/** The scripts that are here before any part of a page is asked for. */
const everywhere =
  /(^|[\\/])(rolldown-runtime|base|judging|drawing|tare-page|index|live-value)-[^\\/]*\.js$/;

export default defineConfig({
  root: here('.'),
  base: './',
  plugins: [
    filedCases(here('../cases'), here('.')),
    namedLoads(here('../seeds/loads.csv')),
    kernel(here('.')),
    yardForVite(),
    ownTopicsForVite(),
    wordsApart(),
    besideTheFirst(here('./src/tare-page.ts')),
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
        globIgnores: latestKept,
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
      'markdown-table': here('./src/no-writing.ts'),
      'stringify-entities': here('./src/no-writing.ts'),
      'csv-parse/sync': 'csv-parse/browser/esm/sync',
      'jsonpath-plus': here('../packages/rules/src/engine/condition/no-paths.ts'),
    },
  },
  // A worker that judges loads the rule set of its case alone.
  worker: {
    format: 'es',
    plugins: () => [withoutDocument(), kernel(here('.')), yardForVite(), ownTopicsForVite()],
  },
  build: {
    target: 'es2022',
    outDir: 'dist',
    emptyOutDir: true,
    modulePreload: {
      // Where a browser knows no preloading, scripts are fetched when they are imported.
      polyfill: false,
      // What every page has by then is not listed again with each part that stands on it, nor is
      // the part itself: lists of 23 topics and of hundreds of cases would be half names otherwise.
      resolveDependencies: (part, needs) =>
        needs.filter((each) => each !== part && !everywhere.test(each)),
    },
    rolldownOptions: {
      // What every case stands on in two scripts; left alone, it would come in a dozen.
      output: {
        chunkFileNames: scriptName,
        codeSplitting: {
          groups: [
            { name: 'base', test: base },
            { name: 'judging', test: judging },
            { name: 'drawing', test: drawing },
          ],
        },
      },
    },
  },
  server: { fs: { allow: [here('..')] } },
});
