/** One parameter as a dealer keeps it. */
export type HouseValue = {
  /** “15 %”; or a number, with its unit beside it. */
  readonly value: string | number;
  readonly unit?: string | undefined;
  /** Why, in a sentence; told on every verdict. */
  readonly reason: string;
  /** The day from which the dealer keeps it; absent: whenever the rule set has a value. */
  readonly from?: string | undefined;
};

/** A dealer's own parameters over those of one topic. */
export type HouseLayer = {
  readonly topic: string;
  /** The dealer's name. */
  readonly name: string;
  readonly parameters: Readonly<Record<string, HouseValue>>;
};
