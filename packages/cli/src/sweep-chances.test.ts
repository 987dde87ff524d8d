import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DuckDBInstance } from '@duckdb/node-api';
import { expect, test } from 'vitest';
import { run } from './run.fixture';

const scratch = (): string => mkdtempSync(join(tmpdir(), 'tarebook-chances-'));
const day = ['--as-of', '2026-11-01'];

test('with --spread the chance of each outcome stands beside each pair, the same on any threads', {
  timeout: 240_000,
}, async () => {
  const folder = scratch();
  const [v, t] = [join(folder, 'v.csv'), join(folder, 't.csv')];
  writeFileSync(
    v,
    'name,maxTrailerWeight,maxTongueCarried,placardPayload\nOusel,4500,450,900–1100 lb\nCorrie,6000,600,1150\n',
  );
  writeFileSync(
    t,
    'name,dryWeight,gvwr,dryTongueWeight,brakes,propane\nHeron,3500–4100 lb,5000,420 ± 40 lb,electric,0\nBittern,2200,3500,260,electric,0\n',
  );
  const asked = ['sweep', '--vehicles', v, '--trailers', t, ...day];
  const drawn = [...asked, '--spread', '400', '--seed', '5'];
  const [out, other] = [join(folder, 'chances.csv'), join(folder, 'threads.csv')];
  expect((await run([...drawn, '--out', out])).status).toBe(0);
  expect((await run([...drawn, '--out', other, '--threads', '2'])).status).toBe(0);
  expect(readFileSync(other, 'utf8')).toBe(readFileSync(out, 'utf8'));
  const [head, ...lines] = readFileSync(out, 'utf8').trim().split('\n');
  expect(head).toBe(
    'vehicle,trailer,outcome,binding,left_lo,left_hi,unit,chance_fits,chance_fits_with_care,chance_fits_if,chance_cannot_say,chance_does_not_fit',
  );
  expect(lines).toHaveLength(4);
  for (const line of lines) {
    const chances = line.split(',').slice(7).map(Number);
    expect(chances).toHaveLength(5);
    expect(chances.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
  }
  const heron = lines[0]?.split(',').slice(7).map(Number) ?? [];
  expect(Math.max(...heron)).toBeLessThan(1);

  // A sweep without chances and one with them are compared as any two are.
  const plain = join(folder, 'plain.csv');
  expect((await run([...asked, '--out', plain])).status).toBe(0);
  const compared = await run(['sweep', '--compare', plain, out]);
  expect(compared.out).toContain('Of 4 pairs, none turned.');

  const parquet = join(folder, 'chances.parquet');
  expect((await run([...drawn, '--out', parquet])).status).toBe(0);
  const database = await (await DuckDBInstance.create(':memory:')).connect();
  const sum = await database.runAndReadAll(
    `SELECT sum(chance_fits + chance_fits_with_care + chance_fits_if + chance_cannot_say + chance_does_not_fit) FROM read_parquet('${parquet}')`,
  );
  expect(Number(sum.getRows()[0]?.[0])).toBeCloseTo(4, 9);
  const nowhere = await run(drawn);
  expect([nowhere.status, nowhere.err]).toEqual([2, expect.stringContaining('--out')]);
});
