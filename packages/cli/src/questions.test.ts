import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { run } from './run.fixture';

const cwd = fileURLToPath(new URL('../../../', import.meta.url));
const head = 'id,channel,asked_on,asker,text\n';
const read = (input: string, ...more: string[]) =>
  run(['questions', '-', ...more], { cwd, input: `${head}${input}` });

test('messages are read, the urgent ones first, with what is near to an answer', async () => {
  const { out, status } = await read(
    'a1,mail,2026-11-20,Ann,"Max tow 7,200 lb, payload 1,480 lb. Good?"\na2,text,2026-11-21,,smell gas by the stove\na3,social,2026-11-21,Bo,When is the rally? Call me at 555-0142.\n',
    '--json',
  );
  expect(status).toBe(0);
  const [first, second, third] = JSON.parse(out);
  expect(first).toMatchObject({ id: 'a2', urgent: 'gas', sameAs: null });
  expect(second).toMatchObject({
    id: 'a1',
    urgent: null,
    personal: [],
    parts: [
      {
        topic: 'tow-fit',
        facts: { 'vehicle.maxTrailerWeight': '7200 lb', 'vehicle.placardPayload': '1480 lb' },
        words: { 'vehicle.maxTrailerWeight': 'Max tow 7,200 lb' },
      },
    ],
  });
  expect(second.parts[0].ask.length).toBeGreaterThan(0);
  expect(third).toMatchObject({ id: 'a3', personal: ['555-0142'] });
  expect(third.parts[0]).toMatchObject({
    topic: null,
    answeredBy: 'cases/note/the-fall-weekend-at-the-lake.md',
  });
});

test('who rides along is told with what was read, and not asked again', async () => {
  const input =
    'a1,mail,,,"Tow rating 5,000, trailer gvwr 4,400, two kids and a dog. Will it go?"\n';
  const { out } = await read(input, '--json');
  const [part] = JSON.parse(out)[0].parts;
  expect(part).toMatchObject({
    topic: 'tow-fit',
    facts: { 'vehicle.maxTrailerWeight': '5000 lb', 'trailer.gvwr': '4400 lb' },
    people: [
      { who: 'child', count: 2 },
      { who: 'dog', count: 1 },
    ],
  });
  expect((await read(input)).out).toContain('Riding along: 2 children, 1 dog\n');
  const weighed =
    'a1,mail,,,"Tow rating 5,000, trailer gvwr 4,400, me and the wife are 390 together, dog 60. Will it go?"\n';
  expect((await read(weighed)).out).toContain(
    'Riding along: 2 adults of 195 lb each, 1 dog of 60 lb\n',
  );
});

test('an export with other headings is read, and each row that cannot be is refused in one sentence', async () => {
  const input =
    '\uFEFFTimestamp,Author,Comment ID,Comment\n2026-11-20,Wren,c1,"He said ""65"", what tire pressure?"\n,,,\n2026-11-21,Ike,c1,What tire pressure?\n2026-11-21,Ike,c3,!!!\n';
  const { out, err, status } = await run(['questions', '-', '--json'], { cwd, input });
  expect(status).toBe(2);
  expect(JSON.parse(out).map(({ id }: { id: string }) => id)).toEqual(['c1']);
  expect(err.trim().split('\n')).toEqual([
    'standard input: message 3 has the same id “c1” as message 1; give each its own.',
    'standard input: message 4 has no words; write what was asked, or take the row out.',
  ]);
});

test('a text as it was pasted is read, and a page of Markdown', async () => {
  const input =
    '# Phone\n\nRuth: max tow 7,200 lb, payload 1,480 lb. Good?\n\n---\n\n[11/27/2026, 9:14 AM] Dale R.: smell gas by the stove\n\nFrom: Ada Pell <ada@post.example>\nSubject: Ball\n\nWhich ball height?\n';
  const { out, err, status } = await run(['questions', '-', '--json'], { cwd, input });
  expect([status, err]).toEqual([0, '']);
  const read = JSON.parse(out);
  expect(read.map(({ id }: { id: string }) => id)).toEqual(['message-2', 'message-1', 'message-3']);
  expect(read[0]).toMatchObject({ urgent: 'gas' });
  expect(read[1].parts[0]).toMatchObject({
    topic: 'tow-fit',
    facts: { 'vehicle.maxTrailerWeight': '7200 lb', 'vehicle.placardPayload': '1480 lb' },
  });
  const said = await run(['questions', '-'], {
    cwd,
    input: 'Can it pull 5,000 lb, dry?\n\nAnd me?\n',
  });
  expect(said.out).toContain('2 messages, 0 urgent\n');
});

test('a first line with a comma heads no table', async () => {
  const input = 'Wren, Friday\nCan it pull 5,000 lb?\n\nNo, thanks. What ball height?\n';
  const { out, status } = await run(['questions', '-', '--json'], { cwd, input });
  expect(status).toBe(0);
  expect(JSON.parse(out)).toHaveLength(2);
});

test('a table is known by its head whatever the file is called, and one word of prose heads none', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'tarebook-questions-'));
  const file = join(folder, 'export.txt');
  writeFileSync(file, `${head}a1,mail,,,What ball height?\na2,mail,,,Smell of gas here\n`);
  const table = await run(['questions', file, '--json'], { cwd });
  expect(JSON.parse(table.out).map(({ id }: { id: string }) => id)).toEqual(['a2', 'a1']);
  const input = 'Question\nHi, we smell gas in the trailer\n';
  const prose = await run(['questions', '-', '--json'], { cwd, input });
  expect([prose.status, JSON.parse(prose.out)[0].urgent]).toEqual([0, 'gas']);
});

test('more messages than are read are refused, and none is left out', async () => {
  const many = 'x y\n\n'.repeat(50_001);
  for (const input of [
    many,
    `id,text\n${Array.from({ length: 50_001 }, (_, n) => `${n},x y\n`).join('')}`,
  ]) {
    const { err, out, status } = await run(['questions', '-'], { cwd, input });
    expect([status, out]).toEqual([2, '']);
    expect(err).toBe(
      'standard input: 50,001 messages are more than 50,000; part the file, and read each part.\n',
    );
  }
});

test('what it takes stands in the help', async () => {
  const { out } = await run(['questions', '--help'], { cwd });
  expect(out).toMatch(/tarebook questions FILE .*\n.*column text.*Markdown/);
});

test.each([
  ['', /^standard input: there is no message in it; give a CSV table .+\.\n$/],
  [' \n---\n', /^standard input: there is no message in it; .+\.\n$/],
  ['[{"text": "x"}]', /^standard input: this is JSON; give .+\.\n$/],
  ['<!doctype html><p>x', /^standard input: this is HTML or XML; give .+\.\n$/],
  [
    'id,price\n1,x\n',
    /^standard input:1: there is no column with the words .+ “id, price”; .+\.\n$/,
  ],
  [`${head}1,a,b,c,"x\n`, /^standard input:2: this is no CSV: a quotation mark /],
  [
    'id,text\n1,x\n2,Hi, we smell gas\n',
    /^standard input: row 2 has 3 cells under 2 columns; .+\.\n$/,
  ],
  [`${head},a,b,c,x\n`, /^standard input: message 1 has no id; give each its own\.\n$/],
])('what cannot be read is refused in one sentence: %j', async (input, says) => {
  const { err, out, status } = await run(['questions', '-'], { cwd, input });
  expect([status, out]).toEqual([2, '']);
  expect(err).toMatch(says);
});
