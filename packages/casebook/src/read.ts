import { refuseNoText } from './doors';
import { treeOf } from './parse';
import { readCaseWith, type TopicShelf } from './read-with';
import type { CaseDocument } from './shapes';

/**
 * Reads a worked case. Never throws for a text: whatever is wrong stands in `troubles`, all of it at once, and
 * a document with troubles is not to be run.
 *
 * @param asOf the day it is to be judged as of, in place of the front matter's
 */
export function readCaseFrom(shelf: TopicShelf, text: string, asOf?: string): CaseDocument {
  refuseNoText(text);
  if (asOf !== undefined) refuseNoText(asOf, 'asOf');
  return readCaseWith(treeOf, shelf, text, asOf);
}
