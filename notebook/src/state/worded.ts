import { guarded, type ReplyKind, replyOf, type Told, verdictKey } from './reply';
import { markOf, type Wording, type Wordings } from './wording';

/** Under what a wording is kept: figures in other units are other words. */
export const wordingPlace = (kind: ReplyKind, { system }: Told): string => `${kind}.${system}`;

export type Worded = {
  readonly text: string;
  /** A person's own words, whether or not they still hold. */
  readonly own: Wording | undefined;
  /** Whether the text is in those words: they were written for this very verdict. */
  readonly isOwn: boolean;
};

/** A reply as it reads: in a person's own words while the verdict they were written for stands. */
export function wordedReply(kind: ReplyKind, told: Told, wordings: Wordings): Worded {
  const own = wordings[wordingPlace(kind, told)];
  const isOwn = own?.writtenFor === markOf(verdictKey(told));
  return { text: own && isOwn ? own.text : replyOf(kind, told).text, own, isOwn };
}

/** A reply as it leaves: as it reads, with every caution that was taken out of it put back. */
export const leavingReply = (kind: ReplyKind, told: Told, wordings: Wordings): string =>
  guarded(wordedReply(kind, told, wordings).text, replyOf(kind, told).cautions).text;
