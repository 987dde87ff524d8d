import type { Judged } from './judged';
import { movedFacts } from './judged';

/**
 * Whether what an author wrote of a case holds of what stands there now: the same facts, as of the
 * same day, under no dealer's own numbers.
 */
export function isAsFiled({ doc, answer }: Judged, filed: Judged | undefined): boolean {
  if (!filed || answer?.house) return false;
  return filed.doc.front.asOf === doc.front.asOf && movedFacts(filed.doc, doc).length === 0;
}
