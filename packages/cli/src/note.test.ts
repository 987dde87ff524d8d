import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { run } from './run.fixture';

const cwd = fileURLToPath(new URL('../../../', import.meta.url));
const filed = 'cases/note/winterizing-by-us.md';

const noteWith = (lines: string): string =>
  `---\ntitle: A note\ntopic: note\nabout: house\ngood-until: 2027-01-31\n${lines}---\n\nSo it is.\n`;

test('a note is judged as of a day, and what was saved is judged again', async () => {
  const { out, status } = await run(['judge', filed, '--json', '--as-of', '2026-11-28'], { cwd });
  expect(status).toBe(0);
  expect(JSON.parse(out)).toMatchObject({
    topic: 'note',
    outcome: 'holds',
    about: 'service',
    goodUntil: '2026-12-31',
    say: 'everybody',
    owner: 'service lead',
    links: [{ label: 'Ask for a day', address: 'https://example.org/sallowbridge/service-day' }],
    leansOn: { topic: 'cold-weather', outcome: expect.any(String) },
    asOf: '2026-11-28',
  });
  const folder = mkdtempSync(join(tmpdir(), 'note-'));
  const saved = join(folder, 'saved.json');
  writeFileSync(saved, out);
  const again = await run(['judge', saved, '--json', '--as-of', '2027-01-01'], {
    cwd: `${cwd}/cases/note`,
  });
  expect(JSON.parse(again.out)).toMatchObject({ outcome: 'expired' });
});

test('a note leaves in forms and to everybody, and has no asking', async () => {
  const args = ['judge', filed, '--as-of', '2026-11-28'];
  const { out } = await run([...args, '--forms', '--everybody', '--json'], { cwd });
  const { forms, everybody, asking } = JSON.parse(out);
  expect(asking).toBeNull();
  expect(Object.keys(forms)).toHaveLength(9);
  expect(everybody).toEqual({ text: forms.everybody, seconds: expect.any(Number), branches: [] });
  const { status, err } = await run([...args, '--asking', 'how-full'], { cwd });
  expect(status).toBe(2);
  expect(err).toMatch(/^`--asking`: “how-full” is nothing that a note is asked; leave it out\.\n$/);
});

test('check says of each note whether it holds, and until when it is good', async () => {
  const { out, status } = await run(['check', 'cases/note', '--as-of', '2027-01-01'], { cwd });
  expect(status).toBe(0);
  expect(out).toMatch(/holds +cases\/note\/when-we-are-open\.md +good until 2027-03-31/);
  expect(out).toMatch(/expired +cases\/note\/winterizing-by-us\.md +good until 2026-12-31/);
  expect(out).toMatch(/16 cases, 14 hold, 0 differ, 2 past the day until which they are good\n$/);
});

test('what a note leans on has to be a case that can be judged', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'note-'));
  mkdirSync(join(folder, 'a'));
  writeFileSync(join(folder, 'a/missing.md'), noteWith('leans-on: ../b/none.md\n'));
  writeFileSync(join(folder, 'a/note.md'), noteWith('leans-on: other.md\n'));
  writeFileSync(join(folder, 'a/other.md'), noteWith(''));
  writeFileSync(join(folder, 'a/broken.md'), noteWith('leans-on: bad.md\n'));
  writeFileSync(join(folder, 'a/bad.md'), '---\ntitle: x\ntopic: tow-fits\n---\n');
  const said = async (name: string) => {
    const { status, err, out } = await run(['judge', `a/${name}.md`], { cwd: folder });
    expect([status, out]).toEqual([2, '']);
    return err;
  };
  expect(await said('missing')).toBe(
    'a/missing.md: `leans-on`: b/none.md: there is no such file or folder.\n',
  );
  expect(await said('note')).toMatch(/^a\/note\.md: `leans-on`: a\/other\.md is a note itself;/);
  expect(await said('broken')).toMatch(
    /^a\/broken\.md: `leans-on`: a\/bad\.md:3:8: There is no topic/,
  );
});
