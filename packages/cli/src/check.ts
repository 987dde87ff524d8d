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
  /** How much it expects; what expects nothing holds, and has not been checked. */
  readonly expects: number;
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
    const expects = doc.expectations.length;
    const holds = differences.length === 0;
    checked.push({ file, holds, differences, verdict: answer.words, expects });
  }
  if (troubles.length > 0) throw new BadInput(troubles.join('\n'));
  return checked;
}

export function checkedAsText(checked: readonly Checked[]): string {
  const rows = checked.map(({ file, holds, verdict, expects }) => [
    expects === 0 ? 'expects nothing' : holds ? 'holds' : 'differs',
    file,
    verdict,
  ]);
  const differing = checked.filter(({ holds }) => !holds);
  const told = differing.map(
    ({ file, differences }) =>
      `\n${file}\n${columns(differences.map((d) => [d.name, `expected ${d.expected}`, `found ${d.found}`]))}\n`,
  );
  const silent = checked.filter(({ expects }) => expects === 0).length;
  const holding = checked.length - differing.length - silent;
  const rest = silent === 0 ? '' : `, ${silent} without an Expect table`;
  const count = `${checked.length} cases, ${holding} hold, ${differing.length} differ${rest}`;
  return `${columns(rows)}\n${told.join('')}\n${count}\n`;
}

export const checkedAsJson = (checked: readonly Checked[]): object =>
  checked.map(({ file, holds, differences }) => ({ file, holds, differences }));
