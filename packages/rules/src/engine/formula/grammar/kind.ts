import type { Lanes, Numbers, Program, Truths } from '../../value/lanes';
import type { Value } from '../../value/values';
import type { Form } from './form';
import type { KindName, Node, NodeOf } from './nodes';
import type { Reckon, Scope } from './scope';
import type { Sort, Sorting } from './sorts';

/**
 * Where what a value was really reckoned from is noted: `from` what stands in it, `decidedBy` what
 * only settled which part of the formula counts.
 */
export type Using = {
  readonly scope: Scope;
  readonly reckon: Reckon;
  readonly from: (name: string) => void;
  readonly decidedBy: (name: string) => void;
  /** A part that counts. */
  readonly part: (node: Node) => void;
  /** A part that settled which others count. */
  readonly decider: (node: Node) => void;
  /** The same in one row of a list, whose own columns are no more than the list. */
  readonly inRow: (place: RowPlace) => Using;
};

/** One row of a list. */
export type RowPlace = { readonly list: string; readonly row: number };

/** What drawing a formula, many draws at once, knows of its surroundings. */
export type Drawing = {
  readonly program: Program;
  readonly scope: Scope;
  readonly reckon: Reckon;
  /** The value over the whole ranges. */
  readonly whole: Value;
  /** Inside a sum, the row that its columns mean. */
  readonly place: RowPlace | undefined;
  readonly drawn: ReadonlyMap<string, Numbers>;
  /** The lanes of a name. */
  readonly named: (name: string) => Lanes;
  readonly part: (node: Node) => Lanes;
  readonly numbers: (node: Node) => Numbers;
  readonly truths: (node: Node) => Truths;
  readonly inRow: (place: RowPlace) => Drawing;
};

/**
 * One kind of formula, with all that an answer does with it. A kind that lacks one of these, or what
 * stands beside it, does not compile.
 */
export type Kind<K extends KindName> = {
  /** How it is written. */
  readonly form: Form<NodeOf<K>>;
  /** Over ranges, with slopes. */
  readonly reckon: (node: NodeOf<K>, scope: Scope, reckon: Reckon) => Value;
  /** The formulas directly below it. */
  readonly parts: (node: NodeOf<K>) => readonly Node[];
  /** The names that it mentions beside those of its parts. */
  readonly mentions: (node: NodeOf<K>) => readonly string[];
  /** The tables, simulations and catalogues that it asks beside those that its parts ask. */
  readonly asks: (node: NodeOf<K>) => readonly string[];
  /** What its value was really reckoned from, in the branches taken. */
  readonly uses: (node: NodeOf<K>, at: Using) => void;
};

/**
 * The rule of the units of a kind: what it is, or why its parts do not go together. It stands beside
 * the kind and not in it: what asks a rule set that was looked through before never brings it.
 */
export type SortOf<K extends KindName> = (node: NodeOf<K>, at: Sorting) => Sort;

/**
 * A kind of formula in many draws at once; `drawByDraw` where there is no way but one after another.
 * It stands beside the kind and not in it: what asks once never brings it.
 */
export type Draw<K extends KindName> = (node: NodeOf<K>, at: Drawing) => Lanes;

export const none = (): readonly never[] => [];
