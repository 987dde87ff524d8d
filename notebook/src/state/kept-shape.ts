/** What a person typed, kept on this device under the case's address. */
export type Kept = {
  readonly topic: string;
  readonly name: string;
  readonly text: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** It came in a file with much else, and nobody has opened it here yet. */
  readonly untried?: true;
};
