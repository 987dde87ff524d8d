import type { FactGiven, FactsGiven } from '@tarebook/rules/engine';
import type { Catalogue, Entry } from './catalogue';

/** What became of a vehicle or trailer from one catalogue to the next. */
export type EntryMove = {
  readonly name: string;
  readonly what: 'new' | 'gone' | 'changed';
  /** Which facts are otherwise, with what they were and what they are; undefined where not told. */
  readonly facts: readonly {
    readonly fact: string;
    readonly was: FactGiven | undefined;
    readonly is: FactGiven | undefined;
  }[];
};

const isSame = (a: FactGiven | undefined, b: FactGiven | undefined): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/** What is otherwise in the second list of entries than in the first. */
export function entryMoves(
  before: readonly Entry[],
  after: readonly Entry[],
): readonly EntryMove[] {
  const had = new Map(before.map((entry) => [entry.name, entry]));
  const has = new Set(after.map(({ name }) => name));
  const moved = after.flatMap(({ name, facts }): EntryMove[] => {
    const old = had.get(name);
    if (!old) return [{ name, what: 'new', facts: [] }];
    const changed = [...new Set([...Object.keys(old.facts), ...Object.keys(facts)])].flatMap(
      (fact) => {
        const [was, is] = [old.facts[fact], facts[fact]];
        return isSame(was, is) ? [] : [{ fact, was, is }];
      },
    );
    return changed.length === 0 ? [] : [{ name, what: 'changed', facts: changed }];
  });
  const gone = before.filter(({ name }) => !has.has(name));
  return [...moved, ...gone.map(({ name }): EntryMove => ({ name, what: 'gone', facts: [] }))];
}

/** Of whom a fact was read: `catalogue, Heron 14`. */
const entryOf = (readFrom: string | undefined): string | undefined =>
  /^catalogue, (.+)$/.exec(readFrom ?? '')?.[1];

/**
 * A case's facts by the next catalogue: what was read from an entry that has changed is as it is now.
 * Undefined where nothing in it rests on what has changed.
 */
export function factsMoved(
  facts: FactsGiven,
  readFrom: Readonly<Record<string, string>>,
  moves: readonly EntryMove[],
): FactsGiven | undefined {
  const changed: Record<string, FactGiven> = { ...facts };
  let isMoved = false;
  for (const [fact, from] of Object.entries(readFrom)) {
    const name = entryOf(from);
    const move = moves.find((each) => each.name === name && each.what === 'changed');
    const change = move?.facts.find((each) => each.fact === fact);
    if (!change) continue;
    isMoved = true;
    changed[fact] = change.is ?? 'unknown';
  }
  return isMoved ? changed : undefined;
}

/** What is otherwise in one catalogue than in another. */
export const catalogueMoves = (before: Catalogue, after: Catalogue): readonly EntryMove[] => [
  ...entryMoves(before.vehicles, after.vehicles),
  ...entryMoves(before.trailers, after.trailers),
];
