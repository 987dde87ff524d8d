/**
 * What must stand in a clause, in whatever order, for its number to be a fact, or for a fact to be so.
 * Groups of words stand between ampersands, one of each group is enough:
 *
 *     carry|allowed & ~dolly ! empty    “~”: the sentence before may say it, too; “!”: not with these words
 *     <bars & >loose                    “<” ahead of the number, “>” behind it
 *     weigh*                            “*” for any ending
 */
export type Clauses = {
  readonly numbers?: Readonly<Record<string, readonly string[]>>;
  readonly values?: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
};
