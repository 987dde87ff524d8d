import type { AskName } from '../../catalogue/ask-names';
import type { Arithmetic } from '../../value/numbers';
import type { Compare } from '../../value/truth';

type Two = { readonly a: Node; readonly b: Node };
type One = { readonly of: Node };
type Several = { readonly of: readonly Node[] };
type Named = { readonly names: readonly string[] };

export type Over = 'least' | 'most' | 'total' | 'last';

/**
 * The closed set of what a formula can be made of. What each kind means stands in its file, in
 * `kinds/`; the table in `kinds.ts` has one entry for each, or does not compile.
 */
type Shapes = {
  readonly number: { readonly value: number };
  readonly word: { readonly text: string };
  readonly name: { readonly id: string };
  readonly unlimited: object;
  readonly negative: One;
  readonly arithmetic: { readonly op: Arithmetic } & Two;
  readonly compare: { readonly op: Compare } & Two;
  readonly both: Two;
  readonly either: Two;
  readonly not: One;
  readonly choose: { readonly when: Node; readonly chosen: Node; readonly otherwise: Node };
  readonly min: Several;
  readonly max: Several;
  readonly largestKnown: Several;
  readonly sum: { readonly list: string } & One;
  readonly count: { readonly list: string };
  readonly given: Named;
  readonly known: Named;
  readonly may: One;
  readonly needs: One & Named;
  readonly lookup: { readonly table: string; readonly at: Node };
  readonly pick: { readonly table: string; readonly at: Node };
  readonly power: { readonly base: Node; readonly exponent: Node };
  readonly whole: One;
  readonly between: Two;
  readonly sunHeight: { readonly latitude: Node; readonly day: Node; readonly hour: Node };
  readonly over: { readonly how: Over; readonly simulation: string } & One;
  readonly catalogued: {
    readonly catalogue: string;
    readonly ask: AskName;
    readonly args: readonly string[];
  };
};

export type KindName = keyof Shapes;
export type NodeOf<K extends KindName> = { [P in K]: { readonly kind: P } & Shapes[P] }[K];
export type Node = NodeOf<KindName>;
