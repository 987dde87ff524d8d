// All pairs of a yard by every way there is of judging one: the same verdicts first, then the speed.
// Alone: `node tests/bench/sweep.mjs [MOST]`, MOST pairs at the most (10,000,000).
import { once } from 'node:events';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { answerNow, quickly, towFit } from '@tarebook/rules';
import { byHand } from './by-hand.mjs';
import { asOf, setting } from './decision.mjs';
import { duckdb, publicodes, stock } from './others.mjs';
import { assemble, atOnce, shortOf, sweepOf, yard } from './sweep-setup.mjs';

/** The least of some runs, in seconds. */
async function secondsOf(times, run) {
  let least = Infinity;
  for (let i = 0; i < times; i += 1) {
    const begun = performance.now();
    await run();
    least = Math.min(least, (performance.now() - begun) / 1000);
  }
  return least;
}

/** The same by what the processor did for this program: on a busy machine a clock tells of the others too. */
async function processorSeconds(times, run) {
  let least = Infinity;
  for (let i = 0; i < times; i += 1) {
    const before = process.cpuUsage();
    await run();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1e6);
  }
  return least;
}

const factsOf = ({ vehicles, trailers }, row, column) => ({
  ...{ ...setting, ...vehicles[row].facts, ...trailers[column].facts },
});

/** Every way against the loop by hand, pair by pair; a difference ends the bench. */
async function agree(side) {
  const all = yard(side, side);
  const { told } = all;
  const wanted = new Uint8Array(side * side);
  byHand(told.vehicles, told.trailers)(0, side, wanted);
  let compared = 0;
  const same = (name, at, level) => {
    compared += 1;
    if (level === wanted[at]) return;
    throw new Error(`${name}: pair ${at} comes out as ${level}, and not ${wanted[at]}.`);
  };
  for (const [name, more] of [
    ['plain', {}],
    ['SIMD', { assemble }],
  ]) {
    const run = await sweepOf(all, more);
    for (let again = 0; again < 2; again += 1) {
      run(0, side, (from, levels) => {
        levels.forEach((level, i) => {
          same(`kernels, ${name}`, from * side + i, shortOf[level]);
        });
      });
    }
  }
  const database = await duckdb(told.vehicles, told.trailers, 1);
  (await database.levels()).forEach((level, at) => {
    same('DuckDB', at, level);
  });
  database.close();
  const [engine, rules] = [
    stock(told.vehicles, told.trailers),
    publicodes(told.vehicles, told.trailers),
  ];
  const levelOf = { fits: 0, 'fits-with-care': 1, 'does-not-fit': 2 };
  const quick = quickly(towFit, { asOf });
  for (let at = 0; at < side * side; at += 37) {
    const [row, column] = [Math.floor(at / side), at % side];
    const facts = factsOf(all, row, column);
    same('explained answer', at, levelOf[answerNow(towFit, { facts, asOf }).outcome]);
    same('verdict alone', at, levelOf[towFit.outcomes[quick(facts).level].id]);
    same('json-rules-engine', at, await engine(row, column));
    if (at % 5 === 0) same('publicodes', at, rules(row, column));
  }
  return {
    compared,
    fits: [0, 1, 2].map((level) => wanted.filter((each) => each === level).length),
  };
}

/** Ways that judge one pair after another: pairs a second. */
async function oneByOne(side) {
  const all = yard(side, side);
  const { told } = all;
  const [engine, rules] = [
    stock(told.vehicles, told.trailers),
    publicodes(told.vehicles, told.trailers),
  ];
  const quick = quickly(towFit, { asOf });
  const over = async (wanted, judge) => {
    const pairs = Array.from({ length: wanted }, (_, i) => (i * 37) % (side * side));
    const run = async () => {
      for (const at of pairs) await judge(Math.floor(at / side), at % side);
    };
    return wanted / (await secondsOf(2, run));
  };
  return {
    'publicodes, two checks and their formulas': await over(100, rules),
    'stock json-rules-engine, ready numbers': await over(3000, engine),
    'explained answer': await over(150, (row, column) =>
      answerNow(towFit, { facts: factsOf(all, row, column), asOf }),
    ),
    'verdict alone': await over(400, (row, column) => quick(factsOf(all, row, column))),
  };
}

/** Half of the yard in each of two threads, made ready before. */
async function onTwo(rows, columns) {
  const half = Math.ceil(rows / 2);
  const threads = [
    [0, half],
    [half, rows],
  ].map(
    ([from, to]) =>
      new Worker(new URL('./sweep-second.mjs', import.meta.url), {
        workerData: { rows, columns, from, to },
      }),
  );
  await Promise.all(threads.map((thread) => once(thread, 'message')));
  const seconds = await secondsOf(3, async () => {
    const done = threads.map((thread) => once(thread, 'message'));
    for (const thread of threads) thread.postMessage('go');
    await Promise.all(done);
  });
  await Promise.all(threads.map((thread) => thread.terminate()));
  return seconds;
}

/** Ways that judge a yard at once: pairs a second. */
async function wholeYard(rows, columns) {
  const all = yard(rows, columns);
  const { told } = all;
  const pairs = rows * columns;
  const levels = new Uint8Array(atOnce * columns);
  const hand = byHand(told.vehicles, told.trailers);
  const byHandSeconds = await secondsOf(3, () => {
    for (let at = 0; at < rows; at += atOnce) hand(at, Math.min(at + atOnce, rows), levels);
  });
  const found = { 'loop by hand, one thread': byHandSeconds };
  found['loop by hand, by processor time'] = await processorSeconds(4, () => {
    for (let at = 0; at < rows; at += atOnce) hand(at, Math.min(at + atOnce, rows), levels);
  });
  for (const [name, more] of [
    ['plain', {}],
    ['SIMD', { assemble }],
  ]) {
    const run = await sweepOf(all, more);
    found[`kernels, ${name}, one thread, reading included`] = await secondsOf(3, () =>
      run(0, rows, () => {}),
    );
    const ready = await sweepOf(all, more, true);
    found[`kernels, ${name}, one thread`] = await secondsOf(4, () => ready(0, rows, () => {}));
    found[`kernels, ${name}, by processor time`] = await processorSeconds(4, () =>
      ready(0, rows, () => {}),
    );
  }
  found['kernels, SIMD, two threads'] = await onTwo(rows, columns);
  for (const threads of [1, 2]) {
    const database = await duckdb(told.vehicles, told.trailers, threads);
    found[`DuckDB cross join, ${threads === 1 ? 'one thread' : 'two threads'}`] = await secondsOf(
      2,
      () => database.counts(),
    );
    database.close();
  }
  return Object.fromEntries(
    Object.entries(found).map(([name, seconds]) => [name, pairs / seconds]),
  );
}

/** What more pairs cost: seconds, and the most memory ever had, of one process each. */
async function byCount(most) {
  const table = [];
  for (let pairs = 10_000; pairs <= most; pairs *= 10) {
    const columns = Math.min(1000, pairs / 100);
    const rows = pairs / columns;
    const run = await sweepOf(yard(rows, columns), { assemble });
    const seconds = await secondsOf(2, () => run(0, rows, () => {}));
    table.push({ pairs, seconds, 'nanoseconds a pair': (seconds / pairs) * 1e9 });
  }
  return table;
}

const rounded = (value) => (value >= 100 ? Math.round(value) : Number(value.toPrecision(3)));

/** The table; every figure is of this one run. */
export async function sweepTable(most = 10_000_000) {
  const { compared, fits } = await agree(120);
  const speeds = { ...(await oneByOne(120)), ...(await wholeYard(Math.ceil(most / 1000), 1000)) };
  const at = (start) => speeds[Object.keys(speeds).find((name) => name.startsWith(start))];
  const simd = speeds['kernels, SIMD, one thread'];
  return {
    'verdicts compared, all the same': compared,
    'of them fit, with care, not': fits,
    'pairs a second': Object.fromEntries(
      Object.entries(speeds).map(([name, speed]) => [name, Math.round(speed)]),
    ),
    'one thread against the loop by hand': rounded(simd / at('loop by hand')),
    'the same by processor time': rounded(
      speeds['kernels, SIMD, by processor time'] / speeds['loop by hand, by processor time'],
    ),
    'two threads against DuckDB on two': rounded(
      speeds['kernels, SIMD, two threads'] / speeds['DuckDB cross join, two threads'],
    ),
    'one thread against stock json-rules-engine': rounded(simd / at('stock')),
    'by count of pairs': (await byCount(most)).map((row) =>
      Object.fromEntries(Object.entries(row).map(([name, value]) => [name, rounded(value)])),
    ),
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const table = await sweepTable(Number(process.argv[2] ?? 10_000_000));
  const { 'pairs a second': speeds, 'by count of pairs': counts, ...rest } = table;
  console.log(rest);
  console.table(speeds);
  console.table(counts);
  process.exit(0);
}
