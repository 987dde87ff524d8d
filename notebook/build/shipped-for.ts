import { createServer } from 'vite';
import { yardForVite } from '../../tests/run/catalogue.mjs';
import { ownTopicsForVite } from './own-topics.ts';

/** The rules and the reader as the build itself runs them: see shipped.ts. */
type Shipped = typeof import('./shipped.ts');

const loaded = new Map<string, Promise<Shipped>>();

/**
 * Loads them once, whoever asks: one that still loaded while another judged every case would wait
 * longer for its next module than it is allowed to, on a machine with much else to do.
 *
 * @param root the page's own folder
 */
export function shippedFor(root: string): Promise<Shipped> {
  const run = loaded.get(root) ?? load(root);
  loaded.set(root, run);
  return run;
}

async function load(root: string): Promise<Shipped> {
  const server = await createServer({
    configFile: false,
    root,
    plugins: [yardForVite(), ownTopicsForVite()],
    appType: 'custom',
    logLevel: 'error',
    server: { middlewareMode: true, watch: null, hmr: false, ws: false },
    optimizeDeps: { noDiscovery: true },
    ssr: {
      noExternal: [/^@tarebook\//],
      resolve: {
        conditions: ['source', 'module', 'import', 'default'],
        externalConditions: ['node', 'import', 'default'],
      },
    },
  });
  try {
    return (await server.ssrLoadModule('/build/shipped.ts')) as Shipped;
  } finally {
    await server.close();
  }
}
