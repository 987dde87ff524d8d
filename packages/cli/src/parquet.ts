import { mkdtemp, rename, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { BadInput, named } from './files';

export const isParquet = (file: string): boolean => /\.parquet$/i.test(file);

/** The database is loaded by whoever asks for Parquet, and by nobody else. */
async function databaseFor(file: string, scratch: string) {
  const loaded = await import('@duckdb/node-api').catch(() => undefined);
  if (!loaded) {
    throw new BadInput(
      `${named(file)}: Parquet is read and written by the package @duckdb/node-api, which is not installed; run \`npm install @duckdb/node-api\`, or name a file that ends in .csv.`,
    );
  }
  // One thread, so that the same rows are the same bytes; little memory, however many there are.
  const settings = { threads: '1', memory_limit: '256MB', temp_directory: scratch };
  const instance = await loaded.DuckDBInstance.create(':memory:', settings);
  const connection = await instance.connect();
  return {
    run: async (sql: string): Promise<void> => {
      await connection.run(sql).catch((problem: unknown) => {
        const says = problem instanceof Error ? (problem.message.split('\n')[0] ?? '') : '';
        throw new BadInput(`${named(file)}: ${says.slice(0, 200)}`);
      });
    },
    close: (): void => {
      connection.closeSync();
      instance.closeSync();
    },
  };
}

const quoted = (text: string): string => `'${text.replaceAll("'", "''")}'`;

async function withDatabase(
  file: string,
  scratch: string,
  sql: (run: (sql: string) => Promise<void>) => Promise<void>,
): Promise<void> {
  const { run, close } = await databaseFor(file, scratch);
  try {
    await sql(run);
  } finally {
    close();
  }
}

/** The rows of a Parquet file as a CSV file, a line for each, for as long as it is used. */
export async function* throughCsv<T>(
  file: string,
  use: (csv: string) => AsyncIterable<T>,
): AsyncGenerator<T> {
  if (!isParquet(file)) {
    yield* use(file);
    return;
  }
  const scratch = await mkdtemp(join(tmpdir(), 'tarebook-'));
  try {
    const csv = join(scratch, 'rows.csv');
    await withDatabase(file, scratch, (run) =>
      run(
        `COPY (SELECT regexp_replace(CAST(COLUMNS(*) AS VARCHAR), '[\\r\\n]+', ' ', 'g') FROM read_parquet(${quoted(file)})) TO ${quoted(csv)} (FORMAT csv, HEADER true)`,
      ),
    );
    yield* use(csv);
  } finally {
    await rm(scratch, { recursive: true, force: true });
  }
}

/** Columns of a sweep's file that are numbers; all others are words. */
const isNumber = (column: string): boolean => /^(?:left|chance)_/.test(column);

/** Columns of a sweep's file, as a table has them. */
const columnsOf = (head: string): string =>
  `{${head
    .trim()
    .split(',')
    .map((column) => `'${column}': '${isNumber(column) ? 'DOUBLE' : 'VARCHAR'}'`)
    .join(', ')}}`;

/** Checks at the beginning that a file of Parquet can be written at the end. */
export const parquetAtHand = (file: string): Promise<void> =>
  withDatabase(file, tmpdir(), (run) => run('SELECT 1'));

/** What was joined becomes Parquet beside it, and then the file that was wanted. */
export const asParquet = (file: string, head: string) => async (joined: string) => {
  const part = join(dirname(joined), 'joined.parquet');
  await withDatabase(file, dirname(joined), (run) =>
    run(
      `COPY (SELECT * FROM read_csv(${quoted(joined)}, header = true, auto_detect = false, delim = ',', quote = '"', escape = '"', columns = ${columnsOf(head)})) TO ${quoted(part)} (FORMAT parquet, COMPRESSION zstd)`,
    ),
  );
  await rename(part, file);
};
