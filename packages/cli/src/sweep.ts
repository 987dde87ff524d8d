import { stat } from 'node:fs/promises';
import { levels, type SpreadOptions } from '@tarebook/rules/engine';
import { towFit } from '@tarebook/rules/tow-fit';
import type { RefusedRow, Swept } from '@tarebook/sweep/many';
import { BadInput, named, reasonOf } from './files';
import { spreadFrom } from './house';
import { asParquet, isParquet, parquetAtHand } from './parquet';
import { sayBeside } from './said';
import { head, headWith } from './sweep-lines';
import { asCsv, type Counts, digestOf, type Parts, partsOf, together } from './sweep-parts';
import { progress } from './sweep-progress';
import { queueDoer } from './sweep-queue';
import { entriesOf, nothingIn, plain, tellRefused, trailersIn } from './sweep-read';
import { type SweepSetting, settingFrom, textFlag, topicIn } from './sweep-setting';
import { type Doer, doerOf } from './sweep-threads';

type Flags = Readonly<Record<string, unknown>>;

export type SweepDone = {
  readonly pairs: number;
  readonly counts: Counts;
  readonly seconds: number;
  /** False where it was stopped before its end. */
  readonly isWhole: boolean;
};

/** So many pairs are judged before anything is written; of many trailers a row at the least. */
const pairsInPart = 256_000;

const mostThreads = 64;

function fileFrom(given: Flags, name: 'vehicles' | 'trailers'): string {
  const file = textFlag(given, name);
  if (file !== undefined) return file;
  throw new BadInput(`\`tarebook sweep\` wants --${name} FILE, CSV or Parquet.`);
}

function outFrom(given: Flags): string | undefined {
  const out = textFlag(given, 'out');
  if (out !== undefined && !/\.csv$/i.test(out) && !isParquet(out)) {
    throw new BadInput(
      `--out ${named(out)}: a sweep writes CSV or Parquet; name a file that ends in .csv or .parquet.`,
    );
  }
  if (out === undefined && given.resume)
    throw new BadInput('--resume goes on with a file; name it with --out.');
  return out;
}

function threadsFrom(given: Flags): number {
  const text = textFlag(given, 'threads') ?? '1';
  const threads = Number(text);
  if (/^\d+$/.test(text) && threads >= 1 && threads <= mostThreads) return threads;
  throw new BadInput(`--threads ${named(text)}: give a whole number from 1 to ${mostThreads}.`);
}

/** Vehicles a part at a time, and how far the file is read behind each. */
async function* partsIn(file: string, size: number, refused: RefusedRow[]) {
  let [share, at] = [0, 0];
  let some: Swept[] = [];
  for await (const row of entriesOf(file, 'vehicle', (now) => {
    share = now;
  })) {
    if ('refused' in row) refused.push(row.refused);
    else some.push(plain(row.entry));
    if (some.length < size) continue;
    yield { at, vehicles: some, share };
    [at, some] = [at + 1, []];
  }
  if (some.length > 0) yield { at, vehicles: some, share };
}

/** Hears the keys that stop a sweep, until it is told to listen no more. */
function stopping() {
  let isAsked = false;
  const stop = () => {
    isAsked = true;
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  return {
    isAsked: () => isAsked,
    over: () => {
      process.removeListener('SIGINT', stop);
      process.removeListener('SIGTERM', stop);
    },
  };
}

type Done = { readonly counts: Counts; readonly parts: number };

/** All parts, as many at once as the doer takes; they are joined in their order. */
async function goThrough(
  parts: AsyncIterable<{ at: number; vehicles: readonly Swept[]; share: number }>,
  doer: Doer,
  into: Parts | undefined,
  isStopped: () => boolean,
): Promise<Done> {
  const tell = progress();
  let counts: Counts = into?.joined().counts ?? {};
  let done = 0;
  const under: { readonly share: number; readonly counts: Promise<Counts> }[] = [];
  const takeFirst = async (): Promise<void> => {
    const first = under.shift();
    if (!first) return;
    const found = await first.counts;
    counts = together(counts, found);
    done += 1;
    if (into) await into.join(found);
    await tell(
      first.share,
      Object.values(counts).reduce((a, b) => a + b, 0),
    );
    // A key pressed meanwhile is heard between two parts.
    await new Promise((resolve) => setImmediate(resolve));
  };
  for await (const { at, vehicles, share } of parts) {
    if (isStopped()) break;
    if (into && at < into.joined().parts) {
      done += 1;
      continue;
    }
    const before = await into?.waiting(at);
    const found = before ? Promise.resolve(before) : doer.does(at, vehicles);
    // Whoever waits for it says what went wrong; until then it is nobody's.
    found.catch(() => {});
    under.push({ share, counts: found });
    if (under.length >= doer.atOnce) await takeFirst();
  }
  while (under.length > 0) await takeFirst();
  return { counts, parts: done };
}

/**
 * Every vehicle of one file against every trailer of another, vehicle by vehicle, in parts of whole
 * vehicles: no more is held at a time than some parts and the trailers.
 */
export async function sweepAll(given: Flags): Promise<SweepDone> {
  const topicName = textFlag(given, 'topic') ?? towFit.id;
  if (topicName !== towFit.id) {
    throw new BadInput(`--topic ${named(topicName)}: a sweep is of tow-fit.`);
  }
  const [out, threads] = [outFrom(given), threadsFrom(given)];
  const spread = spreadFrom(given);
  if (spread && out === undefined) {
    throw new BadInput('--spread tells chances beside each pair; name a file with --out.');
  }
  const [vehicles, file] = [fileFrom(given, 'vehicles'), fileFrom(given, 'trailers')];
  const begun = performance.now();
  if (out && isParquet(out)) await parquetAtHand(out);
  const setting = await settingFrom(given);
  const refused: RefusedRow[] = [];
  const trailers = await trailersIn(file, refused);
  const asked = await askedIn(setting, vehicles, trailers, spread);
  const heads = spread ? headWith(outcomesOf(setting)) : head;
  const into = out ? await partsOf(out, asked, given.resume === true, heads) : undefined;
  const size = Math.max(1, Math.floor(pairsInPart / (spread ? 8 : 1) / trailers.length));
  const plan = { ...setting, trailers, folder: into?.folder, spread };
  const queue = textFlag(given, 'queue');
  const doer = await (queue === undefined ? doerOf(plan, threads) : queueDoer(plan, queue));
  const stop = stopping();
  const done = await goThrough(partsIn(vehicles, size, refused), doer, into, stop.isAsked).finally(
    () => {
      stop.over();
      return doer.close();
    },
  );
  const isWhole = !stop.isAsked();
  if (!isWhole && out) {
    await sayBeside('Stopped; the same command with --resume goes on where it was.');
  }
  if (isWhole) {
    if (done.parts === 0) throw nothingIn(vehicles, 'vehicle', refused);
    if (into && out) await into.finish(isParquet(out) ? asParquet(out, heads) : asCsv(out));
    await tellRefused(out, refused);
  }
  const none = outcomesOf(setting).map((id) => [id, 0]);
  const counts = together(Object.fromEntries(none), done.counts);
  const pairs = Object.values(counts).reduce((a, b) => a + b, 0);
  return { pairs, counts, seconds: (performance.now() - begun) / 1000, isWhole };
}

/** The best first. */
const outcomesOf = (setting: SweepSetting): readonly string[] => {
  const { outcomes } = topicIn(setting);
  return levels.map((level) => outcomes[level].id);
};

/** What must be the same for a sweep to be gone on with. */
async function askedIn(
  { asOf, facts, layer }: SweepSetting,
  vehicles: string,
  trailers: readonly Swept[],
  spread: SpreadOptions | undefined,
): Promise<string> {
  const { size, mtimeMs } = await stat(vehicles).catch((problem) => {
    throw new BadInput(`${named(vehicles)}: ${reasonOf(problem)}.`);
  });
  const told = [facts, layer, trailers, pairsInPart, ...(spread ? [spread] : [])].map((each) =>
    JSON.stringify(each),
  );
  const digest = digestOf(...told, vehicles, `${size} ${mtimeMs}`);
  return `${JSON.stringify({ topic: towFit.id, rules: towFit.version, asOf, digest })}\n`;
}

export const sweptAsJson = ({ pairs, counts, seconds }: SweepDone): object => ({
  ...{ pairs, counts, seconds: Math.round(seconds * 1000) / 1000 },
});

export function sweptAsText({ pairs, counts, seconds }: SweepDone): string {
  const said = Object.entries(counts).map(([outcome, n]) => {
    const words = Object.values(towFit.outcomes).find(({ id }) => id === outcome)?.words ?? outcome;
    return `  ${n.toLocaleString('en-US')} ${words}`;
  });
  return [`${pairs.toLocaleString('en-US')} pairs in ${seconds.toFixed(1)} s:`, ...said].join('\n');
}
