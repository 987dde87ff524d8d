import {
  compareNote,
  compareRig,
  compareWithExpect,
  type Difference,
  isNote,
  isRig,
  judgeCase,
  type NoteOutcome,
  readCase,
  type Under,
} from '@tarebook/casebook';
import { type Topic, topics } from '@tarebook/rules';
import { columns } from './columns';
import { BadInput, caseFiles, named, readText, renamedLines, troubleLines } from './files';
import { asBadInput } from './house';
import { noteOf } from './note';
import { rigOf } from './rig';

type Checked = {
  readonly file: string;
  readonly holds: boolean;
  readonly differences: readonly Difference[];
  readonly verdict: string;
  /** How much it expects; what expects nothing holds, and has not been checked. */
  readonly expects: number;
  /** Of a note, how it stands; it holds by its date, whatever it expects. */
  readonly note?: NoteOutcome;
};

/** The cases that could be run; beside them what could not, and what was left out. */
export type CheckedCases = {
  readonly checked: readonly Checked[];
  readonly troubles: readonly string[];
  /** What was left out, and what was read by ids of former days. */
  readonly skipped: readonly string[];
};

async function checkNote(file: string, text: string, under: Under): Promise<Checked> {
  const judged = await noteOf(file, text, under);
  const differences = compareNote(judged);
  const holds = differences.length === 0;
  const expects = judged.note.expectations.length;
  const verdict = `good until ${judged.note.goodUntil}`;
  return { file, holds, differences, verdict, expects, note: judged.outcome };
}

type Shelf = Readonly<Record<string, Topic>>;

function checkRig(file: string, text: string, under: Under, among: Shelf): Checked {
  const { doc, found } = rigOf(file, text, under, among);
  const differences = compareRig(doc, found);
  const expects = doc.expectations.length;
  const [worst] = found.answers;
  const verdict = worst ? `${worst.topic.id}: ${worst.answer.words}` : 'nothing told decides';
  return { file, holds: differences.length === 0, differences, verdict, expects };
}

async function checkOne(
  file: string,
  under: Under,
  among: Shelf,
): Promise<[Checked, readonly string[]]> {
  const text = await readText(file);
  if (isNote(text)) return [await checkNote(file, text, under), []];
  if (isRig(text)) return [checkRig(file, text, under, among), []];
  const doc = readCase(text, under.asOf, among);
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
  among: Shelf = topics,
): Promise<CheckedCases> {
  const { files, skipped } = await caseFiles(paths);
  const checked: Checked[] = [];
  const aside: string[] = [];
  const troubles = skipped.filter(({ wrong }) => wrong).map(({ says }) => says);
  for (const file of files) {
    try {
      const [one, says] = await checkOne(file, under, among);
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

function standing({ holds, expects, note }: Checked): string {
  if (!holds) return 'differs';
  return note ?? (expects === 0 ? 'expects nothing' : 'holds');
}

export function checkedAsText(checked: readonly Checked[]): string {
  const rows = checked.map((each) => [standing(each), named(each.file), each.verdict]);
  const differing = checked.filter(({ holds }) => !holds);
  const told = differing.map(
    ({ file, differences }) =>
      `\n${named(file)}\n${columns(differences.map((d) => [d.name, `expected ${d.expected}`, `found ${d.found}`]))}\n`,
  );
  const old = checked.filter(({ holds, note }) => holds && note === 'expired').length;
  const silent = checked.filter(({ expects, note }) => expects === 0 && !note).length;
  const holding = checked.length - differing.length - silent - old;
  const rest = silent === 0 ? '' : `, ${silent} without an Expect table`;
  const over = old === 0 ? '' : `, ${old} past the day until which they are good`;
  const count = `${checked.length} ${checked.length === 1 ? 'case' : 'cases'}, ${holding} hold, ${differing.length} differ${rest}${over}`;
  return `${columns(rows)}\n${told.join('')}\n${count}\n`;
}

export const checkedAsJson = (checked: readonly Checked[]): object =>
  checked.map(({ file, holds, differences }) => ({ file, holds, differences }));
