// What a program that asks one topic of the whole package costs in a browser, by each bundler.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import { build as esbuild, transform } from 'esbuild';
import { rollup } from 'rollup';
import { build as vite } from 'vite';
import webpack from 'webpack';

const judged = 'globalThis.judge = (asked) => answerNow(towFit, asked);';
const programs = {
  whole: `import { answerNow, towFit } from '@tarebook/rules'; ${judged}`,
  parts: `import { answerNow } from '@tarebook/rules/engine'; import { towFit } from '@tarebook/rules/tow-fit'; ${judged}`,
};

/** The index has of each topic what judges; was 81.7 while it had all of it, and a check that authors need. */
const mostKiB = 60;
/** A topic's own entry has the whole of it: what is said to everybody, what may be changed, what people call it. */
const mostWhole = 64;

const byBundler = {
  async esbuild(file) {
    const { outputFiles } = await esbuild({
      ...{ entryPoints: [file], bundle: true, minify: true, write: false },
      ...{ format: 'esm', target: 'es2022', logLevel: 'silent' },
    });
    return outputFiles[0].text;
  },
  async rollup(file) {
    const bundle = await rollup({ input: file, plugins: [nodeResolve()], onwarn: () => {} });
    const { output } = await bundle.generate({ format: 'es', inlineDynamicImports: true });
    // As the module it is, so that its own names are shortened too, as the other bundlers do.
    const asModule = { minify: true, target: 'es2022', format: 'esm' };
    const { code } = await transform(output[0].code, asModule);
    return code;
  },
  async vite(file, root) {
    const { output } = await vite({
      ...{ root, configFile: false, logLevel: 'silent' },
      build: { write: false, target: 'es2022', rollupOptions: { input: file } },
    });
    return output.map(({ code = '' }) => code).join('');
  },
  async webpack(file, root, away) {
    const options = {
      ...{ mode: 'production', context: root, entry: file, target: 'web' },
      output: { path: away, filename: 'packed.js' },
    };
    await new Promise((resolve, reject) => {
      webpack(options, (problem, stats) => {
        if (problem || stats?.hasErrors()) reject(problem ?? new Error(stats.toString()));
        else resolve();
      });
    });
    return readFileSync(join(away, 'packed.js'), 'utf8');
  },
};

/** KiB after gzip, by bundler and program. */
export async function measured(root) {
  const away = mkdtempSync(join(root, 'node_modules', '.cache-sizes-'));
  try {
    const found = {};
    for (const [bundler, pack] of Object.entries(byBundler)) {
      found[bundler] = {};
      for (const [name, text] of Object.entries(programs)) {
        const file = join(away, `${name}.mjs`);
        writeFileSync(file, text);
        const code = await pack(file, root, away);
        if (!code.includes('judge')) throw new Error(`${bundler} left the program out.`);
        found[bundler][name] = Number((gzipSync(code, { level: 9 }).length / 1024).toFixed(1));
      }
    }
    return found;
  } finally {
    rmSync(away, { recursive: true, force: true });
  }
}

/** Resolves with how many bundlers keep to it, and what the others come to. */
export async function sizes(root) {
  const found = Object.entries(await measured(root));
  const over = found.filter(([, { whole, parts }]) => whole > mostKiB || parts > mostWhole);
  const says = over.map(
    ([bundler, { whole, parts }]) =>
      `${bundler}: ${whole} KiB by the index, ${parts} by its parts; ${mostKiB} and ${mostWhole} are the most.`,
  );
  return { passed: found.length - over.length, failed: over.length, says: says.join('\n') };
}
