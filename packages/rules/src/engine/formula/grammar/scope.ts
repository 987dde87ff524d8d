import type { Catalogue } from '../../define/catalogue';
import type { NumberValue, Value } from '../../value/values';
import type { Node, NodeOf } from './nodes';

/** What a formula can ask of the run it is reckoned in. */
export type Scope = {
  /** The value of a fact, parameter or formula; of a column, in the present row. */
  readonly value: (name: string) => Value;
  readonly given: (name: string) => boolean;
  readonly known: (name: string) => boolean;
  /** Whether a part of a formula rests on nothing unknown. */
  readonly partKnown: (node: Node, value: Value) => boolean;
  /** Whether a condition may hold by what the case tells, whatever an input is held at. */
  readonly may: (node: Node) => boolean;
  readonly rows: (list: string) => number;
  readonly inRow: (list: string, row: number) => Scope;
  readonly table: (name: string) => readonly (readonly [number, number])[];
  /** What a table of words gives for an option. */
  readonly wordValue: (table: string, word: string) => number;
  readonly catalogue: (name: string) => Catalogue;
  /** What a catalogue says. */
  readonly catalogued: (node: NodeOf<'catalogued'>) => Value;
  readonly sunHeight: (latitude: NumberValue, day: NumberValue, hour: NumberValue) => NumberValue;
  /** The scopes of a simulation's steps, and of its states once they are done. */
  readonly simulation: (name: string) => {
    readonly steps: readonly Scope[];
    readonly end: Scope;
    readonly isState: (name: string) => boolean;
  };
};

/** The value of a formula in a scope: every result its inputs allow lies within it. */
export type Reckon = (node: Node, scope: Scope) => Value;
