import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { run } from './run.fixture';

const cwd = fileURLToPath(new URL('../../../', import.meta.url));
const accessories = (...words: string[]) =>
  run(['accessories', ...words, '--catalogue', 'seeds'], { cwd, input: '' });

test('an accessory on a trailer: where it fits, what it does, who fits it for how much', async () => {
  const { out, status } = await accessories('Receiver on the frame behind', 'Osier 22 Bunks');
  expect(status).toBe(0);
  const [fit, does, standing] = out.split('\n');
  expect(fit).toContain('fits the Osier line from model year 2025 on, because');
  expect(does).toContain('takes 28 lb off the tongue');
  expect(standing).toContain('by the rate book of the house');
});

test('without one, all there are; what is none is told with what would be', async () => {
  const all = await accessories('--json');
  expect(JSON.parse(all.out).all.length).toBeGreaterThan(15);
  const wrong = await accessories('Roof vent with a fun');
  expect([wrong.status, wrong.err]).toEqual([
    2,
    expect.stringContaining('Did you mean “Roof vent with a fan”?'),
  ]);
  const nowhere = await accessories('Entry step', 'elm');
  expect(nowhere.status).toBe(2);
});
