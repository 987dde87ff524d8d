import type { Fact, Topic } from '@tarebook/rules/engine';
import { findUnit } from '@tarebook/rules/quantity';
import { towFit } from '@tarebook/rules/tow-fit';

export type Side = 'vehicle' | 'trailer';

/** A column as its file calls it, the unit its head names, and as a catalogue calls it. */
export type Column = {
  readonly theirs: string;
  /** Undefined where nobody can say what it is; it is kept under its own name. */
  readonly ours: string | undefined;
  readonly unit: string | undefined;
};

const topic: Topic = towFit;

/** What people call the column that says what stands in a row. */
export const nameCalled: readonly string[] = [
  ...['name', 'model', 'plan', 'floor plan', 'floorplan', 'unit', 'vehicle', 'trailer'],
];

/** What people call the columns one chooses by. */
const beside: Readonly<Record<string, readonly string[]>> = {
  name: nameCalled,
  body: ['body', 'type', 'kind', 'style', 'body style'],
  group: ['group', 'drive', 'driven by', 'fuel'],
  length: ['length', 'overall length', 'length overall', 'exterior length'],
  sleeps: ['sleeps', 'berths', 'sleeping places', 'sleeping capacity'],
  price: ['price', 'list price', 'asking price', 'asking', 'msrp'],
  lot: ['lot', 'where', 'availability', 'on the lot'],
  couplerHeight: ['coupler height', 'hitch height'],
  freshTank: ['fresh tank', 'fresh water tank', 'fresh capacity'],
  grayTank: ['gray tank', 'gray water tank'],
  blackTank: ['black tank', 'black water tank'],
};

/** What the trade shortens in the heads of its lists. */
const shortened: Readonly<Record<string, readonly string[]>> = {
  'trailer.dryWeight': ['uvw', 'unloaded weight', 'dry wt'],
  'trailer.cargoCapacity': ['ccc', 'cargo capacity'],
  'trailer.dryTongueWeight': ['hitch wt', 'tongue wt', 'tongue'],
  'trailer.gvwr': ['gross weight'],
};

/** “dryWeight”, “Dry Weight (lb)” and “dry_weight” are the same words. */
export const wordsOf = (head: string): string =>
  head
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** The unit that a head ends in, in brackets or behind a comma, and the head without it. */
export function unitIn(head: string): { readonly bare: string; readonly unit: string | undefined } {
  const [, bare = '', inside = ''] = /^(.*?)[\s,]*[([]\s*([^()[\]]+)\s*[)\]]\s*$/u.exec(head) ?? [];
  if (inside !== '') return { bare, unit: findUnit(inside)?.symbol };
  const [, before = '', last = ''] = /^(.*\S)[\s,_]+(\S+)$/u.exec(head) ?? [];
  const unit = findUnit(last.replace(/s$/, '')) ?? findUnit(last);
  return unit && unit.symbol !== '' && last.length <= 6
    ? { bare: before, unit: unit.symbol }
    : { bare: head, unit: undefined };
}

function namesFor(side: Side): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const put = (words: string, ours: string): void => {
    if (!found.has(words)) found.set(words, ours);
  };
  const facts = Object.entries(topic.facts).filter(
    ([id, { kind }]) => id.startsWith(`${side}.`) && kind !== 'rows',
  );
  const ours = (id: string): string => id.slice(side.length + 1);
  for (const [id] of facts) put(wordsOf(ours(id)), ours(id));
  for (const [column, called] of Object.entries(beside)) {
    for (const words of called) put(words, column);
    put(wordsOf(column), column);
  }
  for (const [id, { label }] of facts) {
    put(wordsOf(label), ours(id));
    put(wordsOf(label.replace(/^trailer /i, '')), ours(id));
  }
  for (const [id] of facts) {
    const called = [...(topic.called?.facts?.[id] ?? []), ...(shortened[id] ?? [])];
    for (const words of called) put(wordsOf(words), ours(id));
  }
  return found;
}

const names: Readonly<Record<Side, ReadonlyMap<string, string>>> = {
  vehicle: namesFor('vehicle'),
  trailer: namesFor('trailer'),
};

/** The names a column may be given by hand, in the order of the facts. */
export const columnsFor = (side: Side): readonly string[] => [
  ...new Set([...Object.keys(beside), ...names[side].values()]),
];

/** What a column is called: by the dealer’s own word for it, else by what people call it. */
function oursFor(
  side: Side,
  head: string,
  bare: string,
  own: Readonly<Record<string, string>>,
): string | undefined {
  if (Object.hasOwn(own, head)) return own[head];
  return names[side].get(wordsOf(head)) ?? names[side].get(wordsOf(bare));
}

/** Each column of a file; of two that are called the same the first is taken. */
export function columnsOf(
  side: Side,
  heads: readonly string[],
  own: Readonly<Record<string, string>> = {},
): readonly Column[] {
  const taken = new Set<string>();
  // A column that has the very name is never taken from it by one that is only called so.
  const exact = new Set(heads.filter((head) => names[side].get(wordsOf(head)) === head));
  return heads.map((head) => {
    const { bare, unit } = unitIn(head);
    const found = oursFor(side, head, bare, own);
    const isFree =
      found !== undefined && !taken.has(found) && (!exact.has(found) || found === head);
    if (isFree) taken.add(found);
    return { theirs: head, ours: isFree ? found : undefined, unit };
  });
}

/** Which of the two files a sheet is, by what it is called, else by its columns; undefined where neither. */
export function sideOfSheet(file: string, heads: readonly string[]): Side | undefined {
  const called = (['vehicle', 'trailer'] as const).filter((side) =>
    file.toLowerCase().includes(side),
  );
  if (called.length === 1) return called[0];
  const own = (side: Side): number =>
    columnsOf(side, heads).filter(({ ours }) => ours !== undefined && isFact(side, ours)).length;
  const [vehicle, trailer] = [own('vehicle'), own('trailer')];
  if (vehicle === trailer) return undefined;
  return vehicle > trailer ? 'vehicle' : 'trailer';
}

const isFact = (side: Side, column: string): boolean =>
  Object.hasOwn(topic.facts, `${side}.${column}`);

/** The fact a column stands for. */
export function factOf(
  side: Side,
  column: string,
): { readonly id: string; readonly fact: Fact } | undefined {
  const id = `${side}.${column}`;
  const fact = isFact(side, column) ? topic.facts[id] : undefined;
  return fact && fact.kind !== 'rows' ? { id, fact } : undefined;
}

const other: Readonly<Record<Side, Side>> = { vehicle: 'trailer', trailer: 'vehicle' };

/** Columns that are facts of one side and of the other not. */
const ownOf = (side: Side, columns: readonly Column[]): readonly string[] =>
  columns.flatMap(({ ours }) =>
    ours !== undefined && isFact(side, ours) && !isFact(other[side], ours) ? [ours] : [],
  );

/** Why a table is not taken that has no column of its own side and some of the other's. */
export function ofOtherSide(
  side: Side,
  heads: readonly string[],
  columns: readonly Column[],
): string | undefined {
  if (ownOf(side, columns).length > 0) return undefined;
  const foreign = ownOf(other[side], columnsOf(other[side], heads));
  if (foreign.length === 0) return undefined;
  const some = foreign.slice(0, 3).join(', ');
  return `the columns of ${other[side]}s stand in the file of ${side}s (${some}); give each file in its own place.`;
}
