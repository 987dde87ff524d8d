import type { Source } from './source';

/** Words of a rule set. `{name}` in them stands for that value, shown in the units asked for. */
export type Text = string;

/** A result said with the verdict, where that goes ahead: the drop of a ball mount, a pressure. */
export type Telling = {
  /** A formula; told where it is known at both ends. */
  readonly of: string;
  /** A sentence; `{of}` stands for the value. */
  readonly says: string;
  /** Told only while this yes/no formula holds. */
  readonly when?: string;
};

export type Caution = {
  readonly says: string;
  readonly source: Source;
  /**
   * Where it is the one to say: facts, `limit.<id>` or `finding.<id>` that came up; and where it is
   * not: `battery.chemistry!=lifepo4`.
   */
  readonly fits?: readonly string[];
};

/** Something people ask of a topic; the results it names are said first. */
export type Asking = {
  readonly label: string;
  /**
   * `verdict`, results, decisions, lists, rankings, limits (`limit.payload`) or findings
   * (`finding.grade`).
   */
  readonly results: readonly string[];
  /** Asked when one of these facts is told; the first such asking of a topic is answered first. */
  readonly impliedBy?: readonly string[];
  /** Asked where nothing that was told implies one; absent on all: the first. */
  readonly usual?: true;
  /** A question of yes or no that the verdict answers: where it is settled, it is said first. */
  readonly yesOrNo?: true;
  /**
   * The sentence that answers it, with holes for its results; of several the first whose yes/no
   * formula holds for sure. Absent, or with a hole that is not known: made from the results.
   */
  readonly says?: Text | readonly { readonly when?: string; readonly says: Text }[];
};

/** A text filled from a case, and the facts beside those told that it is worked out from. */
export type Worked = { readonly says: Text; readonly given?: Facts };

/**
 * What is said to all who ask the same and told next to nothing: the rule and the reason, what a
 * listener can look up, and what is best done by whoever cannot.
 */
export type ForEverybody = {
  readonly rule: Text;
  readonly because: Text;
  /** Facts that decide and that a listener can look up, the one that decides most first. */
  readonly look: readonly string[];
  /**
   * What is presumed and said as such, as a case would write it, where it was not told; `= name`
   * stands for a result of the case.
   */
  readonly given?: Facts;
  /** The same as a clause: “with electric brakes and a controller”. */
  readonly givenSays?: Text;
  /**
   * How a fact is told after “if”, where its noun does not do: for a quantity with the hole
   * `{value}` (“the label leaves {value} for people”), for a choice by option.
   */
  readonly clauses?: Readonly<Record<string, Text | Readonly<Record<string, Text>>>>;
  /** A figure worked out, and the facts beside those told that it is worked out from. */
  readonly worked?: Worked;
  /**
   * What is made of the little that was told, where it is too little for an answer: of those whose
   * figures are known, the one that names most of it.
   */
  readonly fromTold?: readonly Worked[];
  /** The safest thing to do for whoever does not know. */
  readonly otherwise: Text;
};

/** Facts by id as a case writes them; a list as its rows. */
export type Facts = Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>;

/** How something is done, in a few steps, as a person would tell it across a counter. */
export type HowTo = {
  readonly label: string;
  readonly steps: readonly Text[];
  readonly caution: Text;
  readonly source: Source;
  /** Shown while this yes/no formula may hold; absent: always. */
  readonly when?: string;
};

/** What people call things, for search and for reading their messages. */
export type Called = {
  readonly topic: readonly string[];
  readonly facts?: Readonly<Record<string, readonly string[]>>;
  readonly options?: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
};
