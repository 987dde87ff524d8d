// `npm run results`: a page for every result of every topic, in results/, made of what is built.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { build, giveUp, install, root } from './shared.mjs';

/** Writes them anew; how many there are. */
export async function writeResults() {
  // What is installed and built is there only now.
  const { resultPages } = await import('../results/make.mjs');
  const { topics } = await import('@tarebook/rules');
  const { namesIn, parseFormula } = await import('@tarebook/rules/engine');
  const { readCase } = await import('@tarebook/casebook');
  const engine = { namesIn, parseFormula };
  const { pages } = resultPages({ root, topics: Object.values(topics), engine, readCase });
  const folder = join(root, 'results');
  rmSync(folder, { recursive: true, force: true });
  for (const [path, text] of pages) {
    const file = join(folder, path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  return pages.size;
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  await install();
  const failure = await build(['packages/rules', 'packages/casebook']);
  if (failure !== '') giveUp(failure);
  console.log(`${await writeResults()} pages; begin at results/README.md.`);
}
