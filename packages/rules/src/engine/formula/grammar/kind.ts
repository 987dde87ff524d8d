import type { Lanes, Numbers, Program, Truths } from '../../value/lanes';
import type { Value } from '../../value/values';
import type { Form } from './form';
import type { KindName, Node, NodeOf } from './nodes';
import type { Reckon, Scope } from './scope';
import type { Sort, Sorting } from './sorts';

/** Where what a value was really reckoned from is noted. */
export type Using = {
  readonly scope: Scope;
  readonly reckon: Reckon;
  readonly from: (name: string) => void;
  /** All that a part was reckoned from. */
  readonly part: (node: Node) => void;
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
 * One kind of formula, with all that anything here does with it. A kind that lacks one of these does
 * not compile.
 */
export type Kind<K extends KindName> = {
  /** How it is written. */
  readonly form: Form<NodeOf<K>>;
  /** The rule of its units: what it is, or why its parts do not go together. */
  readonly sort: (node: NodeOf<K>, at: Sorting) => Sort;
  /** Over ranges, with slopes. */
  readonly reckon: (node: NodeOf<K>, scope: Scope, reckon: Reckon) => Value;
  /** The formulas directly below it. */
  readonly parts: (node: NodeOf<K>) => readonly Node[];
  /** The names that it mentions beside those of its parts. */
  readonly mentions: (node: NodeOf<K>) => readonly string[];
  /** What its value was really reckoned from, in the branches taken. */
  readonly uses: (node: NodeOf<K>, at: Using) => void;
  /** In many draws at once; `drawByDraw` where there is no way but one after another. */
  readonly draw: (node: NodeOf<K>, at: Drawing) => Lanes;
};

export const none = (): readonly never[] => [];
