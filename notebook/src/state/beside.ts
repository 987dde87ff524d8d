import { overBudget } from '@tarebook/casebook';
import { pack, unpack } from './link';
import { hasFields } from './shelf';

/** What was chosen for a rig; '' is as the case has it. */
export type Choice = { readonly vehicle: string; readonly trailer: string; readonly load: string };

/** One rig: what was chosen, and its whole case, so that a link needs no catalogue. */
export type Column = Choice & { readonly text: string };

/** One case with up to three rigs beside each other. */
export type Beside = {
  /** The case that all of them began as. */
  readonly from: string;
  readonly columns: readonly Column[];
};

/** More than these nobody compares, and a phone has no room for them. */
export const mostColumns = 3;

export const asTheCase: Choice = { vehicle: '', trailer: '', load: '' };

const kind = 'tarebook-beside';

export const packBeside = ({ from, columns }: Beside): Promise<string> =>
  pack(JSON.stringify({ kind, version: 1, from, columns }));

const told = (value: object, key: string): unknown =>
  Object.getOwnPropertyDescriptor(value, key)?.value;

function isColumn(value: unknown): value is Column {
  return hasFields(value, {
    ...{ text: 'string', vehicle: 'string', trailer: 'string', load: 'string' },
  });
}

const notOurs = 'This link holds no rigs to set side by side; ask for it once more.';

function besideIn(text: string): Beside | { readonly says: string } {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { says: notOurs };
  }
  if (!hasFields(value, { kind: 'string', from: 'string', columns: 'object' })) {
    return { says: notOurs };
  }
  if (told(value, 'version') !== 1 || told(value, 'kind') !== kind) return { says: notOurs };
  const from = told(value, 'from');
  const columns = told(value, 'columns');
  if (typeof from !== 'string' || !Array.isArray(columns)) return { says: notOurs };
  if (columns.length === 0 || columns.length > mostColumns || !columns.every(isColumn)) {
    return {
      says: `This link holds ${columns.length} rigs, or some that cannot be read; one to ${mostColumns} stand side by side.`,
    };
  }
  const own = columns.map(({ vehicle, trailer, load, text: of }) => {
    return { vehicle, trailer, load, text: of };
  });
  // Before any parser sees them: a link of a few characters can unfold to what stops the page.
  for (const each of [from, ...own.map((column) => column.text)]) {
    const over = overBudget(each);
    if (over) return { says: `This link was not opened. ${over.says}` };
  }
  return { from, columns: own };
}

/** What a link holds; one that is not whole is told in a sentence. */
export async function openBeside(packed: string): Promise<Beside | { readonly says: string }> {
  try {
    return besideIn(await unpack(packed));
  } catch (problem) {
    return { says: problem instanceof Error ? problem.message : String(problem) };
  }
}
