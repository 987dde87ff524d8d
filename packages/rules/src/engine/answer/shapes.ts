import type { Interval, UnitSystem } from '../../quantity';
import type { Source, State } from '../define/shapes';
import type { Ends, Sayable } from '../words/value';

export type { Ends } from '../words/value';

/** A value that words name: a number with its unit, or the options it may be. */
export type Told = Ends | { readonly among: readonly string[] };

export type LimitAnswer = {
  readonly id: string;
  readonly label: string;
  readonly used: Ends;
  readonly limit: Ends;
  /** limit − used */
  readonly headroom: Ends;
  /** used ÷ limit */
  readonly share: Interval;
  readonly state: State;
  /** Not asked, though its rating was told: what was told does not call for it. */
  readonly uncalledFor?: true;
  /** From where care is due; absent where no margin is kept. */
  readonly careAt?: Ends;
  /** (used − empty) ÷ (limit − empty), by which the binding limit is found. */
  readonly roomUsed: Interval;
  readonly source: Source;
};

export type FindingAnswer = {
  readonly id: string;
  readonly label: string;
  readonly level: State;
  /** Which of its words are said: a level with the number of its ruling, `ok`, `perhaps` … */
  readonly code: string;
  /** What is wrong; why it matters and what to do, '' where that goes without saying. */
  readonly wrong: string;
  readonly because: string;
  readonly do: string;
  /** At the level `if`: what must be true, as a clause after “if”. */
  readonly proviso: string;
  /** The topic that answers more of it, while something is wrong. */
  readonly see?: { readonly topic: string; readonly says: string };
  /** Where it is open: each of what may be so. */
  readonly alternatives: readonly string[];
  /** The values in its words. */
  readonly values: Readonly<Record<string, Told>>;
  /** All of it in one. */
  readonly says: string;
  /** The same as codes and values, which any voice can say. */
  readonly messages: {
    readonly wrong: Sayable;
    readonly because?: Sayable;
    readonly do?: Sayable;
    readonly proviso?: Sayable;
  };
  readonly source: Source;
};

export type Missing = {
  readonly fact: string;
  readonly label: string;
  readonly ask: string;
  readonly where: string;
  /** The limits and findings it decides. */
  readonly decides: readonly string[];
  /** Where the verdict tips: a value, the options that would stop it, or null if others decide too. */
  readonly tips: Ends | string | null;
  /** On which side of it the verdict is against it. */
  readonly side: 'above' | 'below' | null;
  /** Facts with which alone it decides; empty where it settles what it decides by itself. */
  readonly together: readonly string[];
  /** The share of its plausible values that settle the verdict, 0 to 1. */
  readonly settles: number;
  readonly says: string;
  readonly message: Sayable;
};

export type Assumed = {
  readonly fact?: string;
  readonly says: string;
  readonly message: Sayable;
  readonly source: Source;
};

/** One step of the reasoning: what it is, what it came to, and from which other steps. */
export type Step = {
  readonly kind:
    | 'fact'
    | 'list'
    | 'parameter'
    | 'formula'
    | 'decision'
    | 'simulation'
    | 'catalogue'
    | 'table'
    | 'day'
    | 'limit'
    | 'finding'
    | 'verdict';
  readonly label: string;
  /** How it is called inside a sentence. */
  readonly noun: string;
  /** In words, in the units that were asked for. */
  readonly value: string;
  /** The same as codes and values. */
  readonly messages: {
    readonly label: Sayable;
    readonly noun: Sayable;
    readonly value: Sayable;
    readonly working?: Sayable;
    readonly told?: Sayable;
  };
  readonly ends?: Ends;
  /** Of a choice, a yes or no, a decision: what it may come to. */
  readonly among?: readonly string[];
  /** Of a fact: whether it is known, mentioned and not known, or not mentioned. */
  readonly status?: 'known' | 'unknown' | 'silent';
  /** It says no more than whether something is known. */
  readonly tests?: boolean;
  /** The formula with the numbers put in. */
  readonly working?: string;
  /** The same in words: “the dry tongue (430 lb, brochure) and 10 % on top”. */
  readonly told?: string;
  readonly is?: string;
  readonly from: readonly string[];
  /** What settled which parts of the formula count, and does not stand in its working. */
  readonly decidedBy?: readonly string[];
  readonly source?: Source;
  readonly readFrom?: string;
};

export type Trace = {
  readonly root: 'verdict';
  /** In which its words are written. */
  readonly units: UnitSystem;
  readonly steps: Readonly<Record<string, Step>>;
};

/** What a decision came to: one result, or every one that what is not known leaves open. */
export type ChoiceAnswer = {
  readonly label: string;
  readonly among: readonly string[];
  /** As a person reads each, and the sentence that goes with it. */
  readonly labels: readonly string[];
  readonly says: readonly string[];
  readonly messages: readonly Sayable[];
  readonly source: Source;
};

/** A list of things chosen, each with the reason. */
export type SelectionAnswer = {
  readonly id: string;
  readonly label: string;
  readonly items: readonly {
    readonly id: string;
    readonly label: string;
    readonly group?: string;
    readonly chosen: 'yes' | 'no' | 'unknown';
    readonly amounts: Readonly<Record<string, Ends>>;
    readonly because: string;
    readonly message: Sayable;
    readonly source: Source;
  }[];
  readonly totals: Readonly<Record<string, Ends>>;
};

export type RankingAnswer = {
  readonly id: string;
  readonly label: string;
  readonly entries: readonly {
    readonly id: string;
    readonly says: string;
    readonly message: Sayable;
    readonly value: Ends;
    /** Whether it certainly comes before the next, or both are out of the order. */
    readonly apart: boolean;
    /** It never comes, or comes to nothing, as far as was told. */
    readonly out: boolean;
  }[];
  /** What is out of the order, in a sentence; '' where nothing is. */
  readonly rest: string;
  readonly source: Source;
};

/** A simulation step by step; a state has one value more than there are steps. */
export type SeriesAnswer = {
  readonly label: string;
  readonly steps: number;
  readonly lines: Readonly<
    Record<string, { readonly label: string; readonly ends: readonly Ends[] }>
  >;
};

export type ParameterAnswer = {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  readonly from: string;
  readonly until?: string;
  readonly source: Source;
};

/** A parameter whose value is known to change, or to run out, after the day of the answer. */
export type Dated = {
  readonly parameter: string;
  readonly value: number;
  readonly unit: string;
  readonly from: string;
  readonly until?: string;
  readonly next?: { readonly from: string; readonly value: number };
  readonly says: string;
  readonly message: Sayable;
};

/** Under whose own parameters an answer stands. */
export type HouseAnswer = {
  readonly name: string;
  readonly parameters: readonly {
    readonly id: string;
    readonly label: string;
    readonly value: number;
    readonly unit: string;
    readonly from: string;
    /** The value of the rule set. */
    readonly instead: number;
    readonly reason: string;
    readonly says: string;
    readonly message: Sayable;
  }[];
};

export type Answer<
  Name extends string = string,
  Apart extends string = string,
  Outcome extends string = string,
  Limit extends string = string,
> = {
  readonly topic: string;
  /** The version of the rule set. */
  readonly rules: string;
  readonly asOf: string;
  readonly outcome: Outcome;
  readonly words: string;
  /** One sentence that can be said aloud. */
  readonly sentence: string;
  /** On how many limits the verdict rests, and which were not asked; '' where it rests on none. */
  readonly restsOn: string;
  /** What is said of the whole, as codes and values. */
  readonly messages: {
    readonly sentence: Sayable;
    readonly restsOn?: Sayable;
    readonly cautions: readonly Sayable[];
  };
  readonly binding: Limit | null;
  readonly limits: readonly LimitAnswer[];
  /** Every result that is a number, by id. */
  readonly values: Readonly<Record<Name, Ends>>;
  readonly findings: readonly FindingAnswer[];
  /** Decisions, lists of things chosen, rankings and simulations, where the topic has any. */
  readonly choices: Readonly<Record<string, ChoiceAnswer>>;
  readonly selections: readonly SelectionAnswer[];
  readonly rankings: readonly RankingAnswer[];
  readonly series: Readonly<Record<string, SeriesAnswer>>;
  readonly missing: readonly Missing[];
  readonly apart: Readonly<Record<Apart, Ends | null>>;
  readonly cautions: readonly string[];
  readonly assumed: readonly Assumed[];
  readonly parameters: readonly ParameterAnswer[];
  /** What is known to change after `asOf`. */
  readonly dated: readonly Dated[];
  /** The dealer's own parameters that hold; null without a house layer. */
  readonly house: HouseAnswer | null;
  readonly trace: Trace;
};

/** An answer whose working is made by `traceOf`, for whoever wants it. */
export type Untraced<A extends Answer = Answer> = Omit<A, 'trace'>;
