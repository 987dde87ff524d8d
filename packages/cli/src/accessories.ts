import { nearest } from '@tarebook/rules/engine';
import {
  type Accessories,
  accessoryMeant,
  type Catalogue,
  effectOf,
  effectSaid,
  fitSaid,
  readAccessories,
  standingSaid,
} from '@tarebook/sweep';
import { shippedFolders, tablesOf } from './catalogue-folder';
import { columns as inColumns } from './columns';
import { BadInput } from './files';
import { catalogueFrom } from './which';

const files = ['accessories.csv', 'accessory-fits.csv', 'rates.csv', 'floor-plans.csv'] as const;

async function accessoriesFrom(catalogue: string | undefined): Promise<Accessories> {
  const folders = catalogue === undefined ? shippedFolders : [catalogue];
  for (const folder of folders) {
    const found = await tablesOf(folder, files);
    if (found['accessories.csv'] === undefined) continue;
    return readAccessories(found, catalogue !== undefined);
  }
  throw new BadInput(`${folders.at(-1)}: there is no accessories.csv in it.`);
}

export type AccessoryTold = {
  readonly accessory?: string;
  readonly says: readonly string[];
  readonly effect?: object | null;
  readonly all?: readonly Accessories['accessories'][number][];
  readonly refused: Accessories['refused'];
  readonly notes: Accessories['notes'];
};

/** One accessory on a line or a trailer; without one, all there are. */
export async function accessoriesOf(
  words: readonly string[],
  catalogue: string | undefined,
): Promise<AccessoryTold> {
  const all = await accessoriesFrom(catalogue);
  const { refused, notes } = all;
  const [said, on] = words;
  if (said === undefined) return { says: [], all: all.accessories, refused, notes };
  const accessory = accessoryMeant(all, said);
  if (!accessory) {
    const near = nearest(
      said,
      all.accessories.map(({ label }) => label),
    );
    throw new BadInput(
      `“${said}” is no accessory of the catalogue.${near === undefined ? '' : ` Did you mean “${near}”?`}`,
    );
  }
  const standing = standingSaid(all, accessory);
  if (on === undefined) return { accessory: accessory.id, says: [standing], refused, notes };
  const { trailers }: Catalogue = await catalogueFrom(catalogue);
  const trailer = trailers.find(({ name }) => name.toLowerCase() === on.toLowerCase());
  const lines = [...new Set([...all.plans.values()].map(({ line }) => line))];
  const line = trailer
    ? all.plans.get(trailer.name)?.line
    : lines.find((each) => each === on.toLowerCase());
  if (line === undefined && !trailer) {
    throw new BadInput(
      `“${on}” is no trailer of the catalogue and none of its lines ${lines.join(', ')}.`,
    );
  }
  const fit = line === undefined ? [] : [fitSaid(all, accessory, line)];
  if (!trailer) return { accessory: accessory.id, says: [...fit, standing], refused, notes };
  const effect = effectOf(all, accessory, trailer) ?? null;
  const says = [...fit, effectSaid(all, accessory, trailer), standing];
  return { accessory: accessory.id, says, effect, refused, notes };
}

export function accessoriesAsText({ says, all }: AccessoryTold): string {
  if (!all) return says.join('\n');
  return inColumns(
    all.map(({ label, weight, sits, beside }) => [
      label,
      `${weight} lb`,
      sits ?? '',
      beside.fittedBy,
      beside.stocked,
    ]),
    [1],
  );
}
