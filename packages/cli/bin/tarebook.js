#!/usr/bin/env node
// What npm links as `tarebook`. It is no product of the build, since npm links before anything is
// built and leaves out what is not there yet.
import { existsSync } from 'node:fs';

const built = new URL('../dist/tarebook.js', import.meta.url);
if (existsSync(built)) await import(built.href);
else {
  process.stderr.write(
    'Tarebook is not built yet; run `npm start` or `npm run build` in its folder first.\n',
  );
  process.exitCode = 2;
}
