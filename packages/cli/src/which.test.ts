import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { run } from './run.fixture';

const folder = mkdtempSync(join(tmpdir(), 'which-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A catalogue of these files. */
function catalogue(name: string, files: Readonly<Record<string, string | Uint8Array>>): string {
  const at = join(folder, name);
  mkdirSync(at);
  for (const [file, text] of Object.entries(files)) writeFileSync(join(at, file), text);
  return at;
}

const asked = join(folder, 'asked.md');
writeFileSync(
  asked,
  '---\ntitle: A hybrid\ntopic: tow-fit\nas-of: 2026-11-01\n---\n\n| Fact | Value |\n| --- | --- |\n| `vehicle.maxTrailerWeight` | 3,500 lb |\n',
);

const whole = 'name,dryWeight,gvwr\nSallow 13,1890,2600\n';

describe('a catalogue of which nothing can be set against a case is one sentence, exit code 2', () => {
  test.each<readonly [string, Readonly<Record<string, string | Uint8Array>>, string]>([
    ['a workbook', { 'trailers.csv': Buffer.from('PK\u0003\u0004\0\0sheet') }, 'it is no text'],
    ['an empty file', { 'trailers.csv': '' }, 'there is no row in it'],
    ['heads alone', { 'trailers.csv': 'name,dryWeight,gvwr\n' }, 'there is no row in it'],
    ['no names', { 'trailers.csv': 'a,b\n1,2\n' }, 'no column is the name'],
    ['a quote left open', { 'trailers.csv': 'name,gvwr\n"Sallow,2600\n' }, 'never closed'],
    [
      'no row that can be taken',
      { 'trailers.csv': 'name,dryWeight\nSallow 13,heavy\nSallow 14,light\n' },
      'line 2',
    ],
    ['only the other side', { 'vehicles.csv': 'name,gvwr\nA car,4000\n' }, 'no trailers.csv'],
    [
      'the vehicles in its place',
      { 'trailers.csv': 'name,maxTrailerWeight,gvwr\nA car,3500,4000\n' },
      'the columns of vehicles stand in the file of trailers (maxTrailerWeight)',
    ],
    ['loads alone', { 'loads.csv': 'name,list,label,weight\n' }, 'no trailers.csv'],
  ])('%s', async (name, files, says) => {
    const ran = await run(['which', asked, '--catalogue', catalogue(name, files), '--json']);
    expect(ran).toMatchObject({ status: 2, out: '' });
    expect(ran.err).toContain(says);
    expect(ran.err).toMatch(/^[^\n]+trailers\.csv[^\n]+\.\n$/);
  });

  test('a folder where a file of it is to be', async () => {
    const at = catalogue('a folder for a file', { 'trailers.csv': whole });
    mkdirSync(join(at, 'vehicles.csv'));
    const ran = await run(['which', asked, '--catalogue', at]);
    expect(ran.status).toBe(2);
    expect(ran.err).toMatch(/^[^\n]+vehicles\.csv: [^\n]+\.\n$/);
  });
});

test('what of it can be read is judged, and the rest is told with line and reason', async () => {
  const at = catalogue('some rows', { 'trailers.csv': `${whole}Sallow 14,heavy,2700\n` });
  const ran = await run(['which', asked, '--catalogue', at]);
  expect(ran.status).toBe(0);
  expect(ran.out).toContain('Sallow 13');
  expect(ran.err).toMatch(/^trailers\.csv:3: [^\n]+heavy[^\n]+\.\n$/);
});

describe('where none is as wished, what the columns have is told', () => {
  const many =
    'name,body,length,dryWeight,gvwr\nSallow 13,folding,13,1890,2600\nOsier 21,tent-end,21,3890,5600\nMill 30,toy hauler,30,5890,7600\n';
  const both = { 'trailers.csv': many, 'vehicles.csv': 'name,group,gvwr\nA car,hybrid,4000\n' };
  const at = catalogue('kinds', both);
  test.each([
    [
      ['body=hybrid'],
      'The catalogue has no such trailer: none has body=hybrid; the column body has folding, tent-end and toy hauler.',
    ],
    [
      ['length<=9'],
      'The catalogue has no such trailer: none has length<=9; the column length goes from 13 to 30.',
    ],
    [
      ['body=folding', 'length>=20'],
      'The catalogue has no such trailer: some have body=folding and length>=20 each for itself, but none has all of it.',
    ],
  ])('%s', async (wishes, says) => {
    const where = wishes.flatMap((wish) => ['--where', wish]);
    const ran = await run(['which', asked, '--catalogue', at, ...where]);
    expect(ran).toMatchObject({ status: 0, err: '', out: `${says}\n` });
    const json = await run(['which', asked, '--catalogue', at, ...where, '--json']);
    expect(JSON.parse(json.out)).toMatchObject({ sentence: says, rows: [] });
  });

  test('a column of the other side is refused, and those of this side are told', async () => {
    const ran = await run(['which', asked, '--catalogue', at, '--where', 'group=hybrid']);
    expect(ran).toMatchObject({ status: 2, out: '' });
    expect(ran.err).toBe(
      '--where: “group” is a column of the vehicles, and this case is set against the trailers; they have name, body, length, dryWeight, gvwr.\n',
    );
  });
});

test('a catalogue with none as wished is no fault', async () => {
  const at = catalogue('whole', { 'trailers.csv': whole });
  const ran = await run(['which', asked, '--catalogue', at, '--where', 'gvwr<=100']);
  expect([ran.status, ran.err]).toEqual([0, '']);
});
