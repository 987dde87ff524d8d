import { relative } from 'node:path';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { ownTopicsForVite } from '../notebook/build/own-topics.ts';
import { yardForVite } from './run/catalogue.mjs';

/**
 * Libraries are loaded as whoever installs the packages has them, not as their makers do: those
 * that read Markdown check themselves at every step there, and take twice as long.
 */
const asInstalled: Plugin = {
  name: 'as-installed',
  configResolved({ ssr }) {
    const { conditions } = ssr.resolve ?? {};
    if (!conditions) throw new Error('There are no conditions to take development from.');
    const kept = conditions.filter((each) => !each.startsWith('development'));
    conditions.splice(0, conditions.length, ...kept);
  },
};

const root = new URL('..', import.meta.url).pathname;

/**
 * What takes long begins first, so that at the end no core waits for another's last file. How long each
 * took is known after a first run; before it, files go by their size, and those over all cases and over
 * random rigs take long however short they are. Those of single modules fill what is left.
 */
class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const isWide = ({ moduleId }: TestSpecification) =>
      relative(root, moduleId).startsWith('tests/');
    return [...sorted.filter(isWide), ...sorted.filter((each) => !isWide(each))];
  }
}

export default defineConfig({
  plugins: [asInstalled, yardForVite(), ownTopicsForVite()],
  resolve: { conditions: ['source'] },
  ssr: { resolve: { conditions: ['source'] } },
  test: {
    root,
    sequence: { sequencer: LongestFirst },
    include: ['packages/*/src/**/*.test.ts', 'notebook/src/**/*.test.ts', 'tests/**/*.test.ts'],
    exclude: ['**/node_modules/**', '**/dist/**', 'tests/browser/**'],
    testTimeout: 120_000,
    // Files share the modules they load; all that stays there from one to the next is caches.
    isolate: false,
    maxWorkers: 2,
    // Random rigs are made, judged and forgotten: with little room a fifth of the time is clearing up.
    execArgv: ['--max-semi-space-size=64'],
  },
});
