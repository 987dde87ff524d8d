/**
 * What people say of a fact across every topic that asks it: one meaning an id. What only one topic
 * asks is called by that topic’s own data.
 */
export type WordsOfFacts = {
  /** Words that stand beside a number. */
  readonly facts?: Readonly<Record<string, readonly string[]>>;
  /** Words that say a choice, a yes or no, or a value outright: “tandem” is two axles. */
  readonly options?: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  /** Units that only this fact has where it is asked; they stand in for a word. */
  readonly units?: Readonly<Record<string, string>>;
};
