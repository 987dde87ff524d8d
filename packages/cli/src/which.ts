import { join } from 'node:path';
import { askedOf, readCase } from '@tarebook/casebook';
import type { Topic } from '@tarebook/rules';
import { type FactsGiven, isRows } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import { towFit } from '@tarebook/rules/tow-fit';
import {
  type Catalogue,
  type Entry,
  nameSaid,
  needSaid,
  readCatalogue,
  readWish,
  sidesOf,
  sleepsSaid,
  type Which,
  type WhichRow,
  type Wish,
  which,
  whichSaid,
} from '@tarebook/sweep';
import { shippedFolders, textOf } from './catalogue-folder';
import { columns as inColumns } from './columns';
import { BadInput, named, readText, troubleLines } from './files';
import { asBadInput, underFrom } from './house';
import { noneWished } from './none-wished';

async function catalogueIn(folder: string): Promise<Catalogue | undefined> {
  const [vehicles, trailers, loads, columns] = await Promise.all(
    ['vehicles.csv', 'trailers.csv', 'loads.csv', 'columns.csv'].map((file) =>
      textOf(folder, file),
    ),
  );
  if (vehicles === undefined && trailers === undefined && loads === undefined) return undefined;
  return readCatalogue({
    ...(vehicles !== undefined && { 'vehicles.csv': vehicles }),
    ...(trailers !== undefined && { 'trailers.csv': trailers }),
    ...(loads !== undefined && { 'loads.csv': loads }),
    ...(columns !== undefined && { 'columns.csv': columns }),
  });
}

/** A dealer's catalogue, or the invented one where none is named. */
export async function catalogueFrom(given: string | undefined): Promise<Catalogue> {
  if (given !== undefined) {
    const found = await catalogueIn(given);
    if (found) return found;
    throw new BadInput(
      `${given}: there is no vehicles.csv, trailers.csv or loads.csv in it; name the folder that has them.`,
    );
  }
  for (const folder of shippedFolders) {
    const found = await catalogueIn(folder);
    if (found) return found;
  }
  throw new BadInput('The invented catalogue is not there; name one with --catalogue.');
}

/** Why there is nothing in a catalogue to set a case against, in one sentence. */
async function nothingIn(
  { refused }: Catalogue,
  against: Which['against'],
  given: string | undefined,
): Promise<string> {
  const file = `${against}.csv`;
  const path = named(join(given ?? '', file));
  const [first, ...more] = refused.filter((row) => row.file === file);
  if (first && more.length === 0) return `${path}:${first.line}: ${first.says}`;
  if (first) {
    const rows = more.length + 1;
    return `${path}: none of its ${rows} rows can be taken; the first, line ${first.line}: ${first.says}`;
  }
  if (given !== undefined && (await textOf(given, file)) === undefined) {
    return `${named(given)}: there is no ${file} in it, and the case is set against ${against}.`;
  }
  return `${path}: there is no row in it; its first row names the columns, and one of these is the name.`;
}

/** `--where axles=2`, `--where 'length<=24'` */
export function whereFrom(all: readonly string[]): readonly Wish[] {
  return all.map((text) => {
    const wish = readWish(text);
    if (wish) return wish;
    throw new BadInput(
      `--where wants COLUMN=VALUE, such as axles=2, or COLUMN<=NUMBER; “${text}” is none.`,
    );
  });
}

type Flags = Readonly<Record<string, unknown>>;

const texts = (flag: unknown): readonly string[] =>
  Array.isArray(flag) ? flag.filter((each) => typeof each === 'string') : [];

export type WhichFound = {
  readonly topic: Topic;
  readonly found: Which;
  /** Why nothing of the catalogue is as wished; undefined where something is. */
  readonly none: string | undefined;
  /** How many people ride along, a dog not among them. */
  readonly people: number;
  readonly refused: Catalogue['refused'];
};

const columnsOf = (entries: readonly Entry[]): readonly string[] => [
  ...new Set(entries.flatMap(({ cells }) => Object.keys(cells))),
];

/** A column that what is asked about does not have is refused, and what it has is told. */
function refuseColumns(catalogue: Catalogue, sides: Which['against'], where: readonly Wish[]) {
  const columns = columnsOf(catalogue[sides]);
  const strange = where.map(({ column }) => column).find((column) => !columns.includes(column));
  if (strange === undefined) return;
  const other = sides === 'trailers' ? 'vehicles' : 'trailers';
  const stands = columnsOf(catalogue[other]).includes(strange)
    ? `“${strange}” is a column of the ${other}, and this case is set against the ${sides}; they have`
    : `the ${sides} have no column “${strange}”; they have`;
  throw new BadInput(`--where: ${stands} ${columns.join(', ')}.`);
}

/** A case without a trailer against the catalogue's trailers, one without a vehicle against its vehicles. */
export async function whichOf(file: string, given: Flags): Promise<WhichFound> {
  const doc = readCase(await readText(file));
  if (doc.troubles.length > 0 || !doc.topic) throw new BadInput(troubleLines(file, doc.troubles));
  if (doc.topic.id !== towFit.id) {
    throw new BadInput(`${file}: which ones is asked of tow-fit; the case is of ${doc.topic.id}.`);
  }
  const { topic, asked } = askedOf(doc, await underFrom(given));
  const sides = sidesOf(asked.facts);
  if (sides === 'both' || sides === 'neither')
    throw new BadInput(`${named(file)}: ${sideSays[sides]}`);
  const folder = typeof given.catalogue === 'string' ? given.catalogue : undefined;
  const catalogue = await catalogueFrom(folder);
  if (catalogue[sides].length === 0) throw new BadInput(await nothingIn(catalogue, sides, folder));
  const where = whereFrom(texts(given.where));
  refuseColumns(catalogue, sides, where);
  try {
    const found = which(catalogue, { ...asked, topic, where });
    const kind = sides === 'trailers' ? 'trailer' : 'vehicle';
    const none = found.rows.length === 0 ? noneWished(kind, catalogue[sides], where) : undefined;
    return { topic, found, none, people: peopleIn(asked.facts), refused: catalogue.refused };
  } catch (problem) {
    throw asBadInput(file, problem);
  }
}

/** Each row is somebody; a row for several says no number. */
function peopleIn(facts: FactsGiven): number {
  const rows = facts['load.occupants'];
  if (!isRows(rows)) return 0;
  return rows.filter(({ label }) => !/\bdogs?\b/i.test(typeof label === 'string' ? label : ''))
    .length;
}

const sideSays = {
  both: 'it tells of a vehicle and of a trailer; leave one of them out, and the catalogue fills it in.',
  neither: 'it tells of no vehicle and of no trailer; tell of one of them.',
} as const;

const open = (value: number): number | null => (Number.isFinite(value) ? value : null);

export function whichAsJson({ topic, found, none, people }: WhichFound): object {
  const said = whichSaid(topic, found);
  const { sentence, next } = none === undefined ? said : { ...said, sentence: none };
  const name = found.against === 'trailers' ? 'trailer' : 'vehicle';
  return {
    against: found.against,
    sentence,
    count: found.count,
    next,
    sleeps: sleepsSaid(topic, found, people),
    rows: found.rows.map((row) => ({
      [name]: row.name,
      outcome: row.outcome,
      binding: row.binding,
      left: row.left && { lo: open(row.left.lo), hi: open(row.left.hi), unit: row.left.unit },
      needs: row.needs,
    })),
  };
}

/**
 * What a row stands or falls by: what stops it, else the limit that binds. What is left beside a
 * “cannot say” would only reassure.
 */
function decidedBy(topic: Topic, { answer, binding }: WhichRow): { label: string; left: string } {
  const { limits, findings } = answer;
  const stops = limits.filter(({ state }) => state === 'stop');
  const [worst] = stops.toSorted((a, b) => b.roomUsed.lo - a.roomUsed.lo);
  const finding = findings.find(({ level }) => level === 'stop');
  if (!worst && finding) return { label: finding.label, left: '' };
  const isOpen = answer.outcome === topic.outcomes.unknown.id;
  const limit = worst ?? (isOpen ? undefined : limits.find(({ id }) => id === binding));
  return limit
    ? { label: limit.label, left: show(limit.headroom, limit.headroom.unit) }
    : { label: '', left: '' };
}

const lineOf = (topic: Topic, row: WhichRow): string[] => {
  const { name, entry, words, needs } = row;
  const { label, left } = decidedBy(topic, row);
  const asks = Object.entries(needs).map(([fact, need]) => needSaid(topic, fact, need));
  return [nameSaid(name, entry), words, label, left, asks.join('; ')];
};

export function whichAsText({ topic, found, none, people }: WhichFound): string {
  if (none !== undefined) return none;
  const { sentence, next } = whichSaid(topic, found);
  const lines = found.rows.map((row) => lineOf(topic, row));
  const sleeps = sleepsSaid(topic, found, people);
  return [sentence, sleeps, next, '', inColumns(lines, [3])]
    .filter((part, i) => part !== '' || i === 3)
    .join('\n');
}
