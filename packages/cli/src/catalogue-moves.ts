import { askedOf, readCase } from '@tarebook/casebook';
import { LedgerError, readLedger } from '@tarebook/record';
import { InputError, type Topic } from '@tarebook/rules/engine';
import {
  catalogueMoves,
  type EntryMove,
  judgedThen,
  type Resting,
  restingOn,
} from '@tarebook/sweep';
import { columns as inColumns } from './columns';
import { BadInput, caseFiles, named, readText } from './files';
import { catalogueFrom } from './which';

type Among = Readonly<Record<string, Topic>>;

/** A case that rests on what has changed: what it came to, and what it comes to now. */
type CaseMove = Omit<Resting, 'name'> & { readonly file: string };
/** An answer that was given and rests on it. */
type AnswerMove = Omit<Resting, 'name'> & { readonly id: string };

export type CatalogueMoves = {
  readonly entries: readonly EntryMove[];
  readonly cases: readonly CaseMove[];
  readonly answers: readonly AnswerMove[];
};

async function caseMove(
  file: string,
  entries: readonly EntryMove[],
  among: Among,
): Promise<CaseMove | undefined> {
  const doc = readCase(await readText(file), undefined, among);
  if (doc.troubles.length > 0 || !doc.topic) return undefined;
  const found = restingOn(entries, { name: file, ...askedOf(doc, {}) });
  if (!found) return undefined;
  const { name: _, ...moved } = found;
  return { file, ...moved };
}

async function answersIn(
  file: string,
  entries: readonly EntryMove[],
  among: Among,
): Promise<readonly AnswerMove[]> {
  const text = await readText(file);
  try {
    return readLedger(JSON.parse(text.replace(/^\uFEFF/, ''))).entries.flatMap(({ id, saved }) => {
      const then = judgedThen(id, saved, among);
      const found = then && restingOn(entries, then);
      if (!found) return [];
      const { name: _, ...moved } = found;
      return [{ id, ...moved }];
    });
  } catch (problem) {
    if (problem instanceof SyntaxError) {
      throw new BadInput(
        `${named(file)}: this is no JSON; give a ledger, version 1 with its entries.`,
      );
    }
    if (problem instanceof LedgerError || problem instanceof InputError) {
      throw new BadInput(`${named(file)}: ${problem.message}`);
    }
    throw problem;
  }
}

/** What is otherwise in one catalogue than in another, and what it does to cases and answers that rest on it. */
export async function catalogueMovesOf(
  words: readonly string[],
  among: Among,
  ledger?: string,
): Promise<CatalogueMoves> {
  const [before, after, ...paths] = words;
  if (before === undefined || after === undefined) {
    throw new BadInput(
      '`tarebook catalogue` takes two folders, the catalogue as it was and as it is, and then cases.',
    );
  }
  const entries = catalogueMoves(await catalogueFrom(before), await catalogueFrom(after));
  const { files } = paths.length === 0 ? { files: [] } : await caseFiles(paths);
  const cases: CaseMove[] = [];
  for (const file of files) {
    const move = await caseMove(file, entries, among);
    if (move) cases.push(move);
  }
  const answers = ledger === undefined ? [] : await answersIn(ledger, entries, among);
  return { entries, cases, answers };
}

function moveLine({ name, what, facts }: EntryMove): string[] {
  const all = facts.map(
    ({ fact, was, is }) => `${fact} ${String(was ?? 'not told')} → ${String(is ?? 'not told')}`,
  );
  return [name, what, all.join(', ')];
}

type Told = Omit<Resting, 'name' | 'isTurned'> & { readonly of: string };

const isOther = ({ was, is }: Pick<Told, 'was' | 'is'>): boolean => was !== is;

const lines = (all: readonly Told[]): string[][] =>
  all.flatMap(({ of, was, is }) => [
    [of, was === is ? 'same' : 'changed'],
    ['', `was: ${was}`],
    ...(was === is ? [] : [['', `is:  ${is}`]]),
  ]);

export function catalogueMovesAsText({ entries, cases, answers }: CatalogueMoves): string {
  if (entries.length === 0) return 'Both catalogues are the same.';
  const head = `${entries.length} changed in the catalogue; ${cases.length} of the cases rest on that, and ${cases.filter(isOther).length} of them answer otherwise.`;
  const given =
    answers.length === 0
      ? []
      : [
          `${answers.length} of the answers that were given rest on it, and ${answers.filter(isOther).length} of them would be given otherwise.`,
        ];
  const told = [
    ...lines(cases.map(({ file, ...each }) => ({ of: file, ...each }))),
    ...lines(answers.map(({ id, ...each }) => ({ of: id, ...each }))),
  ];
  return [
    head,
    ...given,
    '',
    inColumns(entries.map(moveLine)),
    ...(told.length > 0 ? ['', inColumns(told)] : []),
  ].join('\n');
}
