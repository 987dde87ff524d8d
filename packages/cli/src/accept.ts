import { writeFile } from 'node:fs/promises';
import { acceptFound, compareWithExpect, judgeCase, readCase } from '@tarebook/casebook';
import { caseFiles, readText } from './files';

// Rewrites what the worked cases expect, for a person who has looked at each difference; without
// --accept it only shows them.
const accept = process.argv.includes('--accept');
let differing = 0;
for (const file of await caseFiles(['cases'])) {
  const doc = readCase(await readText(file));
  if (doc.troubles.length > 0) continue;
  const differences = compareWithExpect(doc, await judgeCase(doc));
  if (differences.length === 0) continue;
  differing += 1;
  for (const { name, expected, found } of differences) {
    process.stdout.write(`${file}: ${name}: ${expected} → ${found}\n`);
  }
  const found = Object.fromEntries(differences.map((each) => [each.name, each.found]));
  if (accept) await writeFile(file, acceptFound(doc, found));
}
process.stdout.write(`${differing} cases ${accept ? 'rewritten' : 'differ'}\n`);
if (!accept && differing > 0) process.exitCode = 1;
