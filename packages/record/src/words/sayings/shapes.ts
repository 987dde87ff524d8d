/**
 * How people say a fact in a few words, where one word beside a number does not say it, or where nothing
 * but words says it. Words stand in their order, in the singular or the plural:
 *
 *     coupler # [in] high          # stands for the number, what is in brackets may be missing
 *     receiver @ / #               @ for another number
 *     (wont|does not) .. close     either; up to three words between, five for ...
 */
export type Sayings = {
  /** By fact, sayings that hold its number, of a choice too. */
  readonly numbers?: Readonly<Record<string, readonly string[]>>;
  /** By fact and value, sayings that say it; `yes`, `no`, an option, or a quantity. */
  readonly values?: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  /** Words of which one must stand in the text, before a fact is looked for. */
  readonly only?: Readonly<Record<string, readonly string[]>>;
  /** The topic that needs no such word. */
  readonly home?: Readonly<Record<string, string>>;
  /** Of several values that are said of a fact the earlier one counts; elsewhere none does. */
  readonly first?: Readonly<Record<string, readonly string[]>>;
  /** A fact that is none where one of these is told: who smells gas has no trouble with the stove. */
  readonly unless?: Readonly<Record<string, readonly string[]>>;
};
