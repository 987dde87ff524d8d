import { nearest } from '@tarebook/rules/engine';
import {
  type OfferChange,
  type Offers,
  offerChanges,
  offerSaid,
  optionMeant,
  readOffers,
} from '@tarebook/sweep';
import { shippedFolders, tablesOf } from './catalogue-folder';
import { columns as inColumns } from './columns';
import { BadInput } from './files';

const files = ['offers.csv', 'options.csv', 'floor-plans.csv'] as const;

async function offersIn(folder: string): Promise<Offers | undefined> {
  const { 'offers.csv': offers, ...beside } = await tablesOf(folder, files);
  if (offers === undefined) return undefined;
  return readOffers({ 'options.csv': '', 'floor-plans.csv': '', ...beside, 'offers.csv': offers });
}

async function offersFrom(catalogue: string | undefined): Promise<Offers> {
  const folders = catalogue === undefined ? shippedFolders : [catalogue];
  for (const folder of folders) {
    const found = await offersIn(folder);
    if (found) return found;
  }
  throw new BadInput(`${folders.at(-1)}: there is no offers.csv in it.`);
}

export type OffersTold = { readonly refused: Offers['refused'] } & (
  | { readonly option: string; readonly line: string; readonly sentence: string }
  | { readonly changes: readonly OfferChange[] }
);

/** Whether an option is on all of a line; without one, what changed on the lines by year and why. */
export async function offersOf(
  words: readonly string[],
  catalogue: string | undefined,
): Promise<OffersTold> {
  const offers = await offersFrom(catalogue);
  const { refused } = offers;
  const [said, line] = words;
  if (said === undefined) return { changes: offerChanges(offers), refused };
  const option = optionMeant(offers, said);
  if (option === undefined) {
    const near = nearest(said, [...offers.options.values()]);
    throw new BadInput(
      `“${said}” is no option of the catalogue.${near === undefined ? '' : ` Did you mean “${near}”?`}`,
    );
  }
  if (line === undefined || !offers.lines.includes(line.toLowerCase())) {
    throw new BadInput(
      `\`tarebook offers\` wants a line beside the option: one of ${offers.lines.join(', ')}.`,
    );
  }
  const sentence = offerSaid(offers, line.toLowerCase(), option);
  return { option, line: line.toLowerCase(), sentence, refused };
}

export function offersAsText(told: OffersTold): string {
  if ('sentence' in told) return told.sentence;
  return inColumns(
    told.changes.map(({ year, line, says, because }) => [year, line, says, because]),
    [],
  );
}
