import type { Node } from './nodes';

/** A function as it stands in a formula: `sum(list.weight)`. */
export type Call = {
  readonly name: string;
  readonly count: number;
  /** Refuses the call with how it is written, unless it is right. */
  readonly wants: (right: boolean, form: string) => void;
  readonly node: (i: number) => Node;
  readonly nodes: () => readonly Node[];
  readonly nameAt: (i: number) => string;
  /** The names from one argument on. */
  readonly names: (from: number) => readonly string[];
  /** Names as they are, and words out of their quotes. */
  readonly words: () => readonly string[];
  /** The names that a node mentions. */
  readonly mentioned: (node: Node) => readonly string[];
};

/** By what a kind of formula is recognized, and what is made of it. */
export type Form<N> =
  | { readonly by: 'number'; readonly read: (value: number) => N }
  | { readonly by: 'word'; readonly read: (text: string) => N }
  /** Any name, or one alone. */
  | { readonly by: 'name'; readonly only?: string; readonly read: (id: string) => N }
  | { readonly by: 'sign before'; readonly sign: string; readonly read: (of: Node) => N }
  | {
      readonly by: 'sign between';
      readonly signs: readonly string[];
      readonly read: (a: Node, b: Node, sign: string) => N;
    }
  | {
      readonly by: 'call';
      readonly names: readonly string[];
      readonly read: (call: Call) => N;
    };
