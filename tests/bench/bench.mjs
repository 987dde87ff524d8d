// `npm run bench`: ratios taken side by side in one run; prints a table, writes results.json beside.
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { readCase } from '@tarebook/casebook';
import { answer, answerNow, answerTraced, publish, quickly, spread } from '@tarebook/rules';
import { conditionRules, rulesHolding } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import { Engine } from 'json-rules-engine';
import { Bench } from 'tinybench';
import { measurePage } from './page.mjs';
import { publicodesOf } from './publicodes.mjs';
import { coldImport, gzipOfTopic } from './sizes.mjs';
import { sweepTable } from './sweep.mjs';

const read = (name) =>
  readCase(readFileSync(new URL(`../../cases/tow-fit/${name}.md`, import.meta.url), 'utf8'));
const exact = read('rear-axle-with-bars');
const ranges = read('range-across-the-limit');
const asOf = '2026-11-01';
const all = JSON.parse(JSON.stringify(publish(towFit))).formulas;
const asked = { facts: exact.facts, readFrom: exact.readFrom, asOf };
const { values: found } = answerNow(towFit, asked);
const other = publicodesOf(towFit, all, exact.facts, asOf, found);

/** Both must say the same before their speed means anything. */
function agree() {
  const ours = answerNow(towFit, asked);
  const theirs = other();
  const apart = Object.entries(ours.values).filter(([id, { lo, hi, unit }]) => {
    const factor = unit === 'lb·ft' ? 12 : 1;
    const found = theirs.values.get(id);
    return lo === hi && Math.abs(found - lo * factor) > 1e-6 * Math.max(1, Math.abs(lo));
  });
  if (apart.length > 0) throw new Error(`They differ in ${apart.map(([id]) => id).join(', ')}.`);
  return Object.keys(ours.values).length;
}

/** Conditions whose names all have a number or a word in the trace, and those values. */
function conditionsOf(found) {
  const { steps } = found.trace;
  const named = (name) => {
    const step = steps[name];
    if (step?.ends) return { lo: step.ends.lo, hi: step.ends.hi };
    return step && ['yes', 'no'].includes(step.value) ? { among: [step.value] } : undefined;
  };
  const names = (c) =>
    (c.all ?? c.any)?.flatMap(names) ?? [c.fact, ...(c.value.fact ? [c.value.fact] : [])];
  const rules = conditionRules(towFit).filter(({ conditions }) =>
    names(conditions).every((name) => named(name)),
  );
  const values = new Map(
    rules.flatMap(({ conditions }) => names(conditions)).map((name) => [name, named(name)]),
  );
  return { rules, values };
}

const results = agree();
const { rules, values } = conditionsOf(answerTraced(towFit, asked));
const plain = Object.fromEntries(
  [...values].map(([name, value]) => [name, value.among ? value.among[0] : value.lo]),
);
const stock = new Engine(rules.map(({ conditions, event }) => ({ conditions, event })));

const quick = quickly(towFit, { asOf });
const bench = new Bench({ time: 2000, warmupTime: 500 });
bench
  // The trace is made when it is looked at, so it is looked at; its words when they are read.
  .add('explained answer, exact facts', async () => (await answer(towFit, asked)).trace)
  .add(
    'explained answer, ranges',
    async () =>
      (await answer(towFit, { facts: ranges.facts, readFrom: ranges.readFrom, asOf })).trace,
  )
  .add('every word of that answer read, exact facts', async () =>
    JSON.stringify((await answer(towFit, asked)).trace),
  )
  .add('verdict alone, exact facts', () => quick(exact.facts))
  .add('the same formulas and checks in publicodes', () => other())
  .add(`walk of ${rules.length} conditions`, () => rulesHolding(rules, 'certain', values))
  .add(`stock json-rules-engine, ${rules.length} conditions`, () => stock.run(plain))
  .add('reading a case document', () => readCase(exact.text));
await bench.run();

const ms = bench.tasks.map(({ name, result }) => ({ name, ms: result.latency.mean }));
const at = (start) => ms.find(({ name }) => name.startsWith(start))?.ms ?? Number.NaN;
const begun = performance.now();
spread(towFit, { facts: ranges.facts, asOf }, { draws: 100_000, seed: 1 });
const draws = performance.now() - begun;
const report = {
  machine: `${cpus().length} cores, Node ${process.versions.node}`,
  agreed: `${results} results`,
  milliseconds: Object.fromEntries(ms.map((each) => [each.name, Number(each.ms.toFixed(4))])),
  ratios: {
    'explained answer against publicodes': Number(
      (at('the same formulas') / at('explained answer, exact')).toFixed(2),
    ),
    'verdict alone against publicodes': Number(
      (at('the same formulas') / at('verdict alone')).toFixed(1),
    ),
    'walk against one stock run': Number((at('stock') / at('walk')).toFixed(1)),
  },
  '100,000 draws, ms': Math.round(draws),
  'cold import of one topic over bare Node, ms': coldImport(),
  'one topic for a browser, KiB gzip': await gzipOfTopic('answerNow'),
  'the same with json-rules-engine inside, KiB gzip': await gzipOfTopic('answer'),
  'all pairs of a yard': await sweepTable(),
  page: await measurePage(),
};
writeFileSync(new URL('./results.json', import.meta.url), `${JSON.stringify(report, null, 2)}\n`);
console.log(JSON.stringify(report, null, 2));
process.exit(0);
