import {
  compareWithExpect,
  type Difference,
  judgeCase,
  readCase,
  type Under,
} from '@tarebook/casebook';
import { columns } from './columns';
import { BadInput, caseFiles, readText } from './files';
import { asBadInput } from './house';

type Checked = {
  readonly file: string;
  readonly holds: boolean;
  readonly differences: readonly Difference[];
  readonly verdict: string;
};

/** Runs every case below the paths. All troubles of all documents are told at once. */
export async function checkCases(
  paths: readonly string[],
  under: Under = {},
): Promise<readonly Checked[]> {
  const checked: Checked[] = [];
  const troubles: string[] = [];
  for (const file of await caseFiles(paths)) {
    const doc = readCase(await readText(file), under.asOf);
    if (doc.troubles.length > 0) {
      troubles.push(...doc.troubles.map((t) => `${file}:${t.line}:${t.column}: ${t.says}`));
      continue;
    }
    const answer = await judgeCase(doc, under).catch((problem) => {
      throw asBadInput(file, problem);
    });
    const differences = compareWithExpect(doc, answer);
    checked.push({ file, holds: differences.length === 0, differences, verdict: answer.words });
  }
  if (troubles.length > 0) throw new BadInput(troubles.join('\n'));
  return checked;
}

export function checkedAsText(checked: readonly Checked[]): string {
  const rows = checked.map(({ file, holds, verdict }) => [
    holds ? 'holds' : 'differs',
    file,
    verdict,
  ]);
  const differing = checked.filter(({ holds }) => !holds);
  const told = differing.map(
    ({ file, differences }) =>
      `\n${file}\n${columns(differences.map((d) => [d.name, `expected ${d.expected}`, `found ${d.found}`]))}\n`,
  );
  const count = `${checked.length} cases, ${checked.length - differing.length} hold, ${differing.length} differ`;
  return `${columns(rows)}\n${told.join('')}\n${count}\n`;
}

export const checkedAsJson = (checked: readonly Checked[]): object =>
  checked.map(({ file, holds, differences }) => ({ file, holds, differences }));
