import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DuckDBInstance } from '@duckdb/node-api';
import { answerNow, towFit } from '@tarebook/rules';
import { readCatalogue } from '@tarebook/sweep';
import { expect, test } from 'vitest';
import { bundled, run } from './run.fixture';

const seeds = fileURLToPath(new URL('../../../seeds/', import.meta.url));
const text = (file: string): string => readFileSync(join(seeds, file), 'utf8');
const scratch = (): string => mkdtempSync(join(tmpdir(), 'tarebook-sweep-'));
const day = ['--as-of', '2026-11-01'];
const byName = {
  '--vehicles': join(seeds, 'vehicles.csv'),
  '--trailers': join(seeds, 'trailers.csv'),
};
const seeded = [...Object.entries(byName).flat(), ...day];

const caseText = `---
title: Two people and their things
topic: tow-fit
---

| \`load.occupants\` | Weight |
| --- | --- |
| Driver | 180 lb |
| Passenger | 150 lb |

| Fact | Value | Read from |
| --- | --- | --- |
| \`hitch.distribution\` | yes | dealer |
| \`vehicle.gvwr\` | 6,000 lb | door |
`;

test('every pair comes out as a case of its own does, vehicle by vehicle', {
  timeout: 240_000,
}, async () => {
  const folder = scratch();
  const [out, file] = [join(folder, 'pairs.csv'), join(folder, 'case.md')];
  writeFileSync(file, caseText);
  const { status, out: said } = await run([
    'sweep',
    ...seeded,
    '--case',
    file,
    '--out',
    out,
    '--json',
  ]);
  expect(status).toBe(0);
  const { vehicles, trailers } = readCatalogue({
    'vehicles.csv': text('vehicles.csv'),
    'trailers.csv': text('trailers.csv'),
  });
  const [head, ...lines] = readFileSync(out, 'utf8').trim().split('\n');
  expect(head).toBe('vehicle,trailer,outcome,binding,left_lo,left_hi,unit');
  expect(lines.length).toBe(vehicles.length * trailers.length);
  expect(JSON.parse(said).pairs).toBe(lines.length);
  const counts: Record<string, number> = {};
  const facts = {
    'load.occupants': [{ weight: '180 lb' }, { weight: '150 lb' }],
    'hitch.distribution': 'yes',
  };
  const wanted = vehicles.flatMap((vehicle) =>
    trailers.map((trailer) => {
      const asked = { facts: { ...facts, ...vehicle.facts, ...trailer.facts }, asOf: '2026-11-01' };
      const { outcome, binding, limits } = answerNow(towFit, asked);
      counts[outcome] = (counts[outcome] ?? 0) + 1;
      const left = limits.find(({ id }) => id === binding)?.headroom;
      const room = left ? [left.lo, left.hi, left.unit] : ['', '', ''];
      return [vehicle.name, trailer.name, outcome, binding ?? '', ...room].join(',');
    }),
  );
  expect(lines).toEqual(wanted);
  expect(JSON.parse(said).counts).toMatchObject(counts);
  expect(Object.keys(counts).length).toBeGreaterThan(2);
});

/** The seeds many times over, each row with a name of its own. */
function many(file: string, times: number): string {
  const [head = '', ...rows] = text(file)
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'));
  const all = Array.from({ length: times }, (_, i) =>
    rows.map((row) => row.replace(/,/, ` no. ${i},`)),
  );
  return [head, ...all.flat(), ''].join('\n');
}

test('stopped, only whole parts are left, and gone on with it ends with the same bytes', {
  timeout: 600_000,
}, async () => {
  const folder = scratch();
  const files = { vehicles: join(folder, 'v.csv'), trailers: join(folder, 't.csv') };
  writeFileSync(files.vehicles, many('vehicles.csv', 16));
  writeFileSync(files.trailers, many('trailers.csv', 20));
  const asked = [
    'sweep',
    '--vehicles',
    files.vehicles,
    '--trailers',
    files.trailers,
    ...day,
    '--out',
  ];
  const [out, other] = [join(folder, 'stopped.csv'), join(folder, 'alone.csv')];
  const child = spawn(process.execPath, [join(await bundled(), 'tarebook.mjs'), ...asked, out]);
  const ended = new Promise<number | null>((resolve) => child.on('exit', resolve));
  const parts = `${out}.parts`;
  const far = () => JSON.parse(readFileSync(join(parts, 'joined.json'), 'utf8'));
  while (child.exitCode === null && !(existsSync(join(parts, 'joined.json')) && far().parts > 0)) {
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  child.kill('SIGINT');
  expect(await ended).toBe(2);
  expect(existsSync(out)).toBe(false);
  expect(readdirSync(parts).every((name) => /^(asked|joined|\d{6})\.(csv|json)$/.test(name))).toBe(
    true,
  );
  const first = readFileSync(join(parts, 'joined.csv'), 'utf8');
  expect(first.endsWith('\n')).toBe(true);
  expect(Buffer.byteLength(first)).toBe(far().bytes);

  const resumed = await run([...asked, out, '--resume', '--json']);
  expect(resumed.status).toBe(0);
  expect(existsSync(parts)).toBe(false);
  const alone = await run([...asked, other, '--json']);
  expect(readFileSync(out, 'utf8')).toBe(readFileSync(other, 'utf8'));
  expect(JSON.parse(resumed.out).counts).toEqual(JSON.parse(alone.out).counts);
});

test('on one thread, two or four the bytes are the same', { timeout: 600_000 }, async () => {
  const folder = scratch();
  const files = { vehicles: join(folder, 'v.csv'), trailers: join(folder, 't.csv') };
  writeFileSync(files.vehicles, many('vehicles.csv', 16));
  writeFileSync(files.trailers, many('trailers.csv', 20));
  const asked = ['sweep', '--vehicles', files.vehicles, '--trailers', files.trailers, ...day];
  const found: { readonly text: string; readonly counts: unknown }[] = [];
  for (const threads of ['1', '2', '4']) {
    const out = join(folder, `${threads}.csv`);
    const {
      status,
      out: said,
      err,
    } = await run([...asked, ...['--threads', threads, '--out', out, '--json']]);
    // How far it is may be told meanwhile.
    expect(status, err).toBe(0);
    found.push({ text: readFileSync(out, 'utf8'), counts: JSON.parse(said).counts });
  }
  const [one, ...others] = found;
  for (const { text: each, counts } of others) {
    expect(each === one?.text).toBe(true);
    expect(counts).toEqual(one?.counts);
  }
  expect(one?.text.split('\n').length).toBeGreaterThan(300_000);
});

test('from Parquet and to Parquet every row is what it is in CSV', {
  timeout: 240_000,
}, async () => {
  const folder = scratch();
  const at = (name: string): string => join(folder, name);
  const sql = async (text: string) => {
    const connection = await (await DuckDBInstance.create(':memory:')).connect();
    return (await connection.runAndReadAll(text)).getRowsJS();
  };
  writeFileSync(at('t.csv'), `${text('trailers.csv').trimEnd()}\n,lost\n`);
  await sql(
    `COPY (SELECT * FROM read_csv('${at('t.csv')}', comment = '#', null_padding = true, all_varchar = true)) TO '${at('t.parquet')}' (FORMAT parquet)`,
  );
  const sweep = (trailers: string, out: string) =>
    run([
      ...['sweep', '--vehicles', byName['--vehicles'], ...day],
      ...['--trailers', at(trailers), '--out', at(out), '--json'],
    ]);
  const [csv, parquet, again] = [
    await sweep('t.csv', 'a.csv'),
    await sweep('t.parquet', 'b.parquet'),
    await sweep('t.parquet', 'c.parquet'),
  ];
  expect([csv.status, parquet.status, again.status], parquet.err).toEqual([0, 0, 0]);
  expect(readFileSync(at('b.parquet')).equals(readFileSync(at('c.parquet')))).toBe(true);
  expect(JSON.parse(parquet.out).counts).toEqual(JSON.parse(csv.out).counts);
  const rows = await sql(`SELECT * FROM read_parquet('${at('b.parquet')}')`);
  const lines = rows.map((row) => row.map((cell) => cell ?? '').join(','));
  expect(lines.join('\n')).toBe(
    readFileSync(at('a.csv'), 'utf8').split('\n').slice(1, -1).join('\n'),
  );
  const { length } = readCatalogue({ 'trailers.csv': text('trailers.csv') }).trailers;
  expect(readFileSync(at('b.refused.csv'), 'utf8')).toMatch(
    new RegExp(`t\\.parquet,${length + 1},.*no name`),
  );
  const compared = await run(['sweep', '--compare', at('a.csv'), at('b.parquet'), '--json']);
  expect(JSON.parse(compared.out)).toMatchObject({ pairs: rows.length, turned: [] });
});

test('what is no Parquet is told in one line', async () => {
  const file = join(scratch(), 'v.parquet');
  writeFileSync(file, 'name,gvwr\n');
  const { status, err } = await run(['sweep', ...seeded.slice(2), '--vehicles', file]);
  expect(status).toBe(2);
  expect(err).toMatch(/v\.parquet: /);
  expect(err.trim().split('\n').length).toBe(1);
});

test('a workbook is told as what it is, in one sentence', async () => {
  const file = join(scratch(), 'v.xlsx');
  writeFileSync(file, 'PK\u0003\u0004\0\0xl/workbook.xml');
  const ran = await run(['sweep', ...seeded.slice(2), '--vehicles', file]);
  expect(ran).toMatchObject({ status: 2, out: '' });
  expect(ran.err).toMatch(/v\.xlsx: it is no text; save it as CSV from the spreadsheet\.\n$/);
});

test.each([
  ['both files', byName['--trailers'], byName['--vehicles'], 'vehicle', 'trailer'],
  ['trailers twice', byName['--trailers'], byName['--trailers'], 'trailer', 'vehicle'],
])('%s in the other’s place are told in one sentence', async (_, vehicles, trailers, has, of) => {
  const out = join(scratch(), 'pairs.csv');
  const files = ['--vehicles', vehicles, '--trailers', trailers, '--out', out];
  const found = await run(['sweep', ...files, ...day]);
  expect(found.status).toBe(2);
  expect(found.err).toMatch(
    new RegExp(`the columns of ${has}s stand in the file of ${of}s \\(\\w+.*\\); .*\\.\n$`),
  );
  expect(found.err.trim().split('\n')).toHaveLength(1);
  expect(existsSync(out)).toBe(false);
});

test('a row that cannot be read is left out and told beside, with its line', async () => {
  const folder = scratch();
  const trailers = join(folder, 't.csv');
  writeFileSync(
    trailers,
    'name,dryWeight,gvwr\nHeron 14,1900,2600\nBittern,heavy,6000\n,1900,2600\n',
  );
  const out = join(folder, 'pairs.csv');
  const { status, err } = await run([
    'sweep',
    '--vehicles',
    byName['--vehicles'],
    '--trailers',
    trailers,
    ...day,
    '--out',
    out,
  ]);
  expect(status).toBe(0);
  expect(err).toMatch(/2 rows were left out/);
  const refused = readFileSync(join(folder, 'pairs.refused.csv'), 'utf8').split('\n');
  expect(refused[0]).toBe('file,line,reason');
  expect(refused[1]).toMatch(/t\.csv,3,.*trailer\.dryWeight/);
  expect(refused[2]).toMatch(/t\.csv,4,.*no name/);
});

test.each([
  ['no vehicles', ['--trailers', byName['--trailers']], /wants --vehicles/],
  [
    'a file that is not there',
    [...seeded.slice(2), '--vehicles', 'nowhere.csv'],
    /nowhere\.csv: there is no such file/,
  ],
  ['a topic without two sides', [...seeded, '--topic', 'tires'], /a sweep is of tow-fit/],
  [
    'an ending that is not written',
    [...seeded, '--out', 'pairs.xyz'],
    /ends in \.csv or \.parquet/,
  ],
  ['no number of threads', [...seeded, '--threads', 'all'], /--threads all: .* from 1 to 64/],
  ['to go on with nothing', [...seeded, '--resume'], /--out/],
  [
    'a file given twice',
    [...seeded, '--vehicles', byName['--vehicles']],
    /^--vehicles is given more than once; give it once\.\n$/,
  ],
])('%s is told in one line', async (_, args, says) => {
  const { status, err, out } = await run(['sweep', ...args]);
  expect([status, out]).toEqual([2, '']);
  expect(err).toMatch(says);
  expect(err.trim().split('\n').length).toBe(1);
});
