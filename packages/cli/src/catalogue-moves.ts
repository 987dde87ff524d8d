import { askedOf, readCase } from '@tarebook/casebook';
import { answerNow, type Topic } from '@tarebook/rules/engine';
import { catalogueMoves, type EntryMove, factsMoved } from '@tarebook/sweep';
import { columns as inColumns } from './columns';
import { BadInput, caseFiles, readText } from './files';
import { catalogueFrom } from './which';

/** A case that rests on what has changed: what it came to, and what it comes to now. */
type CaseMove = { readonly file: string; readonly was: string; readonly is: string };

export type CatalogueMoves = {
  readonly entries: readonly EntryMove[];
  readonly cases: readonly CaseMove[];
};

async function caseMove(
  file: string,
  entries: readonly EntryMove[],
  among: Readonly<Record<string, Topic>>,
): Promise<CaseMove | undefined> {
  const doc = readCase(await readText(file), undefined, among);
  if (doc.troubles.length > 0 || !doc.topic) return undefined;
  const { topic, asked } = askedOf(doc, {});
  const facts = factsMoved(asked.facts, doc.readFrom, entries);
  if (!facts) return undefined;
  const was = answerNow(topic, asked);
  const is = answerNow(topic, { ...asked, facts });
  return { file, was: was.sentence, is: is.sentence };
}

/** What is otherwise in one catalogue than in another, and what it does to cases that rest on it. */
export async function catalogueMovesOf(
  words: readonly string[],
  among: Readonly<Record<string, Topic>>,
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
  return { entries, cases };
}

function moveLine({ name, what, facts }: EntryMove): string[] {
  const all = facts.map(
    ({ fact, was, is }) => `${fact} ${String(was ?? 'not told')} → ${String(is ?? 'not told')}`,
  );
  return [name, what, all.join(', ')];
}

export function catalogueMovesAsText({ entries, cases }: CatalogueMoves): string {
  if (entries.length === 0) return 'Both catalogues are the same.';
  const turned = cases.filter(({ was, is }) => was !== is);
  const told = cases.flatMap(({ file, was, is }) => [
    [file, was === is ? 'same' : 'changed'],
    ['', `was: ${was}`],
    ...(was === is ? [] : [['', `is:  ${is}`]]),
  ]);
  const head = `${entries.length} changed in the catalogue; ${cases.length} of the cases rest on that, and ${turned.length} of them answer otherwise.`;
  return [
    head,
    '',
    inColumns(entries.map(moveLine)),
    ...(told.length > 0 ? ['', inColumns(told)] : []),
  ].join('\n');
}
