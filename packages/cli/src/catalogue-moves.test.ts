import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { run } from './run.fixture';

const cwd = fileURLToPath(new URL('../../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'catalogue-'));
afterAll(() => rmSync(folder, { recursive: true }));

const later = join(folder, 'later');
mkdirSync(later);
cpSync(join(cwd, 'seeds/vehicles.csv'), join(later, 'vehicles.csv'));
const trailers = readFileSync(join(cwd, 'seeds/trailers.csv'), 'utf8');
writeFileSync(
  join(later, 'trailers.csv'),
  trailers.replace('Sallow 13,travel trailer,1890', 'Sallow 13,travel trailer,2240'),
);
const asCase = (name: string, from: string): string => {
  const file = join(folder, `${name}.md`);
  writeFileSync(
    file,
    `---\ntitle: ${name}\ntopic: tow-fit\nas-of: 2026-11-01\n---\n\n| Fact | Value | Read from |\n| --- | --- | --- |\n| \`vehicle.maxTrailerWeight\` | 2,000 lb | manual |\n| \`trailer.dryWeight\` | 1,890 lb | ${from} |\n`,
  );
  return file;
};

test('a changed catalogue says which cases rest on it, and what they answer now', async () => {
  const rests = asCase('rests', 'catalogue, Sallow 13');
  const apart = asCase('apart', 'label');
  const { out, status } = await run(['catalogue', 'seeds', later, rests, apart, '--json'], {
    cwd,
    input: '',
  });
  expect(status).toBe(1);
  const { entries, cases } = JSON.parse(out);
  expect(entries).toEqual([
    {
      name: 'Sallow 13',
      what: 'changed',
      facts: [{ fact: 'trailer.dryWeight', was: '1890 lb', is: '2240 lb' }],
    },
  ]);
  expect(cases).toHaveLength(1);
  expect(cases[0].file).toContain('rests');
  expect(cases[0].is).toMatch(/does not fit/);
  const told = await run(['catalogue', 'seeds', later, rests], { cwd, input: '' });
  expect(told.out).toMatch(/^1 changed in the catalogue; 1 of the cases rest on that, and 1 /);
});

test('and which answers that were given, by the words they had then', async () => {
  const answered = async (name: string, from: string) => {
    const { out } = await run(['judge', asCase(name, from), '--json'], { cwd, input: '' });
    const saved = JSON.parse(out);
    const beside = { day: '2026-11-02', form: 'spoken', language: 'en', text: 'It goes.' };
    return { id: name, ...beside, saved: { ...saved, sentence: 'It goes.' } };
  };
  const entries = [
    await answered('call-rests', 'catalogue, Sallow 13'),
    await answered('call-apart', 'label'),
  ];
  const ledger = join(folder, 'ledger.json');
  writeFileSync(ledger, JSON.stringify({ version: 1, entries }));
  const args = ['catalogue', 'seeds', later, '--ledger', ledger];
  const { out, status } = await run([...args, '--json'], { cwd, input: '' });
  expect(status).toBe(1);
  const { answers } = JSON.parse(out);
  expect(answers).toEqual([
    {
      id: 'call-rests',
      was: 'It goes.',
      is: expect.stringContaining('does not fit'),
      isTurned: true,
    },
  ]);
  const told = await run(args, { cwd, input: '' });
  expect(told.out).toContain('1 of the answers that were given rest on it, and 1 of them');
  writeFileSync(ledger, '{');
  const broken = await run(args, { cwd, input: '' });
  expect([broken.status, broken.err]).toEqual([2, expect.stringContaining('this is no JSON')]);
});

test('a catalogue against itself has changed nothing', async () => {
  const { out, status } = await run(['catalogue', 'seeds', 'seeds'], { cwd, input: '' });
  expect([out, status]).toEqual(['Both catalogues are the same.\n', 0]);
});
