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
