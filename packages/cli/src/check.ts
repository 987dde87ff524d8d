import {
  compareWithExpect,
  type Difference,
  judgeCase,
  readCase,
  type Under,
} from '@tarebook/casebook';
import { columns } from './columns';
import { BadInput, caseFiles, named, readText, renamedLines, troubleLines } from './files';
import { asBadInput } from './house';

type Checked = {
  readonly file: string;
  readonly holds: boolean;
  readonly differences: readonly Difference[];
  readonly verdict: string;
  /** How much it expects; what expects nothing holds, and has not been checked. */
  readonly expects: number;
};

/** The cases that could be run; beside them what could not, and what was left out. */
export type CheckedCases = {
  readonly checked: readonly Checked[];
  readonly troubles: readonly string[];
  /** What was left out, and what was read by ids of former days. */
  readonly skipped: readonly string[];
};

async function checkOne(file: string, under: Under): Promise<[Checked, readonly string[]]> {
  const doc = readCase(await readText(file), under.asOf);
  if (doc.troubles.length > 0) {
    throw new BadInput(troubleLines(file, doc.troubles));
  }
  const answer = await judgeCase(doc, under).catch((problem) => {
    throw asBadInput(file, problem);
  });
  const differences = compareWithExpect(doc, answer);
  const expects = doc.expectations.length;
  const holds = differences.length === 0;
  return [
    { file, holds, differences, verdict: answer.words, expects },
    renamedLines(file, doc.renamed),
  ];
}

/** Runs every case below the paths that can be run; all troubles of all the others are told. */
export async function checkCases(
  paths: readonly string[],
  under: Under = {},
): Promise<CheckedCases> {
  const { files, skipped } = await caseFiles(paths);
  const checked: Checked[] = [];
  const aside: string[] = [];
  const troubles = skipped.filter(({ wrong }) => wrong).map(({ says }) => says);
  for (const file of files) {
    try {
      const [one, says] = await checkOne(file, under);
      checked.push(one);
      aside.push(...says);
    } catch (problem) {
      if (!(problem instanceof BadInput)) throw problem;
      troubles.push(problem.message);
    }
  }
  const left = skipped.filter(({ wrong }) => !wrong).map(({ says }) => says);
  return { checked, troubles, skipped: [...left, ...aside] };
}

export function checkedAsText(checked: readonly Checked[]): string {
  const rows = checked.map(({ file, holds, verdict, expects }) => [
    expects === 0 ? 'expects nothing' : holds ? 'holds' : 'differs',
    named(file),
    verdict,
  ]);
  const differing = checked.filter(({ holds }) => !holds);
  const told = differing.map(
    ({ file, differences }) =>
      `\n${named(file)}\n${columns(differences.map((d) => [d.name, `expected ${d.expected}`, `found ${d.found}`]))}\n`,
  );
  const silent = checked.filter(({ expects }) => expects === 0).length;
  const holding = checked.length - differing.length - silent;
  const rest = silent === 0 ? '' : `, ${silent} without an Expect table`;
  const count = `${checked.length} cases, ${holding} hold, ${differing.length} differ${rest}`;
  return `${columns(rows)}\n${told.join('')}\n${count}\n`;
}

export const checkedAsJson = (checked: readonly Checked[]): object =>
  checked.map(({ file, holds, differences }) => ({ file, holds, differences }));
