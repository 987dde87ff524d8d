/**
 * What a kernel reckons, as a graph: each node one step, each step once. Steps know which side they
 * hang on, so that what hangs on the vehicle alone or the trailer alone is done once for each.
 *
 *     nothing 0      row 1      column 2      both 3
 */
export type Sort = 'number' | 'bits' | 'truth';

/** A step: numbers are doubles, bits 32 of them, a truth 0 or 1. */
export const operations = [
  'constant',
  'input',
  'add',
  'mul',
  'div',
  'neg',
  'min',
  'max',
  'round',
  'number-or',
  'less',
  'not-above',
  'same',
  'bits-or',
  'bits-and',
  'bits-are',
  'and',
  'or',
  'not',
  'choose',
  'above',
  'from',
  'from-times',
  'from-over',
] as const;
export type Op = (typeof operations)[number];

export type Ref = number;

export type Step = {
  readonly op: Op;
  readonly sort: Sort;
  readonly args: readonly Ref[];
  /** The value of a constant; of `bits-are` what they are held against; of `number-or` what stands in for none. */
  readonly value: number;
  /** What an input is called. */
  readonly name: string;
  readonly side: number;
  /** Bounds that hold whatever the inputs are; a number that may be none at all says so. */
  readonly least: number;
  readonly most: number;
  readonly mayBeNone: boolean;
};

export type Graph = {
  readonly steps: readonly Step[];
  readonly constant: (value: number) => Ref;
  readonly bits: (value: number) => Ref;
  readonly truth: (value: boolean) => Ref;
  readonly input: (
    name: string,
    sort: Sort,
    side: number,
    least: number,
    most: number,
    mayBeNone?: boolean,
  ) => Ref;
  readonly add: (a: Ref, b: Ref) => Ref;
  readonly mul: (a: Ref, b: Ref) => Ref;
  readonly div: (a: Ref, b: Ref) => Ref;
  readonly neg: (a: Ref) => Ref;
  readonly min: (a: Ref, b: Ref) => Ref;
  readonly max: (a: Ref, b: Ref) => Ref;
  /** To a millionth, as everything is before it is compared. */
  readonly round: (a: Ref) => Ref;
  /** Where a number turns that is rounded and held against a limit; of an endless one there is none. */
  readonly above: (limit: Ref) => Ref;
  readonly from: (limit: Ref) => Ref;
  /** The same where it is multiplied, or divided, by what is above zero. */
  readonly fromTimes: (limit: Ref, by: Ref) => Ref;
  readonly fromOver: (limit: Ref, by: Ref) => Ref;
  /** The number, or `value` where it is none. */
  readonly numberOr: (a: Ref, value: number) => Ref;
  readonly less: (a: Ref, b: Ref) => Ref;
  readonly notAbove: (a: Ref, b: Ref) => Ref;
  readonly same: (a: Ref, b: Ref) => Ref;
  readonly bitsOr: (a: Ref, b: Ref) => Ref;
  readonly bitsAnd: (a: Ref, b: Ref) => Ref;
  readonly bitsAre: (a: Ref, value: number) => Ref;
  readonly and: (...all: readonly Ref[]) => Ref;
  readonly or: (...all: readonly Ref[]) => Ref;
  readonly not: (a: Ref) => Ref;
  readonly choose: (when: Ref, then: Ref, otherwise: Ref) => Ref;
  readonly isConstant: (a: Ref, value: number) => boolean;
};
