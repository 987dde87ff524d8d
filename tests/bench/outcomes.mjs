/**
 * How often each outcome comes over random rigs of two, five, ten and twenty facts, each drawn from what
 * filed cases tell. Wants built packages; `node tests/bench/outcomes.mjs [topic …]`, by hand.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readCase } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { answerNow, InputError } from '@tarebook/rules/engine';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

const asOf = '2026-11-01';
const rigs = 1000;
const counts = [2, 5, 10, 20];
const cases = new URL('../../cases/', import.meta.url).pathname;
const named = process.argv.slice(2);

/** The same numbers for the same seed. */
const generator = xoroshiro128plus(Number(process.env.TAREBOOK_SEED ?? 20_261_101));
const upTo = (count) => uniformInt(generator, 0, count - 1);

/** As many facts of a case as are wanted, or all that it has. */
function someOf(facts, count) {
  const left = Object.entries(facts);
  const kept = [];
  while (kept.length < count && left.length > 0) {
    kept.push(...left.splice(upTo(left.length), 1));
  }
  return Object.fromEntries(kept);
}

function factsOf(id) {
  const folder = join(cases, id);
  const files = readdirSync(folder).filter((name) => name.endsWith('.md'));
  const read = files.map((name) => readCase(readFileSync(join(folder, name), 'utf8')));
  return read.filter(({ troubles }) => troubles.length === 0).map(({ facts }) => facts);
}

function outcomeOf(topic, facts) {
  try {
    return answerNow(topic, { facts, asOf }).outcome;
  } catch (problem) {
    if (problem instanceof InputError) return 'contradicts itself';
    throw problem;
  }
}

for (const id of named.length > 0 ? named : ['tow-fit', 'truck-camper']) {
  const topic = topics[id];
  if (!topic) throw new Error(`There is no topic “${id}”.`);
  const filed = factsOf(id);
  const table = {};
  for (const count of counts) {
    const row = {};
    for (let i = 0; i < rigs / counts.length; i += 1) {
      const outcome = outcomeOf(topic, someOf(filed[upTo(filed.length)], count));
      row[outcome] = (row[outcome] ?? 0) + 1;
    }
    table[`${count} facts`] = row;
  }
  console.log(`${id}: of ${rigs} rigs, a quarter of each`);
  console.table(table);
}
