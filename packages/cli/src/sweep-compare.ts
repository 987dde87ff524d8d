import { createReadStream } from 'node:fs';
import { onOneLine } from '@tarebook/casebook';
import { type LedgerEntry, LedgerError, readLedger } from '@tarebook/record';
import { towFit } from '@tarebook/rules/tow-fit';
import { CsvError, parse } from 'csv-parse';
import { columns } from './columns';
import { BadInput, named, readText, reasonOf } from './files';
import { throughCsv } from './parquet';
import { head } from './sweep-lines';

/** How one pair came out in a sweep. */
type Out = {
  readonly outcome: string;
  readonly binding: string;
  readonly left: string;
  readonly unit: string;
};

export type Turned = {
  readonly vehicle: string;
  readonly trailer: string;
  readonly was: Out;
  readonly is: Out;
  /** Answers given that name both. */
  readonly answers: readonly string[];
};

export type Compared = {
  readonly pairs: number;
  readonly turned: readonly Turned[];
  /** Pairs that stand in one of them alone. */
  readonly onlyBefore: number;
  readonly onlyAfter: number;
};

type Line = { readonly vehicle: string; readonly trailer: string; readonly out: Out };

const wanted = head.trim().split(',');

/** The lines of a sweep's file one after another. */
const linesOf = (file: string): AsyncGenerator<Line> =>
  throughCsv(file, (csv) => linesIn(csv, file));

/** One row of a file, with the line on which it ends. */
type Row = { readonly line: number; readonly cells: readonly string[] };

const isRead = (
  row: unknown,
): row is { readonly info: { readonly lines: number }; readonly record: readonly string[] } =>
  typeof row === 'object' && row !== null && 'info' in row && 'record' in row;

async function* rowsIn(csv: string): AsyncGenerator<Row> {
  const rows = parse({ bom: true, info: true, relax_column_count: true });
  const source = createReadStream(csv);
  source.on('error', (problem) => rows.destroy(problem));
  source.pipe(rows);
  for await (const row of rows) {
    if (isRead(row)) yield { line: row.info.lines, cells: row.record };
  }
}

async function* linesIn(csv: string, file: string): AsyncGenerator<Line> {
  let width = 0;
  try {
    for await (const { line, cells } of rowsIn(csv)) {
      if (width === 0 && cells.slice(0, wanted.length).join() !== wanted.join()) {
        throw new BadInput(
          `${named(file)}:${line}: this is no sweep; its columns are ${cells.slice(0, 8).map(onOneLine).join(', ')}, and not ${wanted.join(', ')}.`,
        );
      }
      if (width > 0 && cells.length !== width) {
        throw new BadInput(
          `${named(file)}:${line}: this row has ${cells.length} ${cells.length === 1 ? 'cell' : 'cells'} under ${width} columns.`,
        );
      }
      const [vehicle = '', trailer = '', outcome = '', binding = '', left = '', , unit = ''] =
        cells;
      if (width > 0) yield { vehicle, trailer, out: { outcome, binding, left, unit } };
      width = cells.length;
    }
  } catch (problem) {
    if (problem instanceof BadInput) throw problem;
    if (problem instanceof CsvError) {
      throw new BadInput(`${named(file)}: this is no table that can be read; ${problem.message}.`);
    }
    throw new BadInput(`${named(file)}: ${reasonOf(problem)}.`);
  }
  if (width === 0)
    throw new BadInput(`${named(file)}: there is nothing in it; name a file of a sweep.`);
}

async function ledgerOf(file: string | undefined): Promise<readonly LedgerEntry[]> {
  if (file === undefined) return [];
  try {
    const value: unknown = JSON.parse((await readText(file)).replace(/^\uFEFF/, ''));
    return readLedger(value).entries;
  } catch (problem) {
    if (problem instanceof LedgerError) throw new BadInput(`${named(file)}: ${problem.message}`);
    if (!(problem instanceof SyntaxError)) throw problem;
    throw new BadInput(
      `${named(file)}: this is no JSON; give a ledger, version 1 with its entries.`,
    );
  }
}

/** Answers that name both of a pair, in their words or in the case they stood on. */
function answersOf(entries: readonly LedgerEntry[]) {
  const texts = entries.map(({ id, text, saved }) => ({
    id,
    text: `${text} ${JSON.stringify(saved)}`.toLowerCase(),
  }));
  return (...names: readonly string[]): readonly string[] =>
    texts.flatMap(({ id, text }) =>
      names.every((name) => text.includes(name.toLowerCase())) ? [id] : [],
    );
}

/**
 * Which pairs come out otherwise in one sweep than in another. Both are gone through side by side;
 * what stands elsewhere in the other is held until it comes.
 */
export async function compareSweeps(
  before: string,
  after: string,
  ledger: string | undefined,
): Promise<Compared> {
  const answers = answersOf(await ledgerOf(ledger));
  const [first, second] = [linesOf(before), linesOf(after)];
  const waiting = { was: new Map<string, Line>(), is: new Map<string, Line>() };
  const turned: Turned[] = [];
  let pairs = 0;
  const meet = (line: Line, own: Map<string, Line>, others: Map<string, Line>): void => {
    const key = JSON.stringify([line.vehicle, line.trailer]);
    const other = others.get(key);
    if (!other) {
      own.set(key, line);
      return;
    }
    others.delete(key);
    pairs += 1;
    const [was, is] = own === waiting.is ? [other.out, line.out] : [line.out, other.out];
    if (was.outcome === is.outcome) return;
    const { vehicle, trailer } = line;
    turned.push({ vehicle, trailer, was, is, answers: answers(vehicle, trailer) });
  };
  for (;;) {
    const [a, b] = [await first.next(), await second.next()];
    if (a.done && b.done) break;
    if (!a.done) meet(a.value, waiting.was, waiting.is);
    if (!b.done) meet(b.value, waiting.is, waiting.was);
  }
  return { pairs, turned, onlyBefore: waiting.was.size, onlyAfter: waiting.is.size };
}

const wordsOf = (outcome: string): string =>
  Object.values(towFit.outcomes).find(({ id }) => id === outcome)?.words ?? outcome;

const limits: Readonly<Record<string, { readonly label: string; readonly short?: string }>> =
  towFit.limits;

const roomSaid = ({ binding, left, unit }: Out): string => {
  if (binding === '') return 'nothing binds';
  const { label = binding, short = label } = limits[binding] ?? {};
  if (left === '') return short;
  const amount = Number(left);
  const rounded = Number(Math.abs(amount).toFixed(1));
  const much = rounded === 0 && amount !== 0 ? 'less than 0.1' : rounded.toLocaleString('en-US');
  return `${short}, ${much} ${unit} ${amount < 0 ? 'over' : 'left'}`;
};

/** More lines nobody reads on a screen; --json has all. */
const mostShown = 40;

export function comparedAsText({ pairs, turned, onlyBefore, onlyAfter }: Compared): string {
  const count = (n: number) => n.toLocaleString('en-US');
  const alone = [
    onlyBefore > 0 ? `In the first alone: ${count(onlyBefore)}.` : '',
    onlyAfter > 0 ? `In the second alone: ${count(onlyAfter)}.` : '',
  ].filter((each) => each !== '');
  const given = turned.filter(({ answers }) => answers.length > 0).length;
  const whole = [
    `Of ${count(pairs)} pairs, ${turned.length === 0 ? 'none' : count(turned.length)} turned.`,
    given > 0 ? `Of ${count(given)} of them an answer was given.` : '',
    ...alone,
  ].filter((each) => each !== '');
  const lines = turned
    .slice(0, mostShown)
    .flatMap(({ vehicle, trailer, was, is, answers }) => [
      [vehicle, trailer, `${wordsOf(was.outcome)} → ${wordsOf(is.outcome)}`],
      ['', '', `${roomSaid(was)} → ${roomSaid(is)}`],
      ...(answers.length > 0 ? [['', '', `answered: ${answers.join(', ')}`]] : []),
    ]);
  const more = turned.length - mostShown;
  return [
    whole.join(' '),
    ...(lines.length > 0 ? ['', columns(lines)] : []),
    ...(more > 0 ? [`and ${count(more)} more; --json has them all.`] : []),
  ].join('\n');
}
