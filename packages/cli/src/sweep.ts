import { createReadStream } from 'node:fs';
import { open, stat } from 'node:fs/promises';
import { readCase } from '@tarebook/casebook';
import { type Topic, towFit } from '@tarebook/rules';
import { dayProblems, type FactsGiven, sayProblem, withHouse } from '@tarebook/rules/engine';
import { type Entry, entriesFrom, type RefusedRow, sweeping } from '@tarebook/sweep/many';
import { BadInput, named, readText, reasonOf, troubleLines } from './files';
import { underFrom } from './house';
import { sayBeside } from './said';
import { cellOf, head, lineOf } from './sweep-lines';
import { type Counts, digestOf, type Parts, partsOf } from './sweep-parts';
import { writeBeside } from './write-beside';

type Flags = Readonly<Record<string, unknown>>;

export type Swept = {
  readonly pairs: number;
  readonly counts: Counts;
  readonly seconds: number;
  /** False where it was stopped before its end. */
  readonly isWhole: boolean;
};

/** So many pairs are gone through before anything is written; of many trailers a row at the least. */
const pairsInPart = 50_000;

const textFlag = (given: Flags, name: string): string | undefined =>
  typeof given[name] === 'string' ? given[name] : undefined;

function fileFrom(given: Flags, name: 'vehicles' | 'trailers'): string {
  const file = textFlag(given, name);
  if (file !== undefined) return file;
  throw new BadInput(`\`tarebook sweep\` wants --${name} FILE.csv.`);
}

/** How a file begins. */
async function openingOf(file: string): Promise<string> {
  const handle = await open(file);
  try {
    const { buffer, bytesRead } = await handle.read(Buffer.alloc(20_000), 0, 20_000, 0);
    return buffer.toString('utf8', 0, bytesRead);
  } finally {
    await handle.close();
  }
}

/** Reads a file of vehicles or trailers as it comes, and says how far it is. */
async function* entriesOf(
  file: string,
  kind: 'vehicle' | 'trailer',
  read: (share: number) => void,
) {
  try {
    const { size } = await stat(file);
    const text = createReadStream(file);
    const opening = await openingOf(file);
    for await (const row of entriesFrom(file, kind, opening, text)) {
      read(row.bytes / Math.max(1, size));
      yield row;
    }
  } catch (problem) {
    if (problem instanceof Error && 'code' in problem && `${problem.code}`.startsWith('CSV_')) {
      throw new BadInput(`${named(file)}: this is no table that can be read; ${problem.message}.`);
    }
    throw new BadInput(`${named(file)}: ${reasonOf(problem)}`);
  }
}

/** What a sweep is asked in: the case's own facts, the day, the dealer's own parameters. */
async function settingFrom(given: Flags) {
  const under = await underFrom(given);
  const file = textFlag(given, 'case');
  const text = file === undefined ? '' : await readText(file);
  const doc = file === undefined ? undefined : readCase(text, under.asOf);
  if (file !== undefined && doc && (doc.troubles.length > 0 || doc.topic?.id !== towFit.id)) {
    throw new BadInput(
      doc.troubles.length > 0
        ? troubleLines(file, doc.troubles)
        : `${named(file)}: a sweep is of tow-fit, and the case is not.`,
    );
  }
  const day = under.asOf ?? doc?.front.asOf ?? new Date().toISOString().slice(0, 10);
  const layer = under.house?.find((each) => each.topic === towFit.id);
  const topic: Topic = layer ? withHouse(towFit, layer) : towFit;
  const [wrong] = dayProblems(topic, day);
  if (wrong) throw new BadInput(sayProblem(wrong));
  const facts: FactsGiven = doc?.facts ?? {};
  return { topic, facts, asOf: day, text, house: JSON.stringify(layer ?? null) };
}

/** What a table without readable rows mostly lacks. */
const firstRow = 'its first row names the columns, one of them `name`';

async function trailersIn(file: string, refused: RefusedRow[]): Promise<readonly Entry[]> {
  const trailers: Entry[] = [];
  for await (const row of entriesOf(file, 'trailer', () => {})) {
    if ('entry' in row) trailers.push(row.entry);
    else refused.push(row.refused);
  }
  if (trailers.length > 0) return trailers;
  throw new BadInput(`${named(file)}: there is no trailer in it that can be read; ${firstRow}.`);
}

/** What is told of a row that was left out, beside the file or on the screen. */
async function tellRefused(out: string | undefined, refused: readonly RefusedRow[]): Promise<void> {
  if (refused.length === 0) return;
  const beside = out?.replace(/(\.csv)?$/i, '.refused.csv');
  if (beside === undefined) {
    await sayBeside(refused.map((r) => `${named(r.file)}:${r.line}: ${r.says}`).join('\n'));
    return;
  }
  const lines = refused.map(({ file, line, says }) =>
    [file, `${line}`, says].map(cellOf).join(','),
  );
  await writeBeside(beside, `${['file,line,reason', ...lines].join('\n')}\n`);
  const rows = refused.length === 1 ? 'One row was' : `${refused.length} rows were`;
  await sayBeside(`${rows} left out; ${named(beside)} says which and why.`);
}

const perSecond = 5000;

/** How far it is and how long it may still take, now and then. */
function progress() {
  const begun = performance.now();
  let told = begun;
  return async (share: number, pairs: number): Promise<void> => {
    const now = performance.now();
    if (now - told < perSecond || share <= 0 || share >= 1) return;
    told = now;
    const left = Math.ceil(((now - begun) * (1 - share)) / share / 1000);
    const shown = `${Math.floor(share * 100)} %`;
    await sayBeside(`${shown} done, ${pairs.toLocaleString('en-US')} pairs, about ${left} s left`);
  };
}

function outFrom(given: Flags): string | undefined {
  const out = textFlag(given, 'out');
  if (out !== undefined && !/\.csv$/i.test(out)) {
    throw new BadInput(`--out ${named(out)}: a sweep writes CSV; name a file that ends in .csv.`);
  }
  if (out === undefined && given.resume)
    throw new BadInput('--resume goes on with a file; name it with --out.');
  return out;
}

/**
 * Every vehicle of one file against every trailer of another, vehicle by vehicle, in parts of whole
 * vehicles: no more is held at a time than one part and the trailers.
 */
export async function sweepAll(given: Flags): Promise<Swept> {
  const topicName = textFlag(given, 'topic') ?? towFit.id;
  if (topicName !== towFit.id) {
    throw new BadInput(`--topic ${named(topicName)}: a sweep is of tow-fit.`);
  }
  const out = outFrom(given);
  const [vehicles, file] = [fileFrom(given, 'vehicles'), fileFrom(given, 'trailers')];
  const begun = performance.now();
  const setting = await settingFrom(given);
  const refused: RefusedRow[] = [];
  const trailers = await trailersIn(file, refused);
  const judged = sweeping({ ...setting, trailers, withRoom: out !== undefined });
  const parts =
    out && (await partsOf(out, await askedIn(setting, vehicles, trailers), given.resume === true));
  const size = Math.max(1, Math.floor(pairsInPart / trailers.length));
  const tell = progress();
  const counts: Record<string, number> = {};
  for (const { id } of Object.values(setting.topic.outcomes)) counts[id] = 0;

  let isStopped = false;
  const stop = () => {
    isStopped = true;
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  let [part, share] = [0, 0];
  const pairsIn = () => Object.values(counts).reduce((a, b) => a + b, 0);
  const flush = async (some: readonly Entry[]): Promise<void> => {
    const found =
      (parts && (await parts.has(part))) || (await written(parts || undefined, part, judged(some)));
    for (const [outcome, n] of Object.entries(found)) counts[outcome] = (counts[outcome] ?? 0) + n;
    part += 1;
    await tell(share, pairsIn());
    // A key pressed meanwhile is heard between two parts.
    await new Promise((resolve) => setImmediate(resolve));
  };
  let some: Entry[] = [];
  for await (const row of entriesOf(vehicles, 'vehicle', (now) => {
    share = now;
  })) {
    if (isStopped) break;
    if ('refused' in row) refused.push(row.refused);
    else some.push(row.entry);
    if (some.length < size) continue;
    await flush(some);
    some = [];
  }
  if (!isStopped && some.length > 0) await flush(some);
  process.removeListener('SIGINT', stop);
  process.removeListener('SIGTERM', stop);
  if (isStopped && out)
    await sayBeside(`Stopped; the same command with --resume goes on where it was.`);
  if (!isStopped) {
    if (part === 0) {
      throw new BadInput(
        `${named(vehicles)}: there is no vehicle in it that can be read; ${firstRow}.`,
      );
    }
    if (parts) await parts.finish(head, part);
    await tellRefused(out, refused);
  }
  const seconds = (performance.now() - begun) / 1000;
  return { pairs: pairsIn(), counts, seconds, isWhole: !isStopped };
}

/** What must be the same for a sweep to be gone on with. */
async function askedIn(
  { topic, asOf, text, house }: Awaited<ReturnType<typeof settingFrom>>,
  vehicles: string,
  trailers: readonly Entry[],
): Promise<string> {
  const { size, mtimeMs } = await stat(vehicles).catch((problem) => {
    throw new BadInput(`${named(vehicles)}: ${reasonOf(problem)}`);
  });
  const digest = digestOf(text, house, JSON.stringify(trailers), vehicles, `${size} ${mtimeMs}`);
  return `${JSON.stringify({ topic: topic.id, rules: topic.version, asOf, digest })}\n`;
}

/** Goes through some vehicles, writes them where they are wanted, and counts. */
async function written(
  parts: Parts | undefined,
  part: number,
  pairs: ReturnType<ReturnType<typeof sweeping>>,
): Promise<Counts> {
  const counts: Record<string, number> = {};
  const lines: string[] = [];
  for (const pair of pairs) {
    counts[pair.outcome] = (counts[pair.outcome] ?? 0) + 1;
    if (parts) lines.push(lineOf(pair));
  }
  if (parts) await parts.write(part, lines.join(''), counts);
  return counts;
}

export const sweptAsJson = ({ pairs, counts, seconds }: Swept): object => ({
  ...{ pairs, counts, seconds: Math.round(seconds * 1000) / 1000 },
});

export function sweptAsText({ pairs, counts, seconds }: Swept): string {
  const said = Object.entries(counts).map(([outcome, n]) => {
    const words = Object.values(towFit.outcomes).find(({ id }) => id === outcome)?.words ?? outcome;
    return `  ${n.toLocaleString('en-US')} ${words}`;
  });
  return [`${pairs.toLocaleString('en-US')} pairs in ${seconds.toFixed(1)} s:`, ...said].join('\n');
}
