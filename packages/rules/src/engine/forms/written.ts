/** A form of an answer as it leaves, and the cautions in it. */
export type Written = {
  readonly text: string;
  /** Each word for word as it stands in the text. */
  readonly cautions: readonly string[];
};

/** A form that carries no caution: what is asked back, and a line for the counter. */
export const plainly = (text: string): Written => ({ text, cautions: [] });
