// All pairs of a yard by every way there is of judging one: the same verdicts first, then the speed.
// Alone: `node tests/bench/sweep.mjs [MOST]`, MOST pairs at the most (10,000,000).
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { answerNow, quickly, towFit } from '@tarebook/rules';
import { conditionRules, levels, readFacts } from '@tarebook/rules/engine';
import { matrixOf, readCatalogue } from '@tarebook/sweep';
import { kernelFrom } from '@tarebook/sweep/kernels';
import kernel from '@tarebook/sweep/tow-fit';
import { Engine } from 'json-rules-engine';

const asOf = '2026-11-01';
const seed = (name) => readFileSync(new URL(`../../seeds/${name}`, import.meta.url), 'utf8');
const invented = readCatalogue({
  'vehicles.csv': seed('vehicles.csv'),
  'trailers.csv': seed('trailers.csv'),
});
const load = {
  'load.occupants': [{ weight: '180 lb' }, { weight: '150 lb' }],
  'trailer.cargo': [{ label: 'A weekend', weight: '300 lb' }],
};

/** As many as wanted, each a little heavier or lighter than the seed it comes of. */
function many(entries, wanted, from) {
  let state = from;
  const random = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  return Array.from({ length: wanted }, (_, i) => {
    const entry = entries[i % entries.length];
    const by = 0.85 + 0.3 * random();
    const facts = Object.entries(entry.facts).map(([id, given]) => {
      const [, pounds] = /^(\d[\d.]*) lb$/.exec(given) ?? [];
      return [id, pounds === undefined ? given : `${Math.round(pounds * by)} lb`];
    });
    return { name: `${entry.name} ${i}`, cells: entry.cells, facts: Object.fromEntries(facts) };
  });
}

const yard = (vehicles, trailers) => ({
  ...invented,
  vehicles: many(invented.vehicles, vehicles, 1),
  trailers: many(invented.trailers, trailers, 2),
});

const secondsOf = (run) => {
  const begun = performance.now();
  run();
  return (performance.now() - begun) / 1000;
};

/** Every pair by kernels; the count of each level, so that nothing is left out. */
function byKernels({ rows }) {
  const counts = levels.map(() => 0);
  for (const { levels: found } of rows(load)) for (const level of found) counts[level] += 1;
  return counts;
}

/** Conditions of an answer that have a number or a word for every name, and those. */
function plainFacts(answer) {
  const found = new Map();
  for (const [name, step] of Object.entries(answer.trace.steps)) {
    if (step.ends && step.ends.lo === step.ends.hi) found.set(name, step.ends.lo);
    else if (['yes', 'no'].includes(step.value)) found.set(name, step.value);
  }
  const names = (c) =>
    (c.all ?? c.any)?.flatMap(names) ?? [c.fact, ...(c.value.fact ? [c.value.fact] : [])];
  const rules = conditionRules(towFit).filter(({ conditions }) =>
    names(conditions).every((name) => found.has(name)),
  );
  return { rules, values: Object.fromEntries(found) };
}

/** Single pairs by the ways that judge one at a time: pairs a second. */
async function oneByOne(catalogue, wanted) {
  const judge = quickly(towFit, { asOf });
  const pairs = catalogue.vehicles
    .flatMap((vehicle) =>
      catalogue.trailers.map((trailer) => ({ ...vehicle.facts, ...trailer.facts, ...load })),
    )
    .filter((_, i) => i % 7 === 0)
    .slice(0, wanted);
  const explained = secondsOf(() => {
    for (const facts of pairs) answerNow(towFit, { facts, asOf });
  });
  const quick = secondsOf(() => {
    for (const facts of pairs) judge(facts);
  });
  const exact = pairs.find((facts) =>
    [...readFacts(towFit, facts).inputs.values()].every(
      (input) => input.kind !== 'number' || input.status !== 'known' || input.lo === input.hi,
    ),
  );
  const answer = answerNow(towFit, { facts: exact, asOf });
  const { rules, values } = plainFacts(answer);
  const stock = new Engine(rules.map(({ conditions, event }) => ({ conditions, event })));
  const times = 200;
  const begun = performance.now();
  for (let i = 0; i < times; i += 1) await stock.run(values);
  const stockSeconds = (performance.now() - begun) / 1000;
  const perSecond = (count, seconds) => Math.round(count / seconds);
  return {
    [`stock json-rules-engine, ${rules.length} conditions on ready numbers`]: perSecond(
      times,
      stockSeconds,
    ),
    'explained answer': perSecond(pairs.length, explained),
    'verdict alone': perSecond(pairs.length, quick),
  };
}

/** Verdicts of the kernels against the explained answer, over a part of all pairs. */
function agree(catalogue) {
  const { vehicles, trailers, rows } = matrix(catalogue);
  let compared = 0;
  for (const { row, levels: found } of rows(load)) {
    for (let column = row % 5; column < trailers.length; column += 5) {
      const facts = { ...vehicles[row].facts, ...trailers[column].facts, ...load };
      const { outcome } = answerNow(towFit, { facts, asOf });
      if (towFit.outcomes[levels[found[column]]].id !== outcome) {
        throw new Error(`${vehicles[row].name} and ${trailers[column].name} come out otherwise.`);
      }
      compared += 1;
    }
  }
  return compared;
}

const matrix = (catalogue) => matrixOf(catalogue, asOf, towFit, kernelFrom(towFit, kernel));

/** The table; every figure is of this one run. */
export async function sweepTable(most = 10_000_000) {
  const compared = agree(yard(60, 60));
  const one = await oneByOne(yard(60, 60), 400);
  const kernels = [];
  for (let pairs = 10_000; pairs <= most; pairs *= 10) {
    const side = Math.sqrt(pairs);
    const [vehicles, trailers] = [Math.round(side), Math.round(pairs / Math.round(side))];
    const catalogue = yard(vehicles, trailers);
    let all;
    const ready = secondsOf(() => {
      all = matrix(catalogue);
    });
    const first = secondsOf(() => byKernels(all));
    let counts;
    const again = secondsOf(() => {
      counts = byKernels(all);
    });
    kernels.push({
      ...{ pairs: vehicles * trailers, 'read, s': ready, 'first, s': first, 'again, s': again },
      'pairs a second': Math.round((vehicles * trailers) / again),
      'memory, MiB': Math.round(process.memoryUsage().rss / 2 ** 20),
      ...Object.fromEntries(levels.map((level, i) => [level, counts[i]])),
    });
  }
  return { compared, 'pairs a second, one at a time': one, 'by kernels, one thread': kernels };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const table = await sweepTable(Number(process.argv[2] ?? 10_000_000));
  console.log(`${table.compared} verdicts compared, all the same.`);
  console.table(table['pairs a second, one at a time']);
  console.table(table['by kernels, one thread']);
}
