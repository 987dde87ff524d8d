import type { RefusedRow } from '@tarebook/sweep';
import { accessoriesAsText, accessoriesOf } from './accessories';
import { catalogueMovesAsText, catalogueMovesOf } from './catalogue-moves';
import { BadInput } from './files';
import { offersAsText, offersOf } from './offers';
import { topicsFrom } from './own-topics';
import { parsed } from './parsed';
import { sayBeside, sayJson, sayText } from './said';
import { whichAsJson, whichAsText, whichOf } from './which';

/** Rows of a catalogue that were not taken, each with its place. */
async function sayRefused(rows: readonly RefusedRow[]): Promise<void> {
  if (rows.length === 0) return;
  await sayBeside(rows.map(({ file, line, says }) => `${file}:${line}: ${says}`).join('\n'));
}

export async function whichOnes(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['house', 'as-of', 'catalogue'], ['where']);
  const [file, more] = words;
  if (file === undefined || more !== undefined) {
    throw new BadInput('`tarebook which` takes one file, or - for standard input.');
  }
  const found = await whichOf(file, given);
  await (given.json ? sayJson(whichAsJson(found)) : sayText(`${whichAsText(found)}\n`));
  await sayRefused(found.refused);
  return 0;
}

export async function catalogueChanged(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['topics', 'ledger']);
  const ledger = typeof given.ledger === 'string' ? given.ledger : undefined;
  const moves = await catalogueMovesOf(words, await topicsFrom(given), ledger);
  await (given.json ? sayJson(moves) : sayText(`${catalogueMovesAsText(moves)}\n`));
  return [...moves.cases, ...moves.answers].every(({ was, is }) => was === is) ? 0 : 1;
}

export async function offers(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['catalogue']);
  if (words.length > 2) {
    throw new BadInput(
      '`tarebook offers` takes an option and a line, such as "Heated tanks" osier.',
    );
  }
  const folder = typeof given.catalogue === 'string' ? given.catalogue : undefined;
  const told = await offersOf(words, folder);
  await (given.json ? sayJson(told) : sayText(`${offersAsText(told)}\n`));
  await sayRefused(told.refused);
  return 0;
}

export async function accessories(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json'], ['catalogue']);
  if (words.length > 2) {
    throw new BadInput(
      '`tarebook accessories` takes an accessory and a trailer or a line, such as "Roof vent with a fan" osier.',
    );
  }
  const folder = typeof given.catalogue === 'string' ? given.catalogue : undefined;
  const told = await accessoriesOf(words, folder);
  await (given.json ? sayJson(told) : sayText(`${accessoriesAsText(told)}\n`));
  await sayRefused([...told.refused, ...told.notes]);
  return 0;
}
