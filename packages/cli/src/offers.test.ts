import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { run } from './run.fixture';

const cwd = fileURLToPath(new URL('../../../', import.meta.url));
const offers = (...words: string[]) =>
  run(['offers', ...words, '--catalogue', 'seeds'], { cwd, input: '' });

test('heated tanks: on all of that line? one sentence with the year and the reason', async () => {
  const { out, status } = await offers('Heated tanks', 'Osier');
  expect(status).toBe(0);
  expect(out).toMatch(
    /^Not on all: on the Osier line heated tanks are standard from model year 2026 on, because .*\.\n$/,
  );
});

test('without an option, what changed on the lines by year and why', async () => {
  const { out } = await offers('--json');
  const { changes } = JSON.parse(out);
  expect(changes[0].year).toBe('2027');
  expect(changes.some(({ because }: { because: string }) => because !== '')).toBe(true);
});

test('what is no option or no line is told with what would be one', async () => {
  const wrong = await offers('Heated tank', 'osier');
  expect([wrong.status, wrong.err]).toEqual([
    2,
    expect.stringContaining('Did you mean “Heated tanks”?'),
  ]);
  const line = await offers('Heated tanks', 'elm');
  expect(line.err).toContain('one of rushlight, hurdle, ');
});
