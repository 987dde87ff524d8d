// What a topic costs before it answers anything: time to import, bytes in a browser.
import { execFileSync } from 'node:child_process';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';

const root = new URL('../..', import.meta.url).pathname;

function median(run, times = 9) {
  const all = Array.from({ length: times }, run).toSorted((a, b) => a - b);
  return all[(times - 1) / 2];
}

function timed(code) {
  const begun = performance.now();
  execFileSync('node', ['--input-type=module', '-e', code], { cwd: root });
  return performance.now() - begun;
}

/** Median of nine, less that of Node by itself. */
export function coldImport() {
  const bare = median(() => timed(''));
  return Math.round(median(() => timed("await import('@tarebook/rules/tow-fit')")) - bare);
}

/**
 * One topic bundled and compressed.
 *
 * @param answer `answerNow`, which walks the rules, or `answer`, which has json-rules-engine inside
 */
export async function gzipOfTopic(answer) {
  const entry = 'virtual:one-topic';
  const code = `import { ${answer} } from '@tarebook/rules/engine'; import { towFit } from '@tarebook/rules/tow-fit'; globalThis.judge = (asked) => ${answer}(towFit, asked);`;
  const { output } = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    plugins: [
      {
        name: 'one-topic',
        resolveId: (id) => (id === entry ? `\0${entry}` : undefined),
        load: (id) => (id === `\0${entry}` ? code : undefined),
      },
    ],
    build: { write: false, target: 'es2022', rollupOptions: { input: entry } },
  });
  const bytes = output.reduce(
    (sum, { code: js = '' }) => sum + gzipSync(js, { level: 9 }).length,
    0,
  );
  return Number((bytes / 1024).toFixed(1));
}
