import { towFit } from '@tarebook/rules';
import { type Fact, type FactsGiven, readFacts, sayProblem } from '@tarebook/rules/engine';
import type { RefusedRow, SheetRow } from './sheet';
import { readSheet } from './sheet';

/** One vehicle or trailer of a catalogue: what tow fit asks of it, and everything else beside. */
export type Entry = {
  readonly name: string;
  readonly facts: FactsGiven;
  /** Every cell by its column, for choosing by (`body`, `lot`, `length` …). */
  readonly cells: Readonly<Record<string, string>>;
};

/** What goes along under one name, by the list it belongs to. */
export type NamedLoad = {
  readonly name: string;
  readonly facts: FactsGiven;
};

export type Catalogue = {
  readonly vehicles: readonly Entry[];
  readonly trailers: readonly Entry[];
  readonly loads: readonly NamedLoad[];
  /** What was not taken, each with the file, the line and the reason. */
  readonly refused: readonly RefusedRow[];
};

export type CatalogueFiles = {
  readonly 'vehicles.csv'?: string;
  readonly 'trailers.csv'?: string;
  readonly 'loads.csv'?: string;
};

type Kind = 'vehicle' | 'trailer';

const facts: Readonly<Record<string, Fact>> = towFit.facts;

/** The fact a column stands for; columns of old names are read as what they are called now. */
function factOf(
  kind: Kind,
  column: string,
): { readonly id: string; readonly fact: Fact } | undefined {
  const id = `${kind}.${column}`;
  const fact = Object.hasOwn(facts, id) ? facts[id] : undefined;
  return fact && fact.kind !== 'rows' ? { id, fact } : undefined;
}

/** A bare number in the unit of its fact, and every other cell as it is written. */
function written(cell: string, fact: Fact): string {
  const isBare = /^[-+−]?[\d.,\s]+$/.test(cell);
  return isBare && fact.kind === 'quantity' && fact.unit !== '' ? `${cell} ${fact.unit}` : cell;
}

function factsIn(kind: Kind, cells: SheetRow['cells']): FactsGiven {
  const given: Record<string, string> = {};
  for (const [column, cell] of Object.entries(cells)) {
    const found = factOf(kind, column);
    if (found && cell !== '') given[found.id] = written(cell, found.fact);
  }
  return given;
}

function entriesOf(file: string, kind: Kind, text: string) {
  const { rows, refused } = readSheet(file, text);
  const entries: Entry[] = [];
  const troubles: RefusedRow[] = [...refused];
  const names = new Set<string>();
  for (const { line, cells } of rows) {
    const name = cells.name ?? '';
    const refuse = (says: string) => troubles.push({ file, line, says });
    if (name === '') refuse('it has no name; give each row one.');
    else if (names.has(name)) refuse(`“${name}” stands in the file already; give it another name.`);
    else {
      const given = factsIn(kind, cells);
      const { problems } = readFacts(towFit, given);
      const [first] = problems;
      if (first) refuse(sayProblem(first));
      else {
        names.add(name);
        entries.push({ name, facts: given, cells });
      }
    }
  }
  return { entries, refused: troubles };
}

const lists: readonly string[] = [
  'load.occupants',
  'load.cargo',
  'trailer.options',
  'trailer.cargo',
];

function loadsOf(file: string, text: string) {
  const { rows, refused } = readSheet(file, text);
  const troubles: RefusedRow[] = [...refused];
  const byName = new Map<string, Record<string, Record<string, string>[]>>();
  for (const { line, cells } of rows) {
    const { name = '', list = '', label = '', weight = '', ahead = '' } = cells;
    if (name === '' || weight === '' || !lists.includes(list)) {
      troubles.push({
        file,
        line,
        says: `a row wants a name, a weight and one of the lists ${lists.join(', ')}.`,
      });
      continue;
    }
    const load = byName.get(name) ?? {};
    const fact = facts[list];
    const unitOf = (column: string) =>
      fact?.kind === 'rows' ? (fact.columns[column]?.unit ?? '') : '';
    const bare = (cell: string, column: string) =>
      /^[-+−]?[\d.,\s]+$/.test(cell) ? `${cell} ${unitOf(column)}` : cell;
    const row = {
      label,
      weight: bare(weight, 'weight'),
      ...(ahead !== '' && { ahead: bare(ahead, 'ahead') }),
    };
    load[list] = [...(load[list] ?? []), row];
    byName.set(name, load);
  }
  const loads = [...byName].map(([name, given]) => ({ name, facts: given }));
  return { loads, refused: troubles };
}

/**
 * A dealer's catalogue from its files; any may be missing. Columns are the facts of tow fit without
 * `vehicle.` or `trailer.`, values in the facts' own units or with a unit; an empty cell is not told.
 * A row that cannot be read is left out and told, and never half read.
 */
export function readCatalogue(files: CatalogueFiles): Catalogue {
  const vehicles = entriesOf('vehicles.csv', 'vehicle', files['vehicles.csv'] ?? '');
  const trailers = entriesOf('trailers.csv', 'trailer', files['trailers.csv'] ?? '');
  const loads = loadsOf('loads.csv', files['loads.csv'] ?? '');
  return {
    vehicles: vehicles.entries,
    trailers: trailers.entries,
    loads: loads.loads,
    refused: [...vehicles.refused, ...trailers.refused, ...loads.refused],
  };
}
