import type { Asking, Called, Caution, ForEverybody, HowTo, Telling, Text } from './asked';
import type { Catalogue } from './catalogue';
import type { Change } from './changes';
import type { Fact } from './facts';
import type { Ranking, Selection, Simulation } from './lists';
import type { Source } from './source';

/**
 * What a rule set is made of: plain data, no functions, so that it survives a JSON round trip.
 *
 *     facts ─► formulas ─► conditions ─► findings and limits ─► verdict
 *                 ▲
 *     parameters, tables
 *
 * Names used in formulas are dotted camelCase words (`trailer.dryWeight`); ids of limits and
 * findings are hyphenated words (`rear-axle`).
 */

export type {
  Asking,
  Called,
  Caution,
  Facts,
  ForEverybody,
  HowTo,
  Telling,
  Text,
  Worked,
} from './asked';
export type { ChoiceFact, Column, Default, Fact, QuantityFact, RowsFact, YesNoFact } from './facts';
export type { Ranking, Selection, Simulation } from './lists';
export type { Source, SourceClass } from './source';

/** A value of a parameter, from a day on; without `until`, until another begins. */
export type ParameterValue = {
  readonly from: string;
  /** The last day on which it holds. */
  readonly until?: string;
  readonly value: number;
  /** A dealer's own: whose, why, and the value it stands in for. */
  readonly house?: { readonly name: string; readonly reason: string; readonly instead: number };
};

/** A named number of the trade. The entry with the latest `from` not after the day counts. */
export type Parameter = {
  readonly label: string;
  /** How it is named inside a sentence; absent: its label. */
  readonly noun?: string;
  readonly unit: string;
  /** It is a year, and no amount. */
  readonly year?: boolean;
  readonly values: readonly ParameterValue[];
  /** For a house choice: the range a dealer may move it in. */
  readonly range?: readonly [number, number];
  readonly source: Source;
};

export type Formula = {
  readonly label: string;
  /** How it is named inside a sentence; absent: its label. */
  readonly noun?: string;
  /** The unit of the result; `yes-no` for one that is true or false; '' for a count. */
  readonly unit: string;
  /** It is a year, and no amount. */
  readonly year?: boolean;
  readonly is: string;
  /**
   * Where it takes something else for what was not told: the least and the most that it may be by
   * what is told, as formulas. Where it takes it for one fact by itself, that fact's own say so.
   */
  readonly within?: readonly [least: string, most: string];
  /**
   * Where what it takes is nothing that the told facts prove, but an assumption that is said with the
   * answer: the fact whose `silent` says it, or the `when` of the topic's own assumption.
   */
  readonly assumes?: string;
  readonly source: Source;
};

/** Value by key with straight lines between rows, held at its ends beyond them. */
export type Table = {
  readonly label: string;
  /** How it is named inside a sentence; absent: its label. */
  readonly noun?: string;
  readonly keyUnit: string;
  readonly valueUnit: string;
  readonly rows: readonly (readonly [key: number, value: number])[];
  readonly source: Source;
};

/** A number for each option of a choice, such as the resistance of each gauge of wire. */
export type WordTable = {
  readonly label: string;
  /** How it is named inside a sentence; absent: its label. */
  readonly noun?: string;
  readonly valueUnit: string;
  readonly values: Readonly<Record<string, number>>;
  readonly source: Source;
};

/**
 * What one result of a decision means: what is so, why, what to do. Its `level` makes it a finding,
 * see `findingOf`; one of level `if` has a proviso.
 */
export type Result = {
  readonly label: string;
  readonly says: Text;
  readonly because?: Text;
  readonly do?: Text;
  readonly proviso?: Text;
  readonly level?: Level;
};

/**
 * A decision table as the DMN standard has it. Its inputs are choices, yes/no facts and yes/no
 * formulas; each row has one entry an input: the options it accepts, or `-` for any. By the hit
 * policy `unique` one row at the most fits; by `first` the topmost that fits counts.
 */
export type Decision = {
  readonly label: string;
  readonly hit: 'unique' | 'first';
  readonly on: readonly string[];
  readonly rows: readonly {
    readonly when: readonly (string | readonly string[])[];
    readonly gives: string;
  }[];
  /** What each result means. */
  readonly results: Readonly<Record<string, Result>>;
  readonly source: Source;
};

/** The operators a condition may use, all from json-rules-engine's own set. */
export const operators = [
  'greaterThan',
  'greaterThanInclusive',
  'lessThan',
  'lessThanInclusive',
  'equal',
  'notEqual',
  'in',
  'notIn',
] as const;
export type Operator = (typeof operators)[number];

/** Conditions as json-rules-engine has them, less what could turn a missing value into a pass. */
export type Condition =
  | { readonly all: readonly Condition[] }
  | { readonly any: readonly Condition[] }
  | {
      readonly fact: string;
      readonly operator: Operator;
      readonly value: { readonly fact: string } | string | readonly string[];
    };

export type Limit = {
  readonly label: string;
  /** How its label is said inside a sentence; absent: its label. */
  readonly noun?: string;
  /** How it is named in "… runs out first". */
  readonly short: string;
  /** Whether `short` is more than one thing: “the front tires run out first”. */
  readonly plural?: boolean;
  /** Its short name is a rating, which is exceeded; whatever is loaded goes over. */
  readonly exceeded?: boolean;
  /** It is a supply, which falls short where more is used. */
  readonly supply?: boolean;
  /** What to do where it is over. */
  readonly do?: Text;
  /** What to do where it is kept, and only just; of a weight, absent: to add nothing, and weigh it. */
  readonly near?: Text;
  /** Names of values in the same unit. */
  readonly used: string;
  readonly limit: string;
  /** What stands on the limit unloaded and cannot be taken off; absent: nothing. */
  readonly empty?: string;
  /** The parameter that is kept free below the limit, a share of what is above empty; absent: none. */
  readonly margin?: string;
  /** The parameter that is kept free at the least, whatever the share comes to. */
  readonly marginLeast?: string;
  /**
   * Another way of using the rig that nobody has ruled out, and the limit it would have: while this
   * yes/no formula may hold, a stop that would then be none is unknown.
   */
  readonly relief?: { readonly when: string; readonly limit: string };
  /**
   * What is used where it comes out heavy but common, while this yes/no formula may hold: then `used` is
   * an estimate, and whoever looked a rating up by it would buy to the pound, and weigh more.
   */
  readonly cautious?: { readonly when: string; readonly used: string };
  /** Asked when any of these facts is mentioned; absent: always. */
  readonly askedBy?: readonly string[];
  /** And only where this yes/no formula may hold; while it also may not, a stop is unknown. */
  readonly askedWhen?: string;
  readonly source: Source;
};

/**
 * When a finding has a level, and what is then said: what is wrong, why it matters, what to do. The
 * condition is written as it is read, `tongue.share < tongue.stopBelow && tongue.isKnown`, or as the
 * JSON that json-rules-engine takes.
 */
export type Ruling = {
  readonly when: string | Condition;
  readonly wrong: Text;
  readonly because?: Text;
  readonly do?: Text;
  /** What must be true for it not to hold, as a clause after “if”: “the tow package is fitted”. */
  readonly proviso?: Text;
};

/** One ruling, or several of one level, each with words of its own. */
export type Rulings = Ruling | readonly Ruling[];

export type Finding = {
  readonly label: string;
  /** How its label is said inside a sentence; absent: its label. */
  readonly noun?: string;
  readonly askedBy?: readonly string[];
  /** As `askedBy`, but each must be known. */
  readonly askedByKnown?: readonly string[];
  /** And only where this yes/no formula may hold; while it also may not, a stop is unknown. */
  readonly askedWhen?: string;
  /**
   * A danger. As a stop it is said before any limit: people get out before anyone reckons. Short of
   * that it is said in every form, with what to do, before the rule and the figures.
   */
  readonly first?: boolean;
  /** What it hangs on is asked before anything that may only be too heavy, too little or too slow. */
  readonly askedFirst?: true;
  readonly stop?: Rulings;
  /** What a stop counts as that may hold and need not; absent: unknown. */
  readonly stopOpen?: 'if' | 'care';
  /** What cannot be told where it may hold. */
  readonly unknown?: Rulings;
  /** What must be true and was not told. */
  readonly if?: Rulings;
  readonly care?: Rulings;
  /** Said when none holds. */
  readonly otherwise: Text;
  /** Said when it cannot be told; absent: that it may be so, or the results still possible. */
  readonly open?: { readonly wrong: Text; readonly because?: Text; readonly do?: Text };
  /**
   * It answers a question by itself, so that a verdict may rest on it alone; names: only where one of
   * these facts is known, and with no name never, as where a danger that is not there answers nothing.
   */
  readonly settles?: true | readonly string[];
  /** A care that holds for certain is said in the sentence also where no verdict can be told. */
  readonly saidOpen?: true;
  /** The decision whose result is said once there is only one. */
  readonly decision?: string;
  /** The topic that answers more of it, and how that is said: “What to do about sway”. */
  readonly see?: { readonly topic: string; readonly says: Text };
  readonly source: Source;
};

/** Something taken for granted whenever the named yes/no formula holds. */
export type Assumption = {
  readonly when: string;
  readonly says: string;
  readonly source: Source;
};

/**
 * How it stands, the best first: nothing against it; care is due; it is so if something is true that
 * nobody told; it cannot be told; it must not be.
 */
export const levels = ['ok', 'care', 'if', 'unknown', 'stop'] as const;
export type Level = (typeof levels)[number];
export type State = Level | 'not-asked';

export type Outcome = {
  /** Hyphenated, for other programs. */
  readonly id: string;
  /** As said, and as cases write it. */
  readonly words: string;
  /** A sentence; of `if` its beginning, to which “, if …” is added. */
  readonly sentence: string;
  /** Of `care`: the beginning of its sentence, for those who hear of what to take care in its stead. */
  readonly plain?: string;
};

/**
 * The present id of what had another (its own, where only an option was renamed), and what an old
 * value means today where it means something else: one option, or several of which each is possible.
 */
export type Renamed =
  | string
  | {
      readonly to: string;
      readonly values?: Readonly<Record<string, readonly string[]>>;
    };

/** A part of a topic: one family of limits with the formulas it stands on. */
export type Part = {
  readonly facts?: Readonly<Record<string, Fact>>;
  readonly parameters?: Readonly<Record<string, Parameter>>;
  readonly tables?: Readonly<Record<string, Table>>;
  readonly wordTables?: Readonly<Record<string, WordTable>>;
  readonly formulas?: Readonly<Record<string, Formula>>;
  readonly limits?: Readonly<Record<string, Limit>>;
  readonly findings?: Readonly<Record<string, Finding>>;
  readonly decisions?: Readonly<Record<string, Decision>>;
  readonly selections?: Readonly<Record<string, Selection>>;
  readonly rankings?: Readonly<Record<string, Ranking>>;
  readonly simulations?: Readonly<Record<string, Simulation>>;
  readonly catalogues?: Readonly<Record<string, Catalogue>>;
  /** Old ids of facts, each with the one that it has now. */
  readonly renamed?: Readonly<Record<string, Renamed>>;
};

/** What every topic has; the rest of a part is there where a topic needs it. */
type Always = 'facts' | 'parameters' | 'tables' | 'formulas' | 'limits' | 'findings';

/** What a topic and a family of the trade have in common. */
export type Family = Required<Pick<Part, Always>> & Omit<Part, Always>;

export type Topic = Family & {
  readonly id: string;
  readonly version: string;
  readonly title: string;
  /** The question it answers, as asked. */
  readonly question: string;
  readonly outcomes: Readonly<Record<Level, Outcome>>;
  /** Results shown by themselves beside the limits, by the name other programs know them under. */
  readonly apart: Readonly<Record<string, string>>;
  /** Results a reader looks for first, in order. */
  readonly headline: readonly string[];
  /** Results that belong into the answer's own sentence. */
  readonly tells?: readonly Telling[];
  readonly assumptions: readonly Assumption[];
  /** The dealer whose own parameters lie over those of the topic; see `withHouse`. */
  readonly house?: string;
  /** What a person can change of the facts, in the order in which equals are told. */
  readonly changes?: readonly Change[];
  /** What people ask, by id; without a word of theirs the first is answered first. */
  readonly askings?: Readonly<Record<string, Asking>>;
  /** What is said to everybody, by asking; what stands under `any` serves those without. */
  readonly everybody?: Readonly<Record<string, ForEverybody>>;
  readonly how?: Readonly<Record<string, HowTo>>;
  readonly called?: Called;
  readonly cautions: readonly Caution[];
};
