import { acceptFound, compareWithExpect, isNote, judgeCase, readCase } from '@tarebook/casebook';
import { BadInput, caseFiles, named, readText, troubleLines } from './files';
import { sayBeside, sayText } from './said';
import { writeBeside } from './write-beside';

// Rewrites what the worked cases expect, for a person who has looked at each difference; without
// --accept it only shows them.
const accept = process.argv.includes('--accept');

async function acceptIn(files: readonly string[]): Promise<number> {
  let differing = 0;
  for (const file of files) {
    const text = await readText(file);
    // What a note expects depends on the day, and is nobody's to accept.
    if (isNote(text)) continue;
    const doc = readCase(text);
    if (doc.troubles.length > 0) {
      await sayBeside(troubleLines(file, doc.troubles));
      continue;
    }
    const differences = compareWithExpect(doc, await judgeCase(doc));
    if (differences.length === 0) continue;
    differing += 1;
    for (const { name, expected, found } of differences) {
      await sayText(`${named(file)}: ${name}: ${expected} → ${found}\n`);
    }
    const found = Object.fromEntries(differences.map((each) => [each.name, each.found]));
    if (accept) await writeBeside(file, acceptFound(doc, found));
  }
  return differing;
}

try {
  const differing = await acceptIn((await caseFiles(['cases'])).files);
  await sayText(`${differing} cases ${accept ? 'rewritten' : 'differ'}\n`);
  if (!accept && differing > 0) process.exitCode = 1;
} catch (problem) {
  if (!(problem instanceof BadInput)) throw problem;
  await sayBeside(problem.message);
  process.exitCode = 2;
}
