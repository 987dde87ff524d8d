import { overBudget } from '@tarebook/casebook';
import { keptCase } from './kept';
import { unpack } from './link';
import { sharedName } from './link-name';

/** A case that came with a link, under a name of its own, and what was typed on it since. */
export type SharedCase = {
  readonly name: string;
  readonly filed: string;
  readonly kept: string | undefined;
};
export type Shared = SharedCase | { readonly says: string };

/** Opens a packed case beside whatever is here; a link that is not whole is told in a sentence. */
export async function openShared(topic: string, name: string, packed: string): Promise<Shared> {
  try {
    const filed = await unpack(packed);
    // Before any parser sees it: a link of a few characters can unfold to what stops the page.
    const over = overBudget(filed);
    if (over) return { says: `This link was not opened. ${over.says}` };
    const own = sharedName(name, filed);
    const kept = await keptCase(topic, own).catch(() => undefined);
    return { name: own, filed, kept: kept?.text };
  } catch (problem) {
    return { says: problem instanceof Error ? problem.message : String(problem) };
  }
}
