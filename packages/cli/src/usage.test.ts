import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { usage } from './usage';

test('every command there is stands in what the command line says of itself', () => {
  const source = readFileSync(new URL('./tarebook.ts', import.meta.url), 'utf8');
  const commands = [...source.matchAll(/^ {4}case '([a-z]+)':/gm)]
    .map(([, name]) => name)
    .filter((name) => name !== 'help');
  expect(commands.length).toBeGreaterThan(5);
  for (const command of commands) expect(usage).toMatch(new RegExp(`^  tarebook ${command} `, 'm'));
});

test('every option that a sweep takes stands there too', () => {
  const source = readFileSync(new URL('./of-sweeps.ts', import.meta.url), 'utf8');
  const [, flags = '', texts = ''] =
    /parsed\(\s*args,\s*\[([^\]]*)\],\s*\[([^\]]*)\]/.exec(source) ?? [];
  const options = [...`${flags} ${texts}`.matchAll(/'([a-z-]+)'/g)].map(([, name]) => name);
  expect(options.length).toBeGreaterThan(10);
  const ofSweep = usage.split('\n  tarebook ').filter((part) => part.startsWith('sweep '));
  const said = [...ofSweep, usage.slice(usage.indexOf('take --house'))].join('\n');
  for (const option of options) expect(said).toContain(`--${option}`);
});
