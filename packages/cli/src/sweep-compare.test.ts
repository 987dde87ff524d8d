import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { run } from './run.fixture';

const folder = mkdtempSync(join(tmpdir(), 'tarebook-compare-'));
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const head = 'vehicle,trailer,outcome,binding,left_lo,left_hi,unit\n';
const vehicles = (payload: number): string =>
  `name,placardPayload,maxTrailerWeight,maxTongueCarried,gvwr\nPlover,${payload},5000,500,6000\nKite,1400,5000,500,7000\n`;
const trailers = file('t.csv', 'name,dryWeight,gvwr,dryTongueWeight\nBittern 22,3000,4000,330\n');
const sweep = async (name: string, payload: number): Promise<string> => {
  const out = join(folder, name);
  const from = file(`v-${name}`, vehicles(payload));
  const { status } = await run([
    ...['sweep', '--vehicles', from, '--trailers', trailers],
    ...['--as-of', '2026-11-01', '--out', out],
  ]);
  expect(status).toBe(0);
  return out;
};

test('a lower door label turns its vehicle alone, says by which limit, and whom it was told', async () => {
  const [before, after] = [await sweep('a.csv', 1100), await sweep('b.csv', 400)];
  const ledger = file(
    'ledger.json',
    JSON.stringify({
      version: 1,
      entries: [
        {
          ...{ id: 'a-17', day: '2026-11-02', form: 'spoken' },
          text: 'Your Plover pulls the Bittern 22.',
          saved: { topic: 'tow-fit', outcome: 'fits' },
        },
      ],
    }),
  );
  const { status, out } = await run(['sweep', '--compare', before, after, '--ledger', ledger]);
  expect(status).toBe(0);
  expect(out).toMatch(/Of 2 pairs, 1 turned\. Of 1 of them an answer was given\./);
  expect(out).toMatch(/Plover\s+Bittern 22\s+.*→ does not fit/);
  expect(out).toMatch(/→ payload, \d+(\.\d+)? lb over/);
  expect(out).toMatch(/answered: a-17/);
  const json = await run(['sweep', '--compare', before, after, '--json']);
  const { pairs, turned } = JSON.parse(json.out);
  expect([pairs, turned.length, turned[0].vehicle]).toEqual([2, 1, 'Plover']);
});

test('in another order nothing has turned, and what stands in one alone is counted', async () => {
  const [a, b] = ['A,X,fits,payload,10,10,lb\n', 'B,X,does-not-fit,tongue,-5,-5,lb\n'];
  const first = file('first.csv', `${head}${a}${b}`);
  const second = file('second.csv', `${head}${b}${a}C,X,fits,,,,\n`);
  const { out } = await run(['sweep', '--compare', first, second]);
  expect(out).toMatch(/Of 2 pairs, none turned\. In the second alone: 1\./);
});

test('what is left or over is said as one says it, and kept whole as data', async () => {
  const was = file('long-was.csv', `${head}A,X,fits,payload,1210.5,1210.5,lb\n`);
  const is = file('long-is.csv', `${head}A,X,does-not-fit,payload,-117.16299,-117.16299,lb\n`);
  const { out } = await run(['sweep', '--compare', was, is]);
  expect(out).toContain('1,210.5 lb left → payload, 117.2 lb over');
  const told = await run(['sweep', '--compare', was, is, '--json']);
  expect(JSON.parse(told.out).turned[0].is.left).toBe('-117.16299');
});

test('what is over or left by a hair is not said as none', async () => {
  const was = file('hair-was.csv', `${head}A,X,fits,payload,0.04,0.04,lb\n`);
  const is = file('hair-is.csv', `${head}A,X,does-not-fit,payload,-0.04,-0.04,lb\n`);
  const { out } = await run(['sweep', '--compare', was, is]);
  expect(out).toContain('payload, less than 0.1 lb left → payload, less than 0.1 lb over');
});

test.each([
  ['one file alone', [trailers], /--compare takes two files/],
  ['a file that is no sweep', [trailers, trailers], /t\.csv:1: this is no sweep/],
  ['a file that is not there', ['nowhere.csv', trailers], /nowhere\.csv: there is no such file/],
  [
    'a file of uneven rows',
    [file('uneven.csv', '# a note\nname,gvwr\nA,1\n'), trailers],
    /uneven\.csv:1: this is no sweep/,
  ],
  [
    'a sweep with a broken row',
    [
      file('broken.csv', `${head}A,X,fits,payload,10,10,lb\nA,Y,fits\n`),
      file('whole.csv', `${head}A,X,fits,payload,10,10,lb\n`),
    ],
    /broken\.csv:3: this row has 3 cells under 7 columns\./,
  ],
  [
    'a sweep with a row of one cell',
    [file('one.csv', `${head}A\n`), file('whole2.csv', `${head}A,X,fits,payload,10,10,lb\n`)],
    /one\.csv:2: this row has 1 cell under 7 columns\./,
  ],
])('%s is told in one line', async (_, files, says) => {
  const { status, err, out } = await run(['sweep', '--compare', ...files]);
  expect([status, out]).toEqual([2, '']);
  expect(err).toMatch(says);
});
